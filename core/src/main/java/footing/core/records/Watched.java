package footing.core.records;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One machine's flats and the hours they are counted over, on air tires.
 *
 * @param weighed flats and hours as the crew's rates count them: a count from memory as fewer flats in fewer hours
 */
record Watched(
        String machine,
        double counted,
        double remembered,
        double hours,
        boolean guessed,
        double exposure,
        CrewRates.Counted weighed) {
    private static final CrewRates.Counted NOTHING = new CrewRates.Counted(0, 0);

    /** A machine without a row. */
    static Watched never(String machine) {
        return new Watched(machine, 0, 0, 0, false, 0, NOTHING);
    }

    static Watched of(History h, Background background) {
        double metered = h.hours();
        OptionalDouble calendar = background.hours(h.machine, h.begin, h.end);
        boolean guessed = !(metered > 0) && calendar.isPresent();
        double hours = guessed ? calendar.getAsDouble() : metered;
        double exposure = exposure(h, background, hours);
        if (!h.remembered.isEmpty()) {
            double share = hours > 0 ? exposure / hours : exposure(h, background, 1);
            return recalled(
                    h, background, new Watched(h.machine, h.counted, 0, hours, guessed, exposure, NOTHING), share);
        }
        CrewRates.Counted weighed = exposure > 0 ? new CrewRates.Counted(h.counted, exposure) : NOTHING;
        return new Watched(h.machine, h.counted, 0, hours, guessed, exposure, weighed);
    }

    /** Hours on air tires: those of the known sets, the rest on what the machine carries. */
    private static double exposure(History h, Background background, double hours) {
        double ofAir = 0;
        for (Spot spot : new Spot[] {Spot.DRIVE, Spot.CASTER}) {
            double share = background.flatsAt(h.machine, spot);
            double covered = 0;
            for (Map.Entry<String, Double> set : h.hoursBy(spot).entrySet()) {
                ofAir += share * set.getValue() * background.ofAir(h.machine, set.getKey());
                covered += set.getValue();
            }
            double rest = Math.max(hours - covered, 0);
            ofAir += share * rest * background.ofAir(h.machine, background.carried(h.machine, spot));
        }
        return ofAir;
    }

    /**
     * With counts from memory, each of the year up to its day. Where flats were written down as well, the hours watched
     * are counted once; where none were, nobody watched but the one who remembers.
     */
    private static Watched recalled(History h, Background background, Watched logged, double airShare) {
        boolean keepsLog = h.counted > 0;
        Recalled recalled = Recalled.of(h, background, keepsLog);
        double hours = (keepsLog ? logged.hours : 0) + recalled.hours();
        double watched = keepsLog ? logged.exposure : 0;
        double extra = recalled.hours() * airShare;
        double weight = Memory.weight(recalled.outside());
        double flats = h.counted + recalled.inside() + weight * recalled.outside();
        double exposure = watched + weight * extra;
        return new Watched(
                h.machine,
                h.counted,
                recalled.inside() + recalled.outside(),
                hours,
                recalled.guessed() || (keepsLog && logged.guessed),
                watched + extra,
                exposure > 0 ? new CrewRates.Counted(flats, exposure) : NOTHING);
    }

    Learned.Flats learned(String crew, Posterior rate) {
        Optional<Limits> exact = Optional.empty();
        if (exposure > 0 && remembered == 0) {
            Limits counts = PoissonLimits.of((int) Math.rint(counted), Limits.SHARE);
            exact = Optional.of(new Limits(counts.low() / exposure, counts.high() / exposure));
        }
        return new Learned.Flats(machine, crew, counted, remembered, hours, guessed, exposure, exact, rate);
    }
}
