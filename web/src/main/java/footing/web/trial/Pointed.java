package footing.web.trial;

import footing.io.form.Written;
import footing.io.photo.Spot;
import footing.io.photo.Spots;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What is pointed at on a photo, as texts. */
final class Pointed {
    private Pointed() {}

    /** Empty if it is no such text; no places of a blank one. */
    static Optional<List<Spot>> read(String text) {
        return text.isBlank() ? Optional.of(List.of()) : Optional.ofNullable(Spots.read(text));
    }

    static String write(List<Spot> spots) {
        return spots.stream().map(s -> number(s.x()) + "," + number(s.y())).collect(Collectors.joining(" "));
    }

    private static String number(double x) {
        return Written.number(Math.rint(Math.max(0, x)));
    }

    /** So many of them at the most, evenly. */
    static List<Spot> thinned(List<Spot> spots, int most) {
        if (spots.size() <= most) {
            return spots;
        }
        List<Spot> kept = new ArrayList<>();
        for (int i = 0; i < most; i++) {
            kept.add(spots.get((int) ((long) i * spots.size() / most)));
        }
        return kept;
    }
}
