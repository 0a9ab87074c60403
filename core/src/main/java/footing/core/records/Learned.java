package footing.core.records;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What records teach, each with what it was counted from.
 *
 * @param wear whether worn tires go flat more
 */
public record Learned(
        List<Flats> flats,
        Wear wear,
        List<SetLife> lives,
        List<TreadWear.HoursLeft> treads,
        List<String> untold,
        List<Fixes> fixes) {
    public Learned {
        flats = List.copyOf(flats);
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

    /** Whether flats come more often on worn sets; no law if too few flats have a set of known age. */
    public record Wear(int flats, int sets, Optional<PowerLaw> law) {
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
