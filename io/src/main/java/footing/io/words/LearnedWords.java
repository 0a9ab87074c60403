package footing.io.words;

import footing.core.records.FixDelay;
import footing.core.records.FixShare;
import footing.core.records.Learned;
import footing.core.records.Limits;
import footing.core.records.Posterior;
import footing.core.records.TreadWear;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What records teach, each in a sentence with what it was counted from and how sure it is. */
public final class LearnedWords {
    private static final double PER = 1000;

    private LearnedWords() {}

    /** Flats of one machine. */
    public static String flats(Learned.Flats f) {
        Posterior rate = f.rate();
        if (f.unwatched()) {
            return f.machine() + ": no hours on record; its crew's machines and what is usual say "
                    + between(rate.limits(Limits.SHARE), PER) + " flats per 1,000 h on air tires.";
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
            case LESS -> "Worn tires go flat less here, as far as " + counted + " tell.";
            case MORE ->
                "Worn tires go flat more: by " + counted + ", wornTireEffect is about "
                        + Figures.percent(wear.effect().orElse(0)) + ".";
        };
    }

    /** The life of an assembly's sets. */
    public static String life(Learned.SetLife life) {
        Posterior median = life.posterior().median();
        String name = life.assembly().isEmpty() ? "sets nobody named" : life.assembly();
        String known = ": half of the sets last about " + hours(median.median()) + ", four in five that this is "
                + between(median.limits(Limits.SHARE), 1) + " h; one set in ten ends before "
                + hours(life.posterior().life(0.1)) + ", one in ten lasts beyond "
                + hours(life.posterior().life(0.9)) + ".";
        return name + ", " + from(life) + known + shape(life) + unsaid(life) + setAside(life);
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
                .orElse(new FixDelay(share.name(), 0, java.util.Optional.empty()));
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
