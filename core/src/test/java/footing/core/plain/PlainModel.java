package footing.core.plain;

import footing.core.fleet.Position;
import footing.core.fleet.ResolvedMachine;
import footing.core.fleet.ResolvedMachine.Entry;
import java.util.ArrayList;
import java.util.List;

/** One future of one machine under one entry, rule by rule. */
public final class PlainModel {
    private PlainModel() {}

    public static PlainFuture future(ResolvedMachine m, Entry entry, long seed, long future) {
        PlainLedger ledger = new PlainLedger(m);
        PlainStart start = PlainStart.of(m, entry);
        double notDeducted = start.pay(m, ledger);
        PlainDraws draws = new PlainDraws(m, seed, future);
        List<PlainFuture.Flat> flats = new ArrayList<>();
        int sets = 0;
        boolean differs = false;
        boolean fitted = false;
        double tradeValue = 0;
        for (Position position : Position.values()) {
            PlainPosition at = new PlainPosition(position, entry, draws, ledger);
            at.run();
            flats.addAll(at.flats);
            sets += at.sets;
            differs |= m.differs(entry, position);
            fitted |= at.wantedFitted;
            tradeValue += at.tradeValue();
        }
        trade(m, ledger, tradeValue, notDeducted);
        return new PlainFuture(start.cost(), ledger.flows, flats, ledger.upkeep, sets, fitted || !differs);
    }

    /** The value of a position in a list of two, drive first. */
    static <T> T at(List<T> list, Position position) {
        return list.get(position == Position.DRIVE ? 0 : 1);
    }

    /** Rule 7 and the trade's side of rule 8. */
    private static void trade(ResolvedMachine m, PlainLedger ledger, double today, double notDeducted) {
        PlainClock.Moment end = ledger.clock.at(m.hoursLeft());
        double flow = today * ledger.inflated(end.days());
        double tax = m.terms().taxRate() * (flow - notDeducted);
        ledger.write(PlainPart.TRADE_IN, m.hoursLeft(), end, today, flow - tax);
    }
}
