package footing.io.workbook;

import footing.core.fleet.Case;
import footing.core.fleet.Input;
import footing.core.fleet.Key;
import footing.core.fleet.Position;
import footing.core.fleet.ResolvedMachine;

/** The numbers of one machine as its formulas write them. */
record MachineCells(Cells cells, Case stated, ResolvedMachine machine) {
    String own(Key key) {
        return cells.likely(Input.of(key, machine.id()));
    }

    String crew(Key key) {
        return cells.likely(Input.of(key, machine.crew().id()));
    }

    String assembly(Key key, String id) {
        return cells.likely(Input.of(key, id));
    }

    String fix(Key key, int fix) {
        return cells.likely(new Input(key, machine.crew().id(), Integer.toString(fix)));
    }

    /** An hour of one person. */
    String hour() {
        return "(" + crew(Key.WAGE) + "*(1+" + crew(Key.BURDEN) + "))";
    }

    /** An hour in the shop: nobody's number of its own where it follows from the crew's. */
    String shop() {
        boolean statedShop = stated.money().numbers().get(Key.SHOP_RATE).isPresent();
        return statedShop ? cells.likely(Input.of(Key.SHOP_RATE, "")) : hour();
    }

    String count(Position p) {
        return own(p == Position.DRIVE ? Key.COUNT_DRIVE : Key.COUNT_CASTER);
    }

    String worn(Position p) {
        return own(p == Position.DRIVE ? Key.WORN_DRIVE : Key.WORN_CASTER);
    }

    String flatsAt(Position p) {
        String drive = own(Key.FLATS_AT_DRIVE);
        return p == Position.DRIVE ? drive : "(1-" + drive + ")";
    }

    /** Operating hours to the trade. */
    String hoursLeft() {
        return "(" + own(Key.KEEP_UNTIL) + "-" + own(Key.HOURS_NOW) + ")";
    }
}
