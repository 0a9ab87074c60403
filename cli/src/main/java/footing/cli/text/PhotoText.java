package footing.cli.text;

import footing.core.ground.PrintOutline;
import footing.io.photo.Doubt;
import footing.io.photo.PrintSeen;
import footing.io.photo.TurfSeen;
import footing.io.words.Lists;
import footing.io.words.PhotoWords;
import java.util.List;

/** What was read off a photo, as a page. */
public final class PhotoText {
    private PhotoText() {}

    /** In what units to answer, and the load and pressure at which a print was taken, as written or as dots. */
    public record Taken(boolean metric, String load, String pressure) {}

    public static String of(PrintSeen seen, String overlay, Taken taken, Letters letters) {
        Lines lines = new Lines(letters);
        PhotoWords words = new PhotoWords(taken.metric());
        PrintOutline print = seen.print();
        if (print != null) {
            lines.paragraph(words.measures(print)).blank();
        }
        lines.paragraph(words.sureness(seen));
        doubts(seen.doubts(), lines);
        if (print != null) {
            lines.head(
                    "For the assembly in a case, with the load and pressure it was taken at (leave the pressure out where"
                            + " there is no air); from then on 'footing ground' rests on it");
            lines.paragraph(words.inCase(print, taken.load(), taken.pressure()));
        }
        return closed(lines, List.of(overlay));
    }

    public static String of(TurfSeen seen, List<String> overlays, Letters letters) {
        Lines lines = new Lines(letters);
        PhotoWords words = new PhotoWords(false);
        lines.paragraph(words.shares(seen)).blank();
        lines.paragraph(words.sureness(seen));
        doubts(seen.doubts(), lines);
        if (seen.level() != null) {
            lines.blank().paragraph(PhotoWords.level(seen.level()));
        }
        return closed(lines, overlays);
    }

    private static void doubts(List<Doubt> doubts, Lines lines) {
        doubts.forEach(d -> lines.item(PhotoWords.of(d)));
    }

    private static String closed(Lines lines, List<String> overlays) {
        lines.blank().paragraph("Wrote " + Lists.and(overlays) + ". " + PhotoWords.TRIED);
        return lines.toString();
    }
}
