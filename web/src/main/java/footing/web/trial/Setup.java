package footing.web.trial;

import footing.core.trial.TrialKind;
import footing.io.trial.Measure;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What is compared, how, and in which order: a trial as it was begun here.
 *
 * @param judge what each run gives, by its key in a trial file; {@value #OPPOSED} for opposed pulls
 * @param a keys of the first thing in a trial file
 * @param b keys of the second
 * @param margin as a trial file writes it; empty for the usual one
 * @param held what is kept the same
 * @param surfaces one empty name if there is only one
 * @param pairs on each surface; of opposed pulls, pulls
 * @param seed tosses for the order
 * @param day the day it was begun
 * @param card the sheet, card or frame on the photos; empty where none are taken
 * @param ring what the wheel swept, of a pivot; empty for all within the frame
 */
record Setup(
        String judge,
        boolean metric,
        String title,
        Map<String, String> a,
        Map<String, String> b,
        String margin,
        List<String> held,
        List<String> surfaces,
        int pairs,
        long seed,
        String day,
        String card,
        String ring) {
    static final String OPPOSED = "winner";

    Setup {
        a = new LinkedHashMap<>(a);
        b = new LinkedHashMap<>(b);
        held = List.copyOf(held);
        surfaces = List.copyOf(surfaces);
    }

    /** Empty for opposed pulls, and for a key that nothing measured has. */
    static Optional<Measure> measured(String judge) {
        return Arrays.stream(Measure.values())
                .filter(m -> m.key().equals(judge))
                .findFirst();
    }

    Optional<Measure> measure() {
        return measured(judge);
    }

    public boolean opposed() {
        return judge.equals(OPPOSED);
    }

    TrialKind kind() {
        return measure().map(Measure::kind).orElse(TrialKind.PULL);
    }

    /** The unit in which its runs are typed; empty for a count or a winner. */
    public String unit() {
        return measure().map(m -> m.shown(metric).unit()).orElse("");
    }

    /** True if what is judged can be read off a photo. */
    boolean hasPhotos() {
        return kind() == TrialKind.PRINT || kind() == TrialKind.PIVOT;
    }

    Setup withPairs(int more) {
        return new Setup(judge, metric, title, a, b, margin, held, surfaces, more, seed, day, card, ring);
    }
}
