package footing.web.trial;

import footing.io.form.Written;
import footing.io.photo.Spot;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Places in a picture as texts: '10,20 30,40'. */
final class Spots {
    private static final int MOST = 2000;
    private static final String NUMBER = "(\\d{1,5}(?:\\.\\d{1,4})?)";
    private static final Pattern PLACE = Pattern.compile(NUMBER + "," + NUMBER);

    private Spots() {}

    /** Empty if it is no such text; no places of a blank one. */
    static Optional<List<Spot>> read(String text) {
        List<Spot> spots = new ArrayList<>();
        if (text.isBlank()) {
            return Optional.of(spots);
        }
        for (String word : text.strip().split("\\s+", -1)) {
            Matcher m = PLACE.matcher(word);
            if (!m.matches() || spots.size() >= MOST) {
                return Optional.empty();
            }
            spots.add(new Spot(Double.parseDouble(m.group(1)), Double.parseDouble(m.group(2))));
        }
        return Optional.of(spots);
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
