package footing.io.words;

import footing.core.answer.EntryAnswer;
import footing.core.fleet.ResolvedMachine;
import java.util.ArrayList;
import java.util.List;

/** When a change has paid for itself, and up to which price it would. */
public final class PaidBack {
    private PaidBack() {}

    /** For a column: '812 h', 'at once', 'not before the trade'. */
    public static String column(EntryAnswer e) {
        Double hours = e.paybackHours();
        return hours == null ? "not before the trade" : hours == 0 ? "at once" : Figures.money(hours) + " h";
    }

    /** The price up to which it beats the best choice with a smaller start cost; empty where that is what it has. */
    public static String beatsNextUpTo(ResolvedMachine machine, EntryAnswer e) {
        Double price = e.breakEvenNext();
        return price == null || isAgainstCarried(machine, e) || !(price > 0) ? "" : Figures.money(price);
    }

    private static boolean isAgainstCarried(ResolvedMachine machine, EntryAnswer e) {
        EntryAnswer.OverNext next = e.overNext();
        return next == null || next.entry().equals(machine.carried());
    }

    /** Sentences about the change a machine's row speaks of; none if there is nothing to change to. */
    public static List<String> told(Advice a) {
        EntryAnswer about = a.about();
        if (about == null) {
            return List.of();
        }
        List<String> told = new ArrayList<>();
        told.add(hours(a, about));
        Double price = about.breakEvenPrice();
        if (price != null && price > 0) {
            told.add("They save something up to a price of " + Figures.money(price) + " at the start" + next(a, about)
                    + ".");
        }
        return told;
    }

    private static String hours(Advice a, EntryAnswer about) {
        Double hours = about.paybackHours();
        String who = Lists.capital(a.piecesWhen());
        if (hours == null) {
            return who + " are not paid back by the hours run before the trade, on average"
                    + (about.saving().mean() > 0 ? "; what they fetch at the trade makes up for it." : ".");
        }
        if (hours == 0) {
            return who + " have at no hour cost more than what it has, on average.";
        }
        double seasons = hours / a.machine().machine().hoursPerYear();
        return who + " are paid back after " + Figures.money(hours) + " hours run ("
                + Figures.counted(seasons, "season") + "), on average; what they fetch at the trade is not in that.";
    }

    private static String next(Advice a, EntryAnswer about) {
        EntryAnswer.OverNext next = about.overNext();
        Double price = about.breakEvenNext();
        ResolvedMachine machine = a.machine().machine();
        if (next == null || price == null || isAgainstCarried(machine, about)) {
            return "";
        }
        String cheaper = "the next cheaper choice, " + Pieces.changedWhen(machine, next.entry());
        return price > 0
                ? "; up to " + Figures.money(price) + " they also beat " + cheaper
                : "; at no price do they beat " + cheaper;
    }
}
