package footing.io.words;

import footing.core.trial.BoutResult;
import footing.core.trial.Goal;
import footing.core.trial.Interval;
import footing.core.trial.Margin;
import footing.core.trial.PairedResult;
import footing.core.trial.PairedTest;
import footing.core.trial.PlanAdvice;
import footing.core.trial.Power;
import footing.core.trial.Side;
import footing.core.trial.SignTest;
import footing.core.trial.Trial;
import footing.core.trial.TrialKind;
import footing.core.trial.TrialResult;
import footing.core.trial.Verdict;
import java.util.Locale;
import java.util.Optional;

/** What a trial shows, in words: the verdict first. */
public final class TrialWords {
    private static final double FEW = 0.001;

    private final TrialResult result;
    private final Trial trial;
    private final Shown shown;

    public TrialWords(TrialResult result, Shown shown) {
        this.result = result;
        this.trial = result.trial();
        this.shown = shown;
    }

    /** The verdict in one word or four. */
    public static String word(Verdict verdict, Optional<Side> better) {
        return switch (verdict) {
            case ALIKE -> "alike";
            case A_MORE, B_MORE -> better.isPresent() ? "better" : "larger";
            case NOT_ENOUGH -> "not enough runs to tell";
        };
    }

    /** The whole trial in a sentence. */
    public String verdict() {
        BoutResult bouts = result.bouts();
        PairedResult together = result.together();
        if (bouts != null) {
            return ofBouts(bouts);
        }
        return together == null ? "" : verdict(together);
    }

    /** The verdict of some of the pairs in a sentence. */
    public String verdict(PairedResult r) {
        return switch (r.verdict()) {
            case ALIKE ->
                "Alike: " + shown.words() + " of " + name(Side.A) + " and " + name(Side.B) + " differs by less than "
                        + margin(r) + ".";
            case A_MORE, B_MORE -> more(r);
            case NOT_ENOUGH ->
                "Not enough runs to tell: " + counted(r.pairs().size(), "pair") + " so far, "
                        + further(r.furtherPairs(), "more") + " would, four times in five.";
        };
    }

    private String more(PairedResult r) {
        Side larger = r.verdict() == Verdict.A_MORE ? Side.A : Side.B;
        Optional<Side> better = result.better(r.verdict());
        Side told = better.orElse(larger);
        String lead = better.isPresent()
                ? Lists.capital(name(told)) + " is better: "
                : Lists.capital(name(told)) + " has the larger " + shown.words() + ": ";
        String what = better.isPresent() ? shown.words() + " of " : "";
        return lead + what + shown.value(r.meanOf(told)) + " against " + shown.value(r.meanOf(told.other()))
                + share(r, told) + ".";
    }

    private static String share(PairedResult r, Side told) {
        double own = r.meanOf(told);
        double other = r.meanOf(told.other());
        boolean tells = Math.abs(other) > FEW * Math.abs(own);
        return tells ? ", " + Figures.percent(Math.abs(own / other - 1)) + (own > other ? " more" : " less") : "";
    }

    private String ofBouts(BoutResult r) {
        SignTest test = r.test();
        String score = name(Side.A) + " won " + Figures.word(test.wins()) + ", " + name(Side.B) + " "
                + Figures.word(test.losses()) + ", " + Figures.word(test.evens()) + " even";
        if (r.verdict() == Verdict.NOT_ENOUGH) {
            return "Not enough runs to tell: " + score + "; " + further(r.furtherBouts(), "more with a winner")
                    + " would, if it goes on like this.";
        }
        Side winner = r.verdict() == Verdict.A_MORE ? Side.A : Side.B;
        return Lists.capital(name(winner)) + " is better: " + score + ".";
    }

    /** What the verdict rests on: difference, interval, pairs. Empty where there is too little for one. */
    public String evidence(PairedResult r) {
        PairedTest test = r.test();
        Interval interval = r.interval();
        if (test == null || interval == null) {
            return "";
        }
        return name(Side.A) + " less " + name(Side.B) + ": " + shown.value(test.mean()) + ", 95 % interval "
                + shown.number(interval.low()) + " to " + shown.value(interval.high()) + ", from "
                + counted(r.pairs().size(), "pair") + "; alike would be within " + margin(r) + ".";
    }

    /** How a skeptic reads opposed pulls. */
    public String evidence(BoutResult r) {
        return "By the toss of a coin it would fall this unevenly "
                + chance(r.test().p()) + ". Opposed pulls say who pulled whom, not by how much; a load cell says that.";
    }

    private static String chance(double p) {
        return p < FEW ? "less than once in 1,000 times" : Math.round(1000 * p) + " times in 1,000";
    }

    private String margin(PairedResult r) {
        Margin margin = trial.question().margin();
        // A share of a share is told in points, or it would read as another share.
        String size = shown.unit().equals("%") ? shown.number(r.margin()) + " points" : shown.value(r.margin());
        return margin.share() ? Figures.percent(margin.size()) + " of their mean (" + size + ")" : size;
    }

    private static String further(int n, String what) {
        return n >= Power.MOST_PAIRS - 1 ? "more than anybody runs" : "about " + Figures.word(n) + " " + what;
    }

    private static String counted(int n, String what) {
        return Figures.word(n) + " " + what + (n == 1 ? "" : "s");
    }

    private String name(Side side) {
        return trial.of(side).name();
    }

    /** What is judged and which way is better. */
    public static String question(Goal goal, Shown shown) {
        return switch (goal) {
            case MORE -> Lists.capital(shown.words()) + "; more is better.";
            case LESS -> Lists.capital(shown.words()) + "; less is better.";
            case NEITHER -> Lists.capital(shown.words()) + "; neither way is better by itself.";
        };
    }

    /** What a ride is not; empty for other kinds. */
    public static String limits(TrialKind kind) {
        return switch (kind) {
            case RIDE ->
                "A comparison of two machines on one course at one speed; no measurement of anybody's exposure.";
            case PULL, SIDE_HILL -> "It holds for this ground on this day; no slope is called safe by it.";
            default -> "";
        };
    }

    /** How many pairs to plan for. */
    public static String advice(PlanAdvice advice, double margin, double spread) {
        boolean fewest = advice.pairs() > Math.max(advice.toFind(), advice.toCallAlike());
        return String.format(
                Locale.ROOT,
                "Advised: %s on each surface%s. %s would find a difference of %s four times in five, %s would call alike"
                        + " what is alike, if single runs of one thing scatter by %s.",
                pairs(advice.pairs()),
                fewest ? ", the fewest that are ever advised (common practice, no source)" : "",
                Lists.capital(pairs(advice.toFind())),
                Figures.percent(margin),
                pairs(advice.toCallAlike()),
                Figures.percent(spread));
    }

    /** What it means to run another number of pairs than advised. */
    public static String asStated(int pairs, PlanAdvice advice) {
        String drawn = "Drawn up: " + counted(pairs, "pair") + " on each surface, as you say";
        return pairs < Math.max(advice.toFind(), advice.toCallAlike())
                ? drawn + ", fewer than advised; the verdict may well be 'not enough runs to tell'."
                : drawn + ".";
    }

    private static String pairs(int n) {
        return n >= Power.MOST_PAIRS ? "more pairs than anybody runs" : counted(n, "pair");
    }
}
