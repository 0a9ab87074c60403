package footing.web.trial;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A photo in words.
 *
 * @param title which run, and what of it
 * @param said what was read off it
 * @param value with its unit; empty if there is none to write down
 * @param drawn true if there is a picture with what was found drawn over
 */
record PhotoLine(long id, String title, String said, List<String> doubts, String value, boolean drawn, boolean undone) {
    /** In the order in which they were made. */
    static List<PhotoLine> of(Setup setup, List<Photo> photos) {
        return photos.stream().map(p -> of(setup, p)).toList();
    }

    static PhotoLine of(Setup setup, Photo photo) {
        Map<String, String> plan = new LinkedHashMap<>();
        Planned.of(setup).forEach(p -> plan.put(p.place(), p.words()));
        String part = switch (photo.part()) {
            case Photo.BEFORE -> ", before the turn";
            case Photo.AFTER -> ", after the turn";
            default -> "";
        };
        Photo.Read seen = photo.seen();
        String title = plan.getOrDefault(photo.place(), "Run " + photo.place()) + part;
        if (seen == null) {
            return new PhotoLine(photo.id(), title, "Not measured yet.", List.of(), "", false, photo.undone());
        }
        String value = seen.value().isEmpty() ? "" : (seen.value() + " " + setup.unit()).strip();
        return new PhotoLine(photo.id(), title, seen.said(), seen.doubts(), value, seen.drawn(), photo.undone());
    }
}
