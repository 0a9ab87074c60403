package footing.io.workbook;

import footing.core.fleet.Input;
import footing.core.fleet.Key;
import footing.core.fleet.Position;
import footing.core.fleet.ResolvedAssembly;
import footing.core.fleet.ResolvedMachine;
import footing.core.fleet.When;

/** What an entry costs at the start, as formulas. */
final class StartCost {
    private final MachineCells cells;
    private final ResolvedMachine machine;
    private final StringBuilder goods = new StringBuilder();
    private final StringBuilder shop = new StringBuilder();

    StartCost(MachineCells cells, ResolvedMachine.Entry entry) {
        this.cells = cells;
        machine = cells.machine();
        if (entry.when() == When.NOW) {
            boolean changed = false;
            for (Position p : Position.values()) {
                changed |= machine.differs(entry, p) && !add(entry, p);
            }
            if (changed && !machine.isNew()) {
                plus(shop, cells.own(Key.RELEVEL) + "*" + cells.shop());
            }
        }
        if (machine.isNew() && entry.upcharge().isPresent()) {
            goods.setLength(0);
            shop.setLength(0);
            goods.append(cells.cells().likely(new Input(Key.UPCHARGE, machine.id(), entry.id())));
        }
    }

    /** Adds a position; true if it is treated. */
    private boolean add(ResolvedMachine.Entry entry, Position p) {
        ResolvedAssembly wanted = machine.assembly(entry, p);
        ResolvedAssembly carried = machine.assembly(machine.carried(), p);
        boolean treated = wanted.madeByTreating(carried);
        if (treated) {
            plus(goods, cells.count(p) + "*" + cells.assembly(Key.TREAT_PRICE, wanted.id()));
            plus(shop, cells.assembly(Key.TREAT_HOURS, wanted.id()) + "*" + cells.shop());
        } else {
            plus(goods, cells.count(p) + "*" + cells.assembly(Key.PRICE, wanted.id()));
            goods.append("-IF(")
                    .append(cells.assembly(Key.CARRY_ON, wanted.id()))
                    .append(">0,0,");
            goods.append(fetched(carried.id(), p)).append(')');
            if (!machine.isNew()) {
                plus(shop, cells.assembly(Key.CHANGE_HOURS, wanted.id()) + "*" + cells.shop());
            }
        }
        return treated;
    }

    private String fetched(String carried, Position p) {
        return cells.count(p) + "*" + cells.assembly(Key.TAKE_OFF, carried) + "*"
                + cells.assembly(Key.PRICE, carried) + "*MAX(0,1-" + cells.worn(p) + "/("
                + cells.assembly(Key.LIFE, carried) + "*" + cells.own(Key.GROUND_WEAR) + "))";
    }

    private static void plus(StringBuilder sum, String term) {
        sum.append(sum.isEmpty() ? "" : "+").append(term);
    }

    /** What is bought, less what the set taken off fetches. */
    String goods() {
        return goods.isEmpty() ? "0" : goods.toString();
    }

    String shopTime() {
        return shop.isEmpty() ? "0" : shop.toString();
    }
}
