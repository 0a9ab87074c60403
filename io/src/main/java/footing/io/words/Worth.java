package footing.io.words;

import footing.core.answer.Answer;
import footing.core.answer.EntryAnswer;
import footing.core.answer.Saving;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What following an answer is worth, in a few sentences: per hour and season before totals over a life. */
public final class Worth {
    private static final double SAME_MONTHS = 0.5;

    private final List<Advice> changing;
    private final Saving saving;
    private final double start;
    private final String currency;

    private Worth(List<Advice> changing, Saving saving, double start, String currency) {
        this.changing = changing;
        this.saving = saving;
        this.start = start;
        this.currency = currency;
    }

    /** Sentences about all machines together; the fleet's figures take each toss-up the way it leans. */
    public static List<String> of(Answer answer) {
        List<Advice> all = answer.machines().stream()
                .map(m -> Advice.of(m, answer.threshold()))
                .toList();
        List<Advice> changing = all.stream().filter(Advice::leansToChange).toList();
        String currency = answer.of().heading().currency();
        return changing.isEmpty()
                ? nothing(all)
                : new Worth(changing, answer.fleet().saving(), answer.fleet().startCost(), currency).told();
    }

    private static List<String> nothing(List<Advice> all) {
        boolean clear = all.stream().noneMatch(a -> a.verb() == Verb.TOSS_UP);
        return List.of(
                clear
                        ? "There is nothing to buy: no other wheels considered here would earn back what they cost."
                        : "There is nothing to buy yet: on the average of the ways it could go, what the machines have"
                                + " costs least.");
    }

    private List<String> told() {
        List<String> told = new ArrayList<>();
        told.add(worth());
        told.add(range());
        told.add(atTheStart());
        return told;
    }

    private String worth() {
        double hours = changing.stream()
                .mapToDouble(a -> a.machine().machine().hoursLeft())
                .sum();
        double season = changing.stream().mapToDouble(Worth::perSeason).sum();
        String lives = changing.size() == 1 ? "over the machine's life" : "over the machines' lives";
        return leaning() + "worth about " + Figures.rate(saving.mean() / hours) + " an hour run and "
                + Figures.money(season) + " a season: " + Figures.money(saving.mean()) + " " + lives + " (" + currency
                + ", in today's money).";
    }

    private String leaning() {
        long tossUps = changing.stream().filter(a -> a.verb() == Verb.TOSS_UP).count();
        if (tossUps == 0) {
            return "This is ";
        }
        return tossUps == changing.size()
                ? "Taking what is cheapest on the average is "
                : "This, with each toss-up taken the way it leans, is ";
    }

    /** A saving over a life, spread evenly over the seasons left. */
    public static double perSeason(Advice a) {
        return a.machine().choice().saving().mean() / a.seasons();
    }

    private String range() {
        return range(saving) + " It pays in " + Odds.sentence(saving.chance()) + " of the ways it could go.";
    }

    /** The 10th and 90th percentile in words. */
    public static String range(Saving saving) {
        String bad = saving.p10() < 0
                ? "If it goes badly you are out " + Figures.size(saving.p10())
                : "If it goes badly you are still up " + Figures.money(saving.p10());
        String good = saving.p90() < 0
                ? "if it goes well you are still out " + Figures.size(saving.p90())
                : "if it goes well you are up " + Figures.money(saving.p90());
        return bad + "; " + good + " (one time in ten it is worse, one in ten better).";
    }

    private String atTheStart() {
        if (!Figures.shows(start)) {
            return "It costs nothing at the start.";
        }
        if (start < 0) {
            return "At the start it brings in " + Figures.size(start) + ".";
        }
        String monthly =
                monthly(changing.stream().map(a -> a.machine().choice()).toList());
        return "It costs " + Figures.money(start) + " at the start." + monthly;
    }

    /** Payments against what is avoided; empty where none is known. */
    static String monthly(List<EntryAnswer> entries) {
        List<EntryAnswer.Monthly> loans = new ArrayList<>();
        for (EntryAnswer e : entries) {
            EntryAnswer.@Nullable Monthly monthly = e.monthly();
            if (monthly != null) {
                loans.add(monthly);
            }
        }
        if (loans.isEmpty()) {
            return "";
        }
        double payment =
                loans.stream().mapToDouble(EntryAnswer.Monthly::payment).sum();
        double avoided =
                loans.stream().mapToDouble(EntryAnswer.Monthly::avoided).sum();
        double least =
                loans.stream().mapToDouble(EntryAnswer.Monthly::months).min().orElseThrow();
        double most =
                loans.stream().mapToDouble(EntryAnswer.Monthly::months).max().orElseThrow();
        String months = most - least < SAME_MONTHS
                ? Figures.money(least) + " months"
                : Figures.money(least) + " to " + Figures.money(most) + " months";
        String compared = avoided >= 0
                ? Figures.money(avoided) + " a month it keeps you from paying or losing"
                : Figures.size(avoided) + " a month more in running costs";
        return " Paid off by the month that is " + Figures.money(payment) + ", against " + compared + " (over " + months
                + ").";
    }
}
