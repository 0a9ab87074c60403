package footing.io.photo;

import java.util.ArrayList;
import java.util.List;

/** A patch and its border, in one shade of the picture. */
record Traced(Blob blob, Border border) {
    private static final double LEAST_CONTRAST = 20;
    private static final double LEAST_OVER_NOISE = 4;
    private static final double MOST_FAINT = 0.3;
    private static final double MOST_SECOND = 0.3;

    /** How much it looks like a print, to choose between two shades. */
    double worth() {
        return border.contrast() * (1 - border.faint());
    }

    List<Doubt> doubts() {
        List<Doubt> doubts = new ArrayList<>();
        if (!(border.contrast() >= LEAST_CONTRAST && border.contrast() >= LEAST_OVER_NOISE * border.noise())) {
            doubts.add(Doubt.FAINT);
        }
        if (!(border.faint() <= MOST_FAINT)) {
            doubts.add(Doubt.UNCLEAR);
        }
        if (blob.second() > MOST_SECOND * blob.area()) {
            doubts.add(Doubt.SEVERAL);
        }
        return doubts;
    }
}
