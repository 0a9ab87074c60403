package footing.web.answer;

import footing.core.answer.EntryAnswer;
import footing.io.figure.EntryName;
import footing.io.words.Advice;
import footing.io.words.Figures;
import footing.io.words.Odds;
import footing.io.words.PaidBack;
import java.util.Comparator;
import java.util.List;

/**
 * What a machine could do, with its figures.
 *
 * @param best true for what is chosen
 * @param upTo the start cost at which it saves nothing; empty where there is none, or as long as it is not known
 * @param beatsUpTo the start cost at which it saves nothing against the best choice with a smaller one; empty where that
 *     is what the machine has
 * @param paidBack after how many hours; empty where nothing changes
 * @param parts of its cost
 */
record Choice(
        String name,
        boolean carried,
        boolean best,
        String start,
        String cost,
        String saves,
        String pays,
        String upTo,
        String beatsUpTo,
        String paidBack,
        List<Part> parts,
        FleetRow.Entry entry) {
    /**
     * A part of the cost.
     *
     * @param figure what its explanation is asked by
     */
    record Part(String name, String figure, String value) {}

    /** All of them, the cheapest over the machine's life first. */
    static List<Choice> all(Advice advice) {
        return advice.machine().entries().stream()
                .sorted(Comparator.comparingDouble(e -> e.cost().mean()))
                .map(e -> of(advice, e))
                .toList();
    }

    private static Choice of(Advice advice, EntryAnswer e) {
        boolean carried = EntryName.isCarried(advice, e);
        Double never = e.neverFitted();
        boolean neverDue = never != null && never >= 1;
        boolean quiet = carried || neverDue;
        Double upTo = e.breakEvenPrice();
        return new Choice(
                EntryName.of(advice, e) + (neverDue ? ": never comes due before the trade" : ""),
                carried,
                e.equals(advice.machine().choice()),
                Figures.money(e.startCost()),
                Figures.money(e.cost().mean()),
                quiet ? "" : signed(e.saving().mean()),
                quiet ? "" : Odds.column(e.saving().chance()),
                quiet || upTo == null || !(upTo > 0) ? "" : Figures.money(upTo),
                quiet ? "" : PaidBack.beatsNextUpTo(advice.machine().machine(), e),
                quiet ? "" : PaidBack.column(e),
                parts(e),
                FleetRow.Entry.of(e));
    }

    private static List<Part> parts(EntryAnswer e) {
        return List.of(
                new Part("at the start", "purchase", signed(e.parts().purchase())),
                new Part("new sets", "renewals", signed(e.parts().renewals())),
                new Part("repairs", "repairs", signed(e.parts().repairs())),
                new Part("paid time", "crewTime", signed(e.parts().crewTime())),
                new Part("lost work", "lostWork", signed(e.parts().lostWork())),
                new Part("upkeep", "upkeep", signed(e.parts().upkeep())),
                new Part("trade-in", "tradeIn", signed(-e.parts().tradeIn())));
    }

    private static String signed(double money) {
        return Figures.money(money).replace('-', '−');
    }
}
