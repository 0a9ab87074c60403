package footing.io.words;

import footing.core.records.CrewContrast;
import footing.core.records.FixDelay;
import footing.core.records.FixShare;
import footing.core.records.FlatsTrend;
import footing.core.records.Learned;
import footing.core.records.LifeContrast;
import footing.core.records.Limits;
import footing.core.records.MeanCumulative;
import footing.core.records.Posterior;
import footing.core.records.PowerLaw;
import footing.core.records.TreadWear;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What records teach, each in a sentence with what it was counted from and how sure it is. */
public final class LearnedWords {
    private static final double PER = 1000;
    private static final int FEWEST_SETS = 3;
    private static final int FEWEST_STEPS = 4;

    private LearnedWords() {}

    /** Flats of one machine. */
    public static String flats(Learned.Flats f) {
        Posterior rate = f.rate();
        if (f.unwatched()) {
            String uncounted = f.boundOnly()
                    ? ""
                    : " Of " + seen(f) + " nobody knows over how many hours: read the hour meter, or name a case.";
            return f.machine() + ": no hours on record; its crew's machines and what is usual say "
                    + between(rate.limits(Limits.SHARE), PER) + " flats per 1,000 h on air tires." + uncounted;
        }
        String seen = seen(f) + " in " + hours(f.hours()) + (f.guessed() ? " by the calendar, not by a meter" : "");
        if (f.boundOnly()) {
            return f.machine() + ": " + seen
                    + ". That is an upper bound, no rate: nine in ten that there are fewer than "
                    + few(rate.quantile(0.9) * PER) + " per 1,000 h on air tires.";
        }
        String own = f.exact()
                .map(e -> " By its own count alone, " + between(e, PER) + ".")
                .orElse("");
        return f.machine() + ": " + seen + ": about " + few(rate.median() * PER)
                + " per 1,000 h on air tires, four in five that it is " + between(rate.limits(Limits.SHARE), PER) + "."
                + own;
    }

    private static String seen(Learned.Flats f) {
        if (f.boundOnly()) {
            return "no flats";
        }
        List<String> parts = new ArrayList<>();
        if (f.counted() > 0) {
            parts.add(Figures.counted(f.counted(), "flat"));
        }
        if (f.remembered() > 0) {
            parts.add("about " + Figures.counted(f.remembered(), "flat") + " from memory");
        }
        return Lists.and(parts);
    }

    /** Whether worn tires go flat more. */
    public static String wear(Learned.Wear wear) {
        String counted =
                Figures.counted(wear.flats(), "flat") + " on " + Figures.counted(wear.sets(), "set") + " of known age";
        return switch (wear.says()) {
            case CANT_TELL -> "Whether worn tires go flat more: can't tell from " + counted + ".";
            case LESS -> "Worn tires go flat less here, as far as " + counted + " tell." + misfit(wear);
            case MORE ->
                "Worn tires go flat more: by " + counted + ", wornTireEffect is about "
                        + Figures.percent(wear.effect().orElse(0)) + "." + misfit(wear);
        };
    }

    private static String misfit(Learned.Wear wear) {
        return wear.law().filter(PowerLaw::fitsPoorly).isEmpty()
                ? ""
                : " They don't follow the rise supposed here well, so trust the direction more than the size.";
    }

    /** How many flats a set has had by its age, with no law assumed; empty if too few sets were followed. */
    public static Optional<String> byAge(Learned.Wear wear) {
        List<MeanCumulative.Step> steps = wear.byAge().steps().stream()
                .filter(s -> s.atRisk() >= FEWEST_SETS)
                .toList();
        if (steps.size() < FEWEST_STEPS) {
            return Optional.empty();
        }
        MeanCumulative.Step half = steps.get((steps.size() - 1) / 2);
        MeanCumulative.Step last = steps.get(steps.size() - 1);
        return Optional.of("By " + hours(half.age()) + " of its life a set has had " + few(half.mean())
                + " flats on average, by " + hours(last.age()) + " " + few(last.mean()) + ", four in five that this is "
                + between(last.limits(Limits.SHARE), 1) + ".");
    }

    /** Whether the machines of a crew differ; empty if too few flats were seen. */
    public static Optional<String> crew(Learned.Crew crew) {
        CrewContrast c = crew.contrast();
        if (c.tooFew()) {
            return Optional.empty();
        }
        String machines =
                "The " + Figures.counted(c.machines(), "machine") + (crew.crew().isEmpty() ? "" : " of " + crew.crew());
        return Optional.of(
                c.differs()
                        ? machines + " go flat more differently than chance makes them: look at the ones far off."
                        : machines + " don't differ in flats by more than chance makes them.");
    }

    /** Whether one machine's flats come more often by and by. */
    public static String trend(Learned.Trend t) {
        FlatsTrend trend = t.trend();
        String seen = Figures.counted(trend.flats(), "flat") + " in " + hours(trend.hours());
        String now = ", by now about one in " + hours(trend.hoursBetween()) + ", four in five that it is one in "
                + between(trend.hoursBetweenLimits(Limits.SHARE), 1) + " h.";
        return t.machine() + ": "
                + switch (trend.says()) {
                    case CANT_TELL -> "whether flats come more often than they did: can't tell from " + seen + ".";
                    case MORE -> "flats come more and more often, " + seen + now;
                    case LESS -> "flats come less and less often, " + seen + now;
                };
    }

    /** Two assemblies of one position side by side. */
    public static String contrast(Learned.Contrast c) {
        String counted = Figures.counted(c.sets(), "set") + " (" + c.wornOut() + " worn out) and " + c.otherSets()
                + " (" + c.otherWornOut() + ")";
        String pair = name(c.assembly()) + " against " + name(c.other());
        String ratio = c.ratio().map(LearnedWords::ratio).orElse("");
        return switch (c.lasts()) {
            case CANT_TELL -> pair + ": can't tell which lasts longer from " + counted + "." + ratio;
            case LONGER -> pair + ": they last longer, by " + counted + " on the machines that carried them." + ratio;
            case SHORTER ->
                pair + ": they don't last as long, by " + counted + " on the machines that carried them." + ratio;
        };
    }

    private static String ratio(LifeContrast c) {
        Limits limits = c.ratioLimits(Limits.SHARE);
        String often = " At the same age they wear out ";
        if (c.isFinite()) {
            return often + few(Math.exp(c.logRatio())) + " times as often, four in five that it is "
                    + between(limits, 1) + " times.";
        }
        return often + (limits.low() > 0 ? "at least " + few(limits.low()) : "at most " + few(limits.high()))
                + " times as often, nine in ten.";
    }

    private static String name(String assembly) {
        return assembly.isEmpty() ? "sets nobody named" : assembly;
    }

    /** The life of an assembly's sets. */
    public static String life(Learned.SetLife life) {
        Posterior median = life.posterior().median();
        String known = ": half of the sets last about " + hours(median.median()) + ", four in five that this is "
                + between(median.limits(Limits.SHARE), 1) + " h; one set in ten ends before "
                + hours(life.posterior().life(0.1)) + ", one in ten lasts beyond "
                + hours(life.posterior().life(0.9)) + ".";
        return name(life.assembly()) + ", " + from(life) + known + shape(life) + unsaid(life) + setAside(life);
    }

    private static String from(Learned.SetLife life) {
        if (life.bought().isPresent()) {
            var b = life.bought().get();
            return "from " + Figures.counted(b.sets(), "set") + " bought over " + hours(b.hours()) + " of "
                    + Figures.counted(b.positions(), "machine");
        }
        return life.sets() == 0
                ? "without a set of known age"
                : "from " + Figures.counted(life.sets(), "set") + " of which "
                        + (life.wornOut() == 0 ? "none" : Figures.word(life.wornOut())) + " wore out";
    }

    private static String shape(Learned.SetLife life) {
        return life.fit()
                .filter(f -> !f.shapeEstablished(0.95))
                .map(f -> " The records alone don't show that sets wear out rather than end by chance.")
                .orElse("");
    }

    private static String unsaid(Learned.SetLife life) {
        return life.unsaid() == 0
                ? ""
                : " " + Lists.capital(Figures.counted(life.unsaid(), "set"))
                        + " came off without a reason written down and counted as still good: add rows with event off.";
    }

    private static String setAside(Learned.SetLife life) {
        return life.setAside() == 0
                ? ""
                : " " + Lists.capital(Figures.counted(life.setAside(), "purchase"))
                        + (life.wornOut() > 0
                                ? " not counted: sets that were followed are among them."
                                : " not counted: nothing was watched then.");
    }

    /** Hours left on a set. */
    public static String tread(TreadWear.HoursLeft left) {
        if (left.limits().high() <= 0) {
            return left.set() + ": worn to the limit by " + Figures.counted(left.readings(), "reading") + ".";
        }
        return left.set() + ": about " + hours(Math.max(left.left(), 0)) + " of tread left, four in five that it is "
                + between(
                        new Limits(
                                Math.max(left.limits().low(), 0), left.limits().high()),
                        1) + " h, by "
                + Figures.counted(left.readings(), "reading") + ".";
    }

    /** A set whose readings don't tell. */
    public static String untold(String set) {
        return set + ": not known; its depth readings can't be told from no wear at all.";
    }

    private static String seen(FixShare share) {
        return Figures.counted(share.count(), "time") + ", " + Figures.percent(share.mean())
                + " of flats, four in five that it is "
                + Figures.percent(share.limits().low()) + " to "
                + Figures.percent(share.limits().high());
    }

    private static String unseen(FixShare share) {
        return "not once; that leaves room for up to " + Figures.percent(Math.max(share.mostUnseen(), 0.01))
                + " of flats (one time in ten it is more)";
    }

    /** One fix of a crew, with its time where enough were written down. */
    public static String fix(FixShare share, List<FixDelay> delays) {
        String text = share.name() + ": " + (share.count() == 0 ? unseen(share) : seen(share));
        FixDelay delay = delays.stream()
                .filter(d -> d.name().equals(share.name()))
                .findFirst()
                .orElse(new FixDelay(share.name(), 0, Optional.empty()));
        return text
                + delay.minutes()
                        .map(m -> "; took " + few(m.low()) + " / " + few(m.likely()) + " / " + few(m.high())
                                + " min (one in ten below, half, one in ten above)")
                        .orElse(share.count() == 0 ? "" : "; too few times written down, the stated delay stands")
                + ".";
    }

    private static String hours(double hours) {
        return String.format(Locale.ROOT, "%,d h", Math.round(hours));
    }

    /** Two digits that count, none behind a point from ten on. */
    private static String few(double x) {
        return x >= 9.95
                ? String.format(Locale.ROOT, "%,d", Math.round(x))
                : String.format(Locale.ROOT, x < 0.995 ? "%.2f" : "%.1f", x);
    }

    private static String between(Limits limits, double per) {
        return limits.high() == Double.POSITIVE_INFINITY
                ? few(limits.low() * per) + " or more"
                : few(limits.low() * per) + " to " + few(limits.high() * per);
    }
}
