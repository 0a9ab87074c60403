package footing.web.trial;

import footing.io.photo.PrintAsked;
import footing.io.photo.Spot;
import footing.io.words.PhotoWords;
import footing.web.store.CaseStore;
import footing.web.store.StoredCase;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.server.ResponseStatusException;
import org.springframework.web.servlet.ModelAndView;

/** A photo on the large screen: looked at, pointed at by hand, its value written down. */
@Controller
@RequestMapping("/cases/{id}/trials/{trial}/photos/{photo}")
class PhotoController {
    private static final int FEWEST_OF_A_PRINT = 12;
    private static final int FEWEST_OF_TURF = 3;

    private final CaseStore cases;
    private final TrialStore store;
    private final PhotoStore photos;
    private final Measuring measuring;

    PhotoController(CaseStore cases, TrialStore store, PhotoStore photos, Measuring measuring) {
        this.cases = cases;
        this.store = store;
        this.photos = photos;
        this.measuring = measuring;
    }

    /** A photo and its trial, both of the case asked for. */
    private record Kept(StoredCase of, StoredTrial trial, Setup setup, Photo photo) {}

    private Kept kept(String id, long trial, long photo) {
        StoredCase of = cases.get(id);
        StoredTrial stored = store.get(id, trial)
                .filter(t -> t.setup() != null)
                .orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND));
        Photo found = photos.get(trial, photo).orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND));
        return new Kept(of, stored, stored.begun().orElseThrow(), found);
    }

    @GetMapping
    ModelAndView page(@PathVariable String id, @PathVariable long trial, @PathVariable long photo) {
        Kept kept = kept(id, trial, photo);
        return shown(kept, kept.photo().corners(), kept.photo().border(), "", HttpStatus.OK);
    }

    private static ModelAndView shown(Kept kept, String corners, String border, String fault, HttpStatus status) {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("kept", kept.of());
        model.put("trial", kept.trial());
        model.put("photo", PhotoLine.of(kept.setup(), kept.photo()));
        model.put("corners", corners);
        model.put("border", border);
        Photo.Read seen = kept.photo().seen();
        model.put("foundCorners", seen == null ? "" : seen.corners());
        model.put("foundBorder", seen == null ? "" : seen.border());
        model.put("isPrint", kept.photo().part().equals(Photo.PRINT));
        model.put("fewest", fewest(kept.photo()));
        model.put("fault", fault);
        model.put("tried", PhotoWords.TRIED);
        return new ModelAndView("trial/photo", model, status);
    }

    private static int fewest(Photo photo) {
        return photo.part().equals(Photo.PRINT) ? FEWEST_OF_A_PRINT : FEWEST_OF_TURF;
    }

    /** The photo as it came; what is no picture is none that a browser should open. */
    @GetMapping("/picture")
    ResponseEntity<byte[]> picture(@PathVariable String id, @PathVariable long trial, @PathVariable long photo) {
        byte[] content = photos.content(kept(id, trial, photo).photo().id());
        boolean jpeg = content.length > 2 && content[0] == (byte) 0xFF && content[1] == (byte) 0xD8;
        boolean png = content.length > 2 && content[0] == (byte) 0x89 && content[1] == 'P';
        MediaType type = jpeg ? MediaType.IMAGE_JPEG : png ? MediaType.IMAGE_PNG : MediaType.APPLICATION_OCTET_STREAM;
        return ResponseEntity.ok().contentType(type).body(content);
    }

    @GetMapping("/overlay")
    ResponseEntity<byte[]> overlay(@PathVariable String id, @PathVariable long trial, @PathVariable long photo) {
        return photos.overlay(kept(id, trial, photo).photo().id())
                .map(png -> ResponseEntity.ok().contentType(MediaType.IMAGE_PNG).body(png))
                .orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND));
    }

    /** Measures it anew with corners and border by hand; what is empty is found again. */
    @PostMapping
    ModelAndView mend(
            @PathVariable String id,
            @PathVariable long trial,
            @PathVariable long photo,
            @RequestParam(defaultValue = "") String corners,
            @RequestParam(defaultValue = "") String border) {
        Kept kept = kept(id, trial, photo);
        String fault = fault(kept.photo(), corners, border);
        if (!fault.isEmpty()) {
            return shown(kept, corners, border, fault, HttpStatus.UNPROCESSABLE_CONTENT);
        }
        photos.setByHand(photo, corners.strip(), border.strip());
        measuring.measure(trial, kept.setup(), kept.photo().place());
        return new ModelAndView("redirect:/cases/" + id + "/trials/" + trial + "/photos/" + photo);
    }

    private static String fault(Photo photo, String corners, String border) {
        Optional<List<Spot>> four = Pointed.read(corners);
        if (four.isEmpty() || (!four.get().isEmpty() && !PrintAsked.areCorners(four.get()))) {
            return "Four corners of the sheet, card or frame would fit, as x,y x,y x,y x,y in pixels of the photo.";
        }
        Optional<List<Spot>> edge = Pointed.read(border);
        int fewest = fewest(photo);
        if (edge.isEmpty() || (!edge.get().isEmpty() && edge.get().size() < fewest)) {
            return "A border by hand has at least " + fewest + " points, one after the other.";
        }
        return "";
    }

    /** Writes the value down as the run of its place; one written down from this photo before is taken back. */
    @PostMapping("/use")
    ModelAndView use(@PathVariable String id, @PathVariable long trial, @PathVariable long photo) {
        Kept kept = kept(id, trial, photo);
        Photo.Read seen = kept.photo().seen();
        if (seen == null || seen.value().isEmpty() || kept.photo().undone()) {
            throw new ResponseStatusException(HttpStatus.CONFLICT);
        }
        String own = "photo-" + photo + "-";
        String mark = own + Integer.toHexString(seen.value().hashCode());
        Map<String, String> form = new LinkedHashMap<>();
        form.put("sentAs", mark);
        form.put("place", kept.photo().place());
        form.put("value", seen.value());
        form.put("note", "off a photo");
        form.put("made", kept.photo().made());
        RunEntry entry = RunEntry.of(form, kept.setup());
        if (!entry.fault().isEmpty()) {
            return shown(kept, kept.photo().corners(), kept.photo().border(), entry.fault(), HttpStatus.CONFLICT);
        }
        store.runs(trial).stream()
                .filter(r -> r.sentAs().startsWith(own) && !r.sentAs().equals(mark))
                .forEach(r -> store.setUndone(trial, r.sentAs(), true));
        store.addRun(trial, mark, entry.place(), entry.made(), entry.cells());
        store.setUndone(trial, mark, false);
        return TrialsController.to(id, trial);
    }

    /** Takes a photo back, or takes that back; runs written down from it stay. */
    @PostMapping("/away")
    ModelAndView away(
            @PathVariable String id, @PathVariable long trial, @PathVariable long photo, @RequestParam boolean undone) {
        Kept kept = kept(id, trial, photo);
        photos.setUndone(photo, undone);
        measuring.measure(trial, kept.setup(), kept.photo().place());
        return TrialsController.to(id, trial);
    }
}
