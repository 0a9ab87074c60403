package footing.io.words;

import footing.core.answer.Answer;
import footing.core.answer.EntryAnswer;
import footing.core.answer.Saving;
import java.util.ArrayList;
import java.util.List;

/**
 * What following an answer is worth, in a few sentences: per hour and season before totals over a life. What is clear
 * is told first; toss-ups are added the way they lean, as the fleet's figures count them.
 */
public final class Worth {
    private final Answer answer;
    private final List<Advice> all;
    private final List<Advice> clear;
    private final List<Advice> leaning;

    private Worth(Answer answer) {
        this.answer = answer;
        all = Advice.all(answer);
        clear = all.stream().filter(a -> a.verb().changes()).toList();
        leaning = all.stream()
                .filter(a -> a.verb() == Verb.TOSS_UP && a.leansToChange())
                .toList();
    }

    public static List<String> of(Answer answer) {
        return new Worth(answer).told();
    }

    private List<String> told() {
        if (clear.isEmpty() && leaning.isEmpty()) {
            return List.of(nothing());
        }
        List<String> told = new ArrayList<>();
        if (leaning.isEmpty()) {
            told.add("This is " + amounts(clear) + ".");
            told.add(chances(answer.fleet().saving()));
            told.add(atTheStart(clear));
        } else if (clear.isEmpty()) {
            told.add((leaning.size() == 1
                            ? "If you make the change it leans to, that is "
                            : "If you make the changes they lean to, together that is ")
                    + amounts(leaning) + ".");
            told.add(chances(answer.fleet().saving()));
            told.add(atTheStart(leaning));
        } else {
            clearThenLeaning(told);
        }
        return told;
    }

    private void clearThenLeaning(List<String> told) {
        told.add((clear.size() == 1 ? clear.get(0).id() + " is " : "The clear changes are ") + amounts(clear) + ".");
        if (clear.size() == 1) {
            told.add(chances(clear.get(0).machine().choice().saving()));
        }
        told.add(atTheStart(clear));
        Saving both = answer.fleet().saving();
        told.add("If you make the changes the toss-ups lean to as well, it is " + Figures.money(both.mean()) + " over "
                + lives(all.size()) + ", for " + Figures.money(answer.fleet().startCost()) + " at the start. "
                + ends(both) + ".");
    }

    private String nothing() {
        boolean one = all.size() == 1;
        return all.stream().noneMatch(a -> a.verb() == Verb.TOSS_UP)
                ? "There is nothing to buy: no other wheels considered here would earn back what they cost."
                : "There is nothing to buy yet: on the average of the ways it could go, what the "
                        + (one ? "machine has" : "machines have") + " costs least.";
    }

    private String amounts(List<Advice> some) {
        double hours = some.stream()
                .mapToDouble(a -> a.machine().machine().hoursLeft())
                .sum();
        double mean = some.stream().mapToDouble(Worth::mean).sum();
        double season = some.stream().mapToDouble(Worth::perSeason).sum();
        String aSeason =
                some.stream().allMatch(Advice::hasASeason) ? " and " + Figures.money(season) + " a season" : "";
        if (Math.abs(mean / hours) < Reason.NEXT_TO_NOTHING) {
            return "worth next to nothing: " + Figures.money(mean) + " over " + lives(some.size())
                    + ", in today's money";
        }
        return "worth about " + Figures.rate(mean / hours) + " an hour run" + aSeason + ": " + Figures.money(mean)
                + " over " + lives(some.size()) + ", in today's money";
    }

    private static String lives(int machines) {
        return machines == 1 ? "the machine's life" : "the machines' lives";
    }

    private static double mean(Advice a) {
        return a.machine().choice().saving().mean();
    }

    /** A machine's saving over its life, spread evenly over the seasons left. */
    public static double perSeason(Advice a) {
        return mean(a) / a.seasons();
    }

    private static String chances(Saving saving) {
        return range(saving) + " It pays in " + Odds.sentence(saving.chance()) + " of the ways it could go.";
    }

    /** The 10th and 90th percentile in words. */
    public static String range(Saving saving) {
        return ends(saving) + " (one time in ten it is worse, one in ten better).";
    }

    private static String ends(Saving saving) {
        String bad = saving.p10() < 0
                ? "If it goes badly you are out " + Figures.size(saving.p10())
                : "If it goes badly you are still up " + Figures.money(saving.p10());
        String good = saving.p90() < 0
                ? "if it goes well you are still out " + Figures.size(saving.p90())
                : "if it goes well you are up " + Figures.money(saving.p90());
        return bad + "; " + good;
    }

    /** The start cost of some machines' choices, and by the month. */
    static String atTheStart(List<Advice> some) {
        List<EntryAnswer> choices = some.stream().map(a -> a.machine().choice()).toList();
        double start = choices.stream().mapToDouble(EntryAnswer::startCost).sum();
        if (!Figures.shows(start)) {
            return "It costs nothing at the start.";
        }
        return start < 0
                ? "At the start it brings in " + Figures.size(start) + "."
                : "It costs " + Figures.money(start) + " at the start." + monthly(choices);
    }

    /** Payments against what is avoided; empty where none is known. */
    private static String monthly(List<EntryAnswer> entries) {
        List<EntryAnswer.Monthly> loans = new ArrayList<>();
        for (EntryAnswer e : entries) {
            EntryAnswer.Monthly monthly = e.monthly();
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
        int least = loans.stream().mapToInt(EntryAnswer.Monthly::months).min().orElseThrow();
        int most = loans.stream().mapToInt(EntryAnswer.Monthly::months).max().orElseThrow();
        boolean early = loans.stream().anyMatch(EntryAnswer.Monthly::isTradedFirst);
        String spared = early
                ? tradedFirst(loans)
                : avoided >= 0
                        ? "it spares you " + Figures.monthly(avoided) + " a month over that time"
                        : "it costs you " + Figures.monthly(Math.abs(avoided)) + " a month more to run over that time";
        return " Paid by the month that is " + Figures.monthly(payment) + " for "
                + (least == most ? "" : least + " to ") + most + " months; " + spared + ".";
    }

    /** Where a loan outlasts its machine the sums by the trade count, not a month. */
    private static String tradedFirst(List<EntryAnswer.Monthly> loans) {
        double spared =
                loans.stream().mapToDouble(EntryAnswer.Monthly::avoidedInAll).sum();
        double paid = loans.stream().mapToDouble(EntryAnswer.Monthly::paid).sum();
        String sums = Figures.money(spared) + " in all, against " + Figures.money(paid) + " paid";
        return loans.size() == 1
                ? "by the trade, " + Payment.month(loans.get(0).over()) + " on, it spares you " + sums
                : "until each is paid for or traded it spares you " + sums;
    }
}
