package footing.core.records;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What records teach, each with what it was counted from.
 *
 * @param crews whether the machines of each crew differ
 * @param trends machines whose flats are many enough to tell whether they come more often by and by
 * @param wear whether worn tires go flat more
 * @param contrasts assemblies of one position side by side
 */
public record Learned(
        List<Flats> flats,
        List<Crew> crews,
        List<Trend> trends,
        Wear wear,
        List<SetLife> lives,
        List<Contrast> contrasts,
        List<TreadWear.HoursLeft> treads,
        List<String> untold,
        List<Fixes> fixes) {
    public Learned {
        flats = List.copyOf(flats);
        crews = List.copyOf(crews);
        trends = List.copyOf(trends);
        contrasts = List.copyOf(contrasts);
        lives = List.copyOf(lives);
        treads = List.copyOf(treads);
        untold = List.copyOf(untold);
        fixes = List.copyOf(fixes);
    }

    /**
     * Flats of one machine, on air tires.
     *
     * @param counted flats written down; {@code remembered} flats of a count from memory
     * @param hours the machine was watched; {@code guessed} if they come from the calendar, not from a meter
     * @param exposure the same in hours on air tires: what a set that seldom goes flat was exposed to counts less
     * @param exact limits from this machine's counted flats alone, per hour on air tires
     * @param rate per hour on air tires, crew and prior included
     */
    public record Flats(
            String machine,
            String crew,
            double counted,
            double remembered,
            double hours,
            boolean guessed,
            double exposure,
            Optional<Limits> exact,
            Posterior rate) {
        /** True if no flat was seen at all: then only an upper bound is known. */
        public boolean boundOnly() {
            return counted == 0 && remembered == 0;
        }

        /** True if the rate is the crew's or the prior alone. */
        public boolean unwatched() {
            return exposure == 0;
        }
    }

    /** The machines of one crew side by side. */
    public record Crew(String crew, CrewContrast contrast) {}

    /** One machine's flats over the hours it was watched. */
    public record Trend(String machine, FlatsTrend trend) {}

    /**
     * Two assemblies of one position.
     *
     * @param wornOut of {@code sets} of the first; {@code otherWornOut} of {@code otherSets} of the other
     * @param ratio of how often they wear out at the same age; empty if sets of both were never watched at the same age
     * @param chance of so great a difference if they are alike
     */
    public record Contrast(
            String assembly,
            String other,
            int sets,
            int wornOut,
            int otherSets,
            int otherWornOut,
            Optional<LifeContrast> ratio,
            double chance) {
        private static final double SURE = 0.05;

        public enum Lasts {
            LONGER,
            SHORTER,
            CANT_TELL
        }

        static Contrast of(String assembly, String other, List<Life> lives, List<Life> others) {
            Optional<LifeContrast> ratio = LifeContrast.of(lives, others);
            return new Contrast(
                    assembly,
                    other,
                    lives.size(),
                    worn(lives),
                    others.size(),
                    worn(others),
                    ratio,
                    ratio.map(r -> r.chance(lives, others)).orElse(1.0));
        }

        private static int worn(List<Life> lives) {
            return (int) lives.stream().filter(Life::wornOut).count();
        }

        /** Longer or shorter only if kinds alike would differ so much less than one time in twenty. */
        public Lasts lasts() {
            if (ratio.isEmpty() || !(chance < SURE)) {
                return Lasts.CANT_TELL;
            }
            return ratio.get().logRatio() < 0 ? Lasts.LONGER : Lasts.SHORTER;
        }
    }

    /**
     * Whether flats come more often on worn sets.
     *
     * @param law empty if too few flats have a set of known age
     * @param byAge flats of a set by its age, with no law assumed
     */
    public record Wear(int flats, int sets, Optional<PowerLaw> law, MeanCumulative byAge) {
        public enum Says {
            MORE,
            LESS,
            CANT_TELL
        }

        /** More or less only if 95 % limits leave out 1. */
        public Says says() {
            return law.map(l -> l.limits(0.95))
                    .map(l -> l.low() > 1 ? Says.MORE : l.high() < 1 ? Says.LESS : Says.CANT_TELL)
                    .orElse(Says.CANT_TELL);
        }

        /** What to state as the effect of wear, if it can be told and is a rise. */
        public OptionalDouble effect() {
            return says() == Says.MORE
                    ? OptionalDouble.of(
                            Math.min(PowerLaw.wornTireEffect(law.orElseThrow().shape()), 2))
                    : OptionalDouble.empty();
        }
    }

    /**
     * The life of an assembly's sets.
     *
     * @param sets of known age; {@code wornOut} of them worn out; {@code unsaid} replaced and nobody wrote why
     * @param bought purchases used because no single set was followed; {@code setAside} rows of purchases were not
     */
    public record SetLife(
            String assembly,
            int sets,
            int wornOut,
            int unsaid,
            Optional<Bought> bought,
            int setAside,
            Optional<WeibullFit> fit,
            SurvivalCurve curve,
            LifePosterior posterior) {}

    /** What one crew does about its flats. */
    public record Fixes(String crew, int flats, List<FixShare> shares, List<FixDelay> delays) {
        public Fixes {
            shares = List.copyOf(shares);
            delays = List.copyOf(delays);
        }
    }
}
