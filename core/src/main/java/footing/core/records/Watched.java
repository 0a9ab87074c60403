package footing.core.records;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** One machine's flats and the hours they are counted over, on air tires. */
record Watched(String machine, double counted, double remembered, double hours, boolean guessed, double exposure) {
    /** A machine without a row. */
    static Watched never(String machine) {
        return new Watched(machine, 0, 0, 0, false, 0);
    }

    static Watched of(History h, Background background) {
        double metered = h.hours();
        OptionalDouble calendar = background.hours(h.machine, h.begin, h.end);
        boolean guessed = !(metered > 0) && calendar.isPresent();
        double hours = guessed ? calendar.getAsDouble() : metered;
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
        return new Watched(h.machine, h.counted, h.remembered, hours, guessed, ofAir);
    }

    /** As the crew's rates count them: a count from memory in as many fewer hours. */
    CrewRates.Counted weighed() {
        double flats = counted + remembered;
        if (!(exposure > 0)) {
            return new CrewRates.Counted(0, 0);
        }
        double weight = counted > 0 ? 1 : Memory.weight(remembered);
        return new CrewRates.Counted(flats * weight, exposure * weight);
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
