package footing.web.trial;

import footing.web.store.CaseStore;
import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.server.ResponseStatusException;

/** Photos taken in the field. Each is marked by its sender, so that one sent again is kept once. */
@Controller
@RequestMapping("/field/{id}/{trial}/photo")
class FieldPhotoController {
    /** More than a phone's camera writes. */
    private static final int MOST_BYTES = 30_000_000;

    private static final int MOST_PHOTOS = 500;

    private final CaseStore cases;
    private final TrialStore store;
    private final PhotoStore photos;
    private final Measuring measuring;

    FieldPhotoController(CaseStore cases, TrialStore store, PhotoStore photos, Measuring measuring) {
        this.cases = cases;
        this.store = store;
        this.photos = photos;
        this.measuring = measuring;
    }

    /**
     * What came of a photo.
     *
     * @param said what was read off it
     * @param doubts why that is not sure
     * @param value to be written down once somebody has looked at the picture; empty if there is none
     * @param overlay where the picture with what was found lies
     */
    record Outcome(String sentAs, String said, List<String> doubts, String value, String overlay) {}

    /** The photo itself is the body, so that the largest need be in memory but once. */
    @PostMapping
    ResponseEntity<Outcome> take(
            @PathVariable String id,
            @PathVariable long trial,
            @RequestParam String sentAs,
            @RequestParam String place,
            @RequestParam String part,
            @RequestParam(defaultValue = "") String made,
            HttpServletRequest request)
            throws IOException {
        cases.get(id);
        Setup setup = store.get(id, trial)
                .flatMap(StoredTrial::begun)
                .filter(s -> Photo.parts(s).contains(part))
                .orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND));
        boolean planned = Planned.of(setup).stream().anyMatch(p -> p.place().equals(place));
        if (!Mark.isOne(sentAs) || !planned || photos.list(trial).size() >= MOST_PHOTOS) {
            throw new ResponseStatusException(HttpStatus.BAD_REQUEST);
        }
        byte[] content = content(request);
        Photo photo =
                photos.add(trial, new Photo(0, sentAs, place, part, RunEntry.made(made), "", "", null, false), content);
        if (photo.seen() == null) {
            measuring.measure(trial, setup, place);
        }
        return ResponseEntity.ok(
                outcome(id, trial, photos.get(trial, photo.id()).orElseThrow()));
    }

    private static byte[] content(HttpServletRequest request) throws IOException {
        byte[] content;
        try (InputStream in = request.getInputStream()) {
            content = in.readNBytes(MOST_BYTES + 1);
        }
        if (content.length > MOST_BYTES) {
            throw new ResponseStatusException(HttpStatus.CONTENT_TOO_LARGE);
        }
        if (content.length == 0) {
            throw new ResponseStatusException(HttpStatus.BAD_REQUEST);
        }
        return content;
    }

    private Outcome outcome(String id, long trial, Photo photo) {
        Photo.Read seen = photo.seen();
        if (seen == null) {
            return new Outcome(photo.sentAs(), "Kept.", List.of(), "", "");
        }
        String overlay = seen.drawn() ? "/cases/" + id + "/trials/" + trial + "/photos/" + photo.id() + "/overlay" : "";
        return new Outcome(photo.sentAs(), seen.said(), seen.doubts(), seen.value(), overlay);
    }
}
