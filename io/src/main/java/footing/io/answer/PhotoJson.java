package footing.io.answer;

import footing.core.ground.PrintOutline;
import footing.io.photo.Doubt;
import footing.io.photo.PrintSeen;
import footing.io.photo.Spot;
import footing.io.photo.TurfSeen;
import footing.io.words.PhotoWords;
import java.io.Writer;
import java.util.List;
import java.util.Locale;

/**
 * Writes what was read off a photo as a JSON document of the format {@value #FORMAT}. Measures are in SI units, places
 * in pixels of the upright picture, shares are fractions; what was not found is null or empty.
 */
public final class PhotoJson {
    public static final String FORMAT = "footing-photo/1";

    private final JsonText json;

    private PhotoJson(JsonText json) {
        this.json = json;
    }

    /** Writes what was read of a print and leaves the writer open; {@code overlay} is the name of the picture's file. */
    public static void write(PrintSeen seen, String overlay, Writer to) {
        try (JsonText json = new JsonText(to)) {
            json.object(() -> new PhotoJson(json).print(seen, overlay));
        }
    }

    /** Writes what was read of torn turf and leaves the writer open; the overlays are names of files. */
    public static void write(TurfSeen seen, List<String> overlays, Writer to) {
        try (JsonText json = new JsonText(to)) {
            json.object(() -> new PhotoJson(json).turf(seen, overlays));
        }
    }

    private void print(PrintSeen seen, String overlay) {
        json.text("format", FORMAT);
        json.text("of", "print");
        json.flag("sure", seen.isSure());
        json.objectOrNull("print", seen.print(), this::outline);
        json.number("areaErrorOfScale", seen.print() == null ? null : Double.valueOf(seen.error()));
        spots("corners", seen.corners());
        spots("border", seen.border());
        doubts(seen.doubts());
        json.array("overlays", () -> json.text(overlay));
        json.text("tried", PhotoWords.TRIED);
    }

    private void outline(PrintOutline print) {
        json.number("area", print.area());
        json.number("length", print.length());
        json.number("width", print.width());
        json.number("shape", print.shape());
        json.number("misfit", print.misfit());
    }

    private void turf(TurfSeen seen, List<String> overlays) {
        json.text("format", FORMAT);
        json.text("of", "turf");
        json.flag("sure", seen.isSure());
        json.number("before", seen.before());
        json.number("after", seen.after());
        json.number("torn", seen.torn());
        json.number("level", seen.level());
        TurfSeen.Half first = seen.first();
        spots("cornersBefore", first == null ? List.of() : first.corners());
        spots("cornersAfter", seen.second().corners());
        doubts(seen.doubts());
        json.array("overlays", () -> overlays.forEach(json::text));
        json.text("tried", PhotoWords.TRIED);
    }

    private void spots(String name, List<Spot> spots) {
        json.objects(name, spots, s -> {
            json.number("x", s.x());
            json.number("y", s.y());
        });
    }

    private void doubts(List<Doubt> doubts) {
        json.objects("doubts", doubts, d -> {
            json.text("kind", d.name().toLowerCase(Locale.ROOT).replace('_', ' '));
            json.text("sentence", PhotoWords.of(d));
        });
    }
}
