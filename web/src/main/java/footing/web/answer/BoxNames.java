package footing.web.answer;

import footing.core.fleet.Key;
import java.util.List;

/** What the three values of a three-point are called, in the order low, likely, high. */
final class BoxNames {
    private BoxNames() {}

    static List<String> of(Key key) {
        return switch (key) {
            case FLATS_PER_SEASON, FLATS_PER_1000H -> List.of("good year", "usual", "bad year");
            case DELAY -> List.of("quick", "usual", "slow");
            case LIFE -> List.of("short", "usual", "long");
            default -> List.of("low", "likely", "high");
        };
    }

    /** How the outer two are to be read. */
    static String hint(Key key) {
        return switch (key) {
            case FLATS_PER_SEASON, FLATS_PER_1000H ->
                "one year in ten is better than the first, one worse than the last";
            case DELAY, LIFE -> "one in ten is below the first, one above the last";
            default -> "one chance in ten that it is below the first, one that it is above the last";
        };
    }
}
