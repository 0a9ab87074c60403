package footing.web.records;

import footing.core.fleet.Case;
import footing.core.follow.Warranties;
import footing.core.records.Log;
import footing.io.words.FollowWords;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * How far sets are into their warranty.
 *
 * @param lines a sentence for each set whose assembly has terms
 */
record WarrantyView(List<String> lines) {
    /** What to know of every warranty. */
    public String asks() {
        return FollowWords.WARRANTY_ASKS;
    }

    static WarrantyView of(Optional<Case> stated, Log log, LocalDate on) {
        return new WarrantyView(stated.stream()
                .flatMap(c -> Warranties.of(c, log, on).stream()
                        .map(w -> FollowWords.warranty(w, c.heading().currency())))
                .toList());
    }
}
