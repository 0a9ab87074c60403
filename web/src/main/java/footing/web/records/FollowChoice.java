package footing.web.records;

import footing.core.future.Followed;
import footing.io.follow.ForecastFile;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What of a follow-up somebody wants to see.
 *
 * @param drawn what the figures show, as the forecast's file names it; anything else shows flats
 * @param forecast the number of one; empty for the last kept
 * @param machine the only one; empty for all of them
 */
record FollowChoice(String drawn, String forecast, String machine) {
    static final FollowChoice USUAL = new FollowChoice("", "", "");

    Followed what() {
        return Arrays.stream(Followed.values())
                .filter(w -> ForecastFile.name(w).equals(drawn))
                .findFirst()
                .orElse(Followed.FLATS);
    }

    /** The one chosen of those kept, latest first; empty if there is none such. */
    Optional<ForecastStore.Heading> of(List<ForecastStore.Heading> kept) {
        return kept.stream()
                .filter(h -> forecast.isEmpty() || forecast.equals(Long.toString(h.id())))
                .findFirst();
    }
}
