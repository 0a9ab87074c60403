package footing.core.records;

import java.time.LocalDate;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;

/** What records leave out and a case knows. Without a case: {@link #NONE}. */
public interface Background {
    /** The crew whose ground a machine shares; machines without a case are one crew. */
    default String crew(String machine) {
        return "";
    }

    /** The machines there are; those without a row are told of by their crew. */
    default Set<String> machines() {
        return Set.of();
    }

    /** The share of a machine's flats at a position. */
    default double flatsAt(String machine, Spot spot) {
        return spot == Spot.DRIVE ? 0.6 : 0.4;
    }

    /** Flats of a set as a share of an air set's on the same ground. */
    default double ofAir(String machine, String assembly) {
        return 1;
    }

    /** The assembly a machine carries at a position where its records say nothing; empty if nobody knows. */
    default String carried(String machine, Spot spot) {
        return "";
    }

    /** Hours a machine would run between two days, where it has no readings; empty if nobody knows. */
    default OptionalDouble hours(String machine, LocalDate from, LocalDate to) {
        return OptionalDouble.empty();
    }

    /** The machines that take an assembly of which purchases tell; those of the records if nobody knows. */
    default Set<String> takers(String assembly) {
        return Set.of();
    }

    /** Shares of a crew's fixes as stated, empty if nobody did. */
    default Map<String, Double> fixes(String crew) {
        return Map.of();
    }

    default FlatsPrior flats() {
        return FlatsPrior.COMMON;
    }

    default LifePrior life(String assembly) {
        return LifePrior.COMMON;
    }

    Background NONE = new Background() {};
}
