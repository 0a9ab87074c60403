package footing.io.words;

import footing.core.answer.Answer;
import footing.core.answer.EntryAnswer;
import footing.core.answer.Saving;
import footing.core.chance.Metalog;
import footing.core.chance.Spread;
import footing.core.fleet.Case;
import footing.core.fleet.InForce;
import footing.core.fleet.Input;
import footing.core.fleet.Key;
import footing.core.fleet.Origin;
import footing.core.fleet.Position;
import footing.core.fleet.ResolvedMachine;
import footing.core.fleet.Values;
import footing.core.fleet.When;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;

/** Why a machine is told to do what it is told, in a line. */
public final class Reason {
    private static final double WORTH_SAYING = 0.05;
    /** An hour, in money: below it a rate reads as 0. */
    static final double NEXT_TO_NOTHING = 0.005;

    private final Answer answer;
    private final Advice advice;

    private Reason(Answer answer, Advice advice) {
        this.answer = answer;
        this.advice = advice;
    }

    public static String of(Answer answer, Advice advice) {
        EntryAnswer about = advice.about();
        return about == null
                ? "There is nothing to compare with: no other wheels are considered."
                : new Reason(answer, advice).told(about).replace("  ", " ").strip();
    }

    /** 'Pays from 4 flats a season; you said 6.'; empty where there is no such number of flats. */
    public static String turns(Answer answer, Advice advice) {
        EntryAnswer about = advice.about();
        return about == null ? "" : new Reason(answer, advice).flats(about);
    }

    private String told(EntryAnswer about) {
        return switch (advice.verb()) {
            case KEEP, ORDER_AS_IT_COMES -> nextBest(about) + " " + flats(about);
            case TOSS_UP ->
                isAllTheSame(about) ? allTheSame(about) : tossUp(about) + waiting(about) + " " + flats(about);
            default -> saves(about) + " " + Levels.told(about) + " " + flats(about) + neverFitted(about);
        };
    }

    /** 'next best, airless drives, costs 136 more': no cause for alarm. */
    private String nextBest(EntryAnswer about) {
        double dearer = -about.saving().mean();
        return "Next best, " + advice.piecesWhen() + ", costs " + Figures.money(dearer) + " more over its life"
                + (advice.hasASeason() ? " (" + Figures.money(dearer / advice.seasons()) + " a season)." : ".")
                + neverFitted(about) + whereFitted(about);
    }

    private String saves(EntryAnswer about) {
        return "Saves " + perHourAndSeason(about.saving().mean()) + ".";
    }

    private String perHourAndSeason(double money) {
        double hours = advice.machine().machine().hoursLeft();
        if (Math.abs(money / hours) < NEXT_TO_NOTHING) {
            return "next to nothing (" + Figures.money(money) + " over its life)";
        }
        String hour = Figures.rate(money / hours) + " an hour run";
        return advice.hasASeason() ? hour + ", " + Figures.money(money / advice.seasons()) + " a season" : hour;
    }

    private static boolean isAllTheSame(EntryAnswer about) {
        Saving s = about.saving();
        return !Figures.shows(s.mean()) && !Figures.shows(s.p10()) && !Figures.shows(s.p90());
    }

    private String allTheSame(EntryAnswer about) {
        return Lists.capital(advice.piecesWhen()) + " make no difference"
                + (about.neverFitted() == null ? "." : ": it is traded before its sets wear out.");
    }

    /** Beside a change that costs something now: what the best one that waits for worn sets saves. */
    private String waiting(EntryAnswer about) {
        if (about.entry().when() == When.WORN || !Figures.shows(about.startCost()) || about.startCost() < 0) {
            return "";
        }
        return advice.machine().entries().stream()
                .filter(e -> e.entry().when() == When.WORN && !e.equals(advice.rival()))
                .filter(e -> e.outcome().neverFitted() < 1 && e.saving().mean() > 0)
                .filter(e -> Figures.shows(e.saving().mean()))
                .max(Comparator.comparingDouble(e -> e.saving().mean()))
                .map(e -> " Waiting until its set is worn" + instead(about, e) + " saves "
                        + Figures.money(e.saving().mean()) + " with nothing paid now.")
                .orElse("");
    }

    private String instead(EntryAnswer about, EntryAnswer waits) {
        ResolvedMachine machine = advice.machine().machine();
        boolean same = Arrays.stream(Position.values())
                .allMatch(p -> about.entry().at(p).equals(waits.entry().at(p)));
        return same ? "" : " and then fitting " + Pieces.changed(machine, waits.entry());
    }

    private String tossUp(EntryAnswer about) {
        EntryAnswer.OverNext next = about.overNext();
        if (advice.isBetweenChanges() && next != null) {
            return Lists.capital(advice.piecesWhen()) + " beat " + advice.rivalWords() + " by "
                    + Figures.money(next.mean()) + " on average, in " + Odds.sentence(next.chance())
                    + " of the ways it could go; either beats what it has.";
        }
        Saving s = about.saving();
        String words = Lists.capital(advice.piecesWhen());
        String odds = Odds.sentence(s.chance()) + " of the ways it could go";
        if (s.mean() >= 0 && s.chance() >= answer.threshold()) {
            return words + " would save " + perHourAndSeason(s.mean()) + " in " + odds + ": too little to be sure of.";
        }
        return s.mean() >= 0
                ? words + " would save " + perHourAndSeason(s.mean()) + ", but pay in only " + odds + "."
                : words + " would cost " + Figures.size(s.mean()) + " more on average, yet pay in " + odds + ".";
    }

    /**
     * 'Pays from 4 flats a season; you said 6.' The break-even is a mean over what is unsure; here it stands beside the
     * usual value, as the user stated that one: at/now times usual.
     */
    private String flats(EntryAnswer about) {
        EntryAnswer.BreakEvenFlats flats = about.breakEvenFlats();
        if (flats == null || advice.isBetweenChanges()) {
            return "";
        }
        boolean pays = about.saving().mean() >= 0;
        boolean moreIsBetter = pays == flats.at() <= flats.now();
        String breakEven = Figures.counted(usual(flats), "flat") + " a season";
        return (pays ? "On average it pays " : "On average it would pay ") + (moreIsBetter ? "from " : "up to ")
                + breakEven + "; " + said() + ".";
    }

    private double usual(EntryAnswer.BreakEvenFlats flats) {
        double likely = perSeason().likely();
        return flats.now() > 0 ? flats.at() / flats.now() * likely : flats.at();
    }

    private Spread perSeason() {
        return advice.machine().machine().flatsPerSeason();
    }

    private static String who(Origin origin) {
        return switch (origin) {
            case LEARNED -> "your records say ";
            case GUESSED, DEFAULT, TYPICAL -> "the guess is ";
            case STATED -> "you said ";
        };
    }

    private String said() {
        Optional<InForce> found = flatsInForce();
        String who = found.map(InForce::origin).map(Reason::who).orElse("yours come to ");
        Spread spread = perSeason();
        String range = spread instanceof Metalog m
                ? " (" + Figures.count(m.low()) + " to " + Figures.count(m.high()) + ")"
                : "";
        return who + Figures.count(spread.likely()) + range;
    }

    private Optional<InForce> flatsInForce() {
        Case stated = answer.of();
        Case.Machine machine = stated.machine(advice.id());
        return machine.numbers().get(Key.FLATS_PER_SEASON).isPresent()
                ? new Values(stated, machine).find(Input.of(Key.FLATS_PER_SEASON, advice.id()))
                : Optional.empty();
    }

    /** A mean over ways in which mostly nothing changes tells little of those in which something does. */
    private static String whereFitted(EntryAnswer about) {
        Double never = about.neverFitted();
        return never == null || never < WORTH_SAYING || !(never < 1)
                ? ""
                : " Where one does, " + Figures.money(-about.saving().mean() / (1 - never)) + " more.";
    }

    private static String neverFitted(EntryAnswer about) {
        Double never = about.neverFitted();
        return never == null || never < WORTH_SAYING
                ? ""
                : " In " + Odds.sentence(never) + " of the ways it could go no set wears out before the trade.";
    }
}
