package footing.io.photo;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Places in a picture as people write them: {@code 410,305 2890,340}, in pixels of the upright picture. */
public final class Spots {
    /** More are not read. */
    public static final int MOST = 2000;

    public static final String EXAMPLE = "410,305 2890,340 2950,2210 380,2150";

    private static final String NUMBER = "(\\d{1,5}(?:\\.\\d{1,4})?)";
    private static final Pattern PLACE = Pattern.compile(NUMBER + "," + NUMBER);

    private Spots() {}

    /** What is written; null if it is no such places, or too many. */
    public static @Nullable List<Spot> read(String text) {
        List<Spot> places = new ArrayList<>();
        for (String word : text.strip().split("\\s+", -1)) {
            Matcher m = PLACE.matcher(word);
            if (!m.matches() || places.size() >= MOST) {
                return null;
            }
            places.add(new Spot(Double.parseDouble(m.group(1)), Double.parseDouble(m.group(2))));
        }
        return places;
    }
}
