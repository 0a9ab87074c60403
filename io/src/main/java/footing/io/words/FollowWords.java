package footing.io.words;

import footing.core.fleet.Position;
import footing.core.follow.Band;
import footing.core.follow.FollowUp;
import footing.core.follow.Forecast;
import footing.core.follow.Line;
import footing.core.follow.Standing;
import footing.core.follow.Warranty;
import footing.core.future.Followed;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** How a forecast stands to what came, and how far sets are into their warranty, in words. */
public final class FollowWords {
    /** What to know of every warranty; common practice, no source. */
    public static final String WARRANTY_ASKS =
            "What is covered, and how it is paid, the warranty itself says; cuts, punctures and worn tread seldom are"
                    + " in it.";

    private FollowWords() {}

    /** Where the forecast comes from, and what 'due' means. */
    public static String intro(Forecast forecast) {
        return "Forecast of " + forecast.made() + ", from " + forecast.asOf()
                + " on. 'Due' is what eight in ten of the ways it could go hold.";
    }

    /** What is followed, as a heading. */
    public static String followed(Followed what) {
        return switch (what) {
            case FLATS -> "flats";
            case SETS -> "sets put on";
            case DOWN_HOURS -> "hours down";
            case PAID -> "paid for flats";
        };
    }

    /** Which machine, on what, over how long. */
    public static String head(FollowUp.Machine m) {
        String late = m.late()
                ? " Its recording began only on " + m.happened().from()
                        + "; what came is held against as many hours from the start of the forecast."
                : "";
        String beyond = m.beyond() ? " It has run beyond the trade that was forecast." : "";
        return m.forecast().id() + ", " + plan(m.forecast().plan()) + ": "
                + hours(m.happened().hours()) + " run by " + m.happened().to() + "." + late + beyond + others(m);
    }

    /** All machines together, over how long. */
    public static String head(FollowUp.Fleet fleet) {
        return "All machines: "
                + hours(fleet.came().get(fleet.came().size() - 1).hours()) + " run.";
    }

    /** What a machine was taken to run. */
    public static String plan(Forecast.Plan plan) {
        boolean same = plan.drive().equals(plan.driveBefore()) && plan.caster().equals(plan.casterBefore());
        return switch (plan.when()) {
            case NOW -> plan.wheels() + (same ? " as it is" : " put on at the start");
            case WORN -> plan.wheels() + " when worn";
        };
    }

    private static String others(FollowUp.Machine m) {
        return m.others().isEmpty()
                ? ""
                : " The records show " + Lists.and(m.others().stream().sorted().toList())
                        + " put on, which is not what was forecast.";
    }

    /** One thing followed: what came, what was due, how the two stand. */
    public static String line(Line line, String currency) {
        return Lists.capital(came(line, currency)) + "; " + due(line.due(), line.what()) + ": " + standing(line) + ".";
    }

    private static String came(Line line, String currency) {
        return switch (line.what()) {
            case FLATS -> counted(line.came(), "flat");
            case SETS -> counted(line.came(), "set") + " put on";
            case DOWN_HOURS -> "down " + amount(line.came()) + " h";
            case PAID -> "paid " + Figures.money(line.came()) + " " + currency + " for flats";
        };
    }

    private static String counted(double x, String what) {
        return x == 0 ? "no " + what + "s" : Figures.counted(x, what);
    }

    /** The band in words: 'between 2 and 6 were due', 'at most 1 was due'. */
    private static String due(Band due, Followed what) {
        String low = rounded(due.low(), what);
        String high = rounded(due.high(), what);
        if (high.equals("0")) {
            return "none was due";
        }
        if (low.equals("0")) {
            return "up to " + high + (high.equals("1") ? " was" : " were") + " due";
        }
        return low.equals(high)
                ? low + (low.equals("1") ? " was" : " were") + " due"
                : low + " to " + high + " were due";
    }

    private static String rounded(double x, Followed what) {
        return switch (what) {
            case FLATS, SETS, PAID -> Figures.money(x);
            case DOWN_HOURS -> amount(x);
        };
    }

    private static String amount(double hours) {
        return hours == 0 ? "0" : String.format(Locale.ROOT, hours < 10 ? "%.1f" : "%,.0f", hours);
    }

    private static String standing(Line line) {
        return switch (line.standing()) {
            case AS_EXPECTED -> "as expected";
            case MORE -> "more than expected";
            case LESS ->
                line.what() == Followed.FLATS || line.what() == Followed.SETS
                        ? "fewer than expected"
                        : "less than expected";
            case TOO_EARLY -> "too early to tell";
            case NOT_WRITTEN ->
                "can't tell, as " + Figures.counted(line.unwritten(), "flat") + " "
                        + (line.unwritten() == 1 ? "has" : "have") + " no "
                        + (line.what() == Followed.PAID ? "cost" : "minutes") + " written down";
        };
    }

    /** Everything in a sentence: how many machines came as expected, and which didn't. */
    public static String summary(FollowUp up) {
        if (up.machines().isEmpty()) {
            return "Nothing has been written down since.";
        }
        List<String> more = new ArrayList<>();
        List<String> less = new ArrayList<>();
        List<String> early = new ArrayList<>();
        int expected = 0;
        for (FollowUp.Machine m : up.machines()) {
            Standing flats = m.lines().get(0).standing();
            String id = m.forecast().id();
            switch (flats) {
                case MORE -> more.add(id);
                case LESS -> less.add(id);
                case TOO_EARLY, NOT_WRITTEN -> early.add(id);
                case AS_EXPECTED -> expected++;
            }
        }
        List<String> parts = new ArrayList<>();
        if (expected > 0) {
            parts.add("as expected on " + Figures.word(expected) + (expected == 1 ? " machine" : " machines"));
        }
        add(parts, "more than expected on ", more);
        add(parts, "fewer than expected on ", less);
        add(parts, "too early to tell on ", early);
        add(parts, "nothing written down since for ", up.silent());
        return "Flats: " + String.join("; ", parts) + ".";
    }

    private static void add(List<String> parts, String what, List<String> ids) {
        if (!ids.isEmpty()) {
            parts.add(what + Lists.machines(ids));
        }
    }

    /** How far a set is into its warranty. */
    public static String warranty(Warranty w, String currency) {
        String on = w.fitted().map(d -> ", on since " + d).orElse("");
        String set =
                w.machine() + " " + (w.position() == Position.DRIVE ? "drive" : "caster") + ", " + w.assembly() + on;
        List<String> run = new ArrayList<>();
        w.terms().hours().ifPresent(h -> run.add(run(w.hours().orElse(Double.NaN), hours(h))));
        w.terms()
                .months()
                .ifPresent(m -> run.add(run(Math.floor(w.months().orElse(Double.NaN)), Figures.count(m) + " months")));
        return set + ": " + Lists.and(run) + " run" + left(w, currency) + ".";
    }

    private static String run(double run, String of) {
        return (Double.isNaN(run) ? "nobody knows how much" : Figures.money(run)) + " of " + of;
    }

    private static String left(Warranty w, String currency) {
        if (w.over()) {
            return "; it has run out";
        }
        List<String> left = new ArrayList<>();
        w.hoursLeft().ifPresent(h -> left.add(hours(h)));
        w.monthsLeft().ifPresent(m -> left.add(Figures.counted(Math.floor(m), "month")));
        String rest = left.isEmpty() ? "" : "; " + Lists.and(left) + " left, whichever ends first";
        if (left.size() == 1) {
            rest = "; " + left.get(0) + " left";
        }
        boolean told = w.unused().isPresent() && !w.unsure();
        return rest
                + (told
                        ? "; paid pro rata, " + Figures.percent(w.unused().getAsDouble()) + " of the price is "
                                + Figures.money(w.unused().getAsDouble() * w.price()) + " " + currency
                        : "");
    }

    private static String hours(double hours) {
        return Figures.money(hours) + " h";
    }
}
