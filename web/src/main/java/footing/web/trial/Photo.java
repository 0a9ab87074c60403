package footing.web.trial;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A photo of a run, without its picture.
 *
 * @param part what it shows: {@value #PRINT}, {@value #BEFORE} or {@value #AFTER}
 * @param made when it came into the sender's hands
 * @param corners by hand, as {@link Pointed} writes them; empty to have them found
 * @param border by hand
 * @param seen null until something was read off it
 */
record Photo(
        long id,
        String sentAs,
        String place,
        String part,
        String made,
        String corners,
        String border,
        @Nullable Read seen,
        boolean undone) {
    static final String PRINT = "print";
    static final String BEFORE = "before";
    static final String AFTER = "after";

    /**
     * What was read off a photo.
     *
     * @param drawn false if it is no picture that can be used
     * @param said in a sentence
     * @param doubts why it is not sure
     * @param value of the run, as a number in the unit of the trial; empty if there is none
     * @param corners found or taken
     * @param border found or taken, thinned out so that it can be mended by hand
     */
    record Read(boolean drawn, String said, List<String> doubts, String value, String corners, String border) {
        Read {
            doubts = List.copyOf(doubts);
        }
    }

    /** The parts that photos of a trial show. */
    static List<String> parts(Setup setup) {
        return !setup.hasPhotos()
                ? List.of()
                : setup.kind() == footing.core.trial.TrialKind.PRINT ? List.of(PRINT) : List.of(BEFORE, AFTER);
    }
}
