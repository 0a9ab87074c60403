package footing.io.trial;

import footing.io.form.At;
import footing.io.form.Form;
import footing.io.form.Node;
import footing.io.form.Problems;
import footing.io.photo.PrintAsked;
import footing.io.photo.Spot;
import footing.io.photo.Spots;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Places on a photo, by hand.
 *
 * @param fewest how many there are at the least
 * @param corners true for four that make a figure without a dent
 */
record PlacesForm(int fewest, boolean corners) implements Form {
    @Override
    public void check(Node node, At at, Problems problems) {
        if (read(node).isEmpty()) {
            String due = corners ? "four corners" : "a border of at least " + fewest + " places";
            Form.wrongShape(node, at, problems, due + " in pixels of the photo would fit", "try: " + example());
        }
    }

    /** The places; empty if there are none that fit. */
    List<Spot> read(@Nullable Node node) {
        List<Spot> places = node instanceof Node.Scalar s ? Spots.read(s.text()) : null;
        if (places == null || places.size() < fewest || (corners && !PrintAsked.areCorners(places))) {
            return List.of();
        }
        return places;
    }

    @Override
    public Map<String, Object> schema() {
        String place = "\\d{1,5}(\\.\\d{1,4})?,\\d{1,5}(\\.\\d{1,4})?";
        String more = corners ? "{3}" : "{" + (fewest - 1) + "," + (Spots.MOST - 1) + "}";
        return Map.of("type", "string", "pattern", "^\\s*" + place + "(\\s+" + place + ")" + more + "\\s*$");
    }

    @Override
    public String example() {
        return corners ? "\"" + Spots.EXAMPLE + "\"" : "\"300,300 400,300 ...\"";
    }
}
