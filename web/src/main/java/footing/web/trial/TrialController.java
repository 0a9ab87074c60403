package footing.web.trial;

import footing.io.words.PhotoWords;
import footing.web.store.CaseStore;
import footing.web.store.FileName;
import footing.web.store.StoredCase;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.server.ResponseStatusException;
import org.springframework.web.servlet.ModelAndView;

/** One trial on the large screen. */
@Controller
@RequestMapping("/cases/{id}/trials/{trial}")
class TrialController {
    private final CaseStore cases;
    private final TrialStore store;
    private final PhotoStore photos;

    TrialController(CaseStore cases, TrialStore store, PhotoStore photos) {
        this.cases = cases;
        this.store = store;
        this.photos = photos;
    }

    @GetMapping
    ModelAndView page(@PathVariable String id, @PathVariable long trial) {
        return shown(cases.get(id), kept(id, trial), "", HttpStatus.OK);
    }

    private ModelAndView shown(StoredCase kept, StoredTrial trial, String fault, HttpStatus status) {
        List<WrittenRun> runs = store.runs(trial.id());
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("kept", kept);
        model.put("trial", trial);
        model.put("view", TrialView.of(trial, runs));
        model.put("fault", fault);
        Setup setup = trial.setup();
        model.put("runs", setup == null ? List.of() : RunLine.of(setup, runs));
        model.put("photos", setup == null ? List.of() : PhotoLine.of(setup, photos.list(trial.id())));
        model.put("tried", PhotoWords.TRIED);
        model.put("open", setup == null ? 0 : open(setup, runs));
        return new ModelAndView("trial/page", model, status);
    }

    /** How many planned runs are not written down. */
    private static long open(Setup setup, List<WrittenRun> runs) {
        return Planned.of(setup).stream()
                .filter(p ->
                        runs.stream().noneMatch(r -> !r.undone() && r.place().equals(p.place())))
                .count();
    }

    /** The trial as a file that the command line judges the same; a file that came, as it came. */
    @GetMapping("/file")
    ResponseEntity<byte[]> file(@PathVariable String id, @PathVariable long trial) {
        cases.get(id);
        StoredTrial kept = kept(id, trial);
        TrialText text = TrialText.of(kept, store.runs(trial));
        String own = kept.fileName();
        String name = own == null ? FileName.of(kept.name()) + ".yaml" : own;
        ContentDisposition as = ContentDisposition.attachment()
                .filename(name, StandardCharsets.UTF_8)
                .build();
        return ResponseEntity.ok()
                .header(HttpHeaders.CONTENT_DISPOSITION, as.toString())
                .header(HttpHeaders.CONTENT_TYPE, "application/octet-stream")
                .body(text.text().getBytes(StandardCharsets.UTF_8));
    }

    /** Takes a run back, or takes that back. */
    @PostMapping("/run")
    ModelAndView run(
            @PathVariable String id,
            @PathVariable long trial,
            @RequestParam String sentAs,
            @RequestParam boolean undone) {
        cases.get(id);
        store.setUndone(kept(id, trial).id(), sentAs, undone);
        return TrialsController.to(id, trial);
    }

    /** Plans more pairs; those there are keep their places. */
    @PostMapping("/pairs")
    ModelAndView pairs(@PathVariable String id, @PathVariable long trial, @RequestParam String pairs) {
        StoredCase kept = cases.get(id);
        StoredTrial stored = kept(id, trial);
        Setup setup = stored.begun().orElseThrow(() -> new ResponseStatusException(HttpStatus.CONFLICT));
        int most = StartForm.MOST_RUNS / 2 / setup.surfaces().size();
        int wanted = pairs.matches("\\d{1,3}") ? Integer.parseInt(pairs) : 0;
        if (wanted < setup.pairs() || wanted > most) {
            String fault = "From " + setup.pairs() + " to " + most + " pairs on each surface would fit.";
            return shown(kept, stored, fault, HttpStatus.UNPROCESSABLE_CONTENT);
        }
        store.setSetup(trial, setup.withPairs(wanted));
        return TrialsController.to(id, trial);
    }

    /** Lays a trial away, or takes it back. */
    @PostMapping("/archive")
    ModelAndView archive(@PathVariable String id, @PathVariable long trial, @RequestParam boolean archived) {
        cases.get(id);
        store.setArchived(kept(id, trial).id(), archived);
        return new ModelAndView("redirect:/cases/" + id + "/trials");
    }

    private StoredTrial kept(String id, long trial) {
        return store.get(id, trial).orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND));
    }
}
