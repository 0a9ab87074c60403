package footing.web.trial;

import footing.io.words.PhotoWords;
import footing.io.words.TrialCautions;
import footing.io.words.TrialWords;
import footing.web.store.CaseStore;
import footing.web.store.StoredCase;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
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

/**
 * Runs written down in the field. The sender marks each run with an id of its own, so that a double tap, or a run sent
 * again after the line came back, makes one run. The address is apart from all others, since a browser keeps what lies
 * below it for when there is no line.
 */
@Controller
@RequestMapping("/field/{id}/{trial}")
class FieldController {
    private final CaseStore cases;
    private final TrialStore store;
    private final PhotoStore photos;

    FieldController(CaseStore cases, TrialStore store, PhotoStore photos) {
        this.cases = cases;
        this.store = store;
        this.photos = photos;
    }

    /**
     * What came of a run.
     *
     * @param said the run in words
     * @param look what to look at; empty if nothing
     * @param fault why it wasn't taken; empty if it was
     */
    record Outcome(String sentAs, String said, String look, String fault) {
        static final Outcome NONE = new Outcome("", "", "", "");
    }

    /** A run written down, for the list. */
    record Last(String sentAs, String place, String said, boolean undone) {}

    /**
     * A photo taken, for the list.
     *
     * @param number its value without a unit; empty if there is none to write down
     */
    record Taken(String sentAs, String place, String number, PhotoLine line) {
        static Taken of(Setup setup, Photo photo) {
            Photo.Read seen = photo.seen();
            String number = seen == null ? "" : seen.value();
            return new Taken(photo.sentAs(), photo.place(), number, PhotoLine.of(setup, photo));
        }
    }

    /** @param kept the mark of the run just kept by a browser without scripts */
    @GetMapping
    ModelAndView page(@PathVariable String id, @PathVariable long trial, @RequestParam(defaultValue = "") String kept) {
        StoredCase stored = cases.get(id);
        StoredTrial of = begun(id, trial);
        Outcome outcome = store.run(trial, kept)
                .filter(r -> !r.undone())
                .map(r -> outcome(of, r))
                .orElse(Outcome.NONE);
        return shown(stored, of, outcome, Map.of(), HttpStatus.OK);
    }

    private ModelAndView shown(
            StoredCase kept, StoredTrial trial, Outcome outcome, Map<String, String> typed, HttpStatus status) {
        Setup setup = trial.begun().orElseThrow();
        List<WrittenRun> runs = store.runs(trial.id());
        List<Planned> plan = Planned.of(setup);
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("kept", kept);
        model.put("trial", trial);
        model.put("setup", setup);
        model.put("what", setup.measure().map(m -> m.words()).orElse(""));
        model.put("plan", plan);
        model.put("next", next(plan, runs));
        model.put("last", last(setup, runs));
        model.put("parts", Photo.parts(setup));
        model.put(
                "photos",
                photos.list(trial.id()).stream().map(p -> Taken.of(setup, p)).toList());
        model.put("tried", PhotoWords.TRIED);
        model.put("outcome", outcome);
        model.put("typed", typed);
        model.put("limits", TrialWords.limits(setup.kind()));
        model.put("cautions", TrialCautions.of(setup.kind()));
        model.put("mark", UUID.randomUUID().toString());
        return new ModelAndView("trial/field", model, status);
    }

    /** The first place of the plan nothing is written down for. */
    private static String next(List<Planned> plan, List<WrittenRun> runs) {
        return plan.stream()
                .map(Planned::place)
                .filter(p ->
                        runs.stream().noneMatch(r -> !r.undone() && r.place().equals(p)))
                .findFirst()
                .orElse("");
    }

    /** Latest first. */
    private static List<Last> last(Setup setup, List<WrittenRun> runs) {
        List<Last> last = new java.util.ArrayList<>();
        List<RunLine> lines = RunLine.of(setup, runs);
        for (int i = 0; i < runs.size(); i++) {
            WrittenRun run = runs.get(i);
            last.add(new Last(run.sentAs(), run.place(), said(lines.get(i)), run.undone()));
        }
        Collections.reverse(last);
        return last;
    }

    private static String said(RunLine line) {
        return line.run() + ": " + line.gave();
    }

    /** From a browser without scripts. */
    @PostMapping
    ModelAndView keep(@PathVariable String id, @PathVariable long trial, @RequestParam Map<String, String> form) {
        StoredCase kept = cases.get(id);
        StoredTrial of = begun(id, trial);
        Outcome outcome = keep(of, form);
        return outcome.fault().isEmpty()
                ? new ModelAndView("redirect:/field/" + id + "/" + trial + "?kept=" + outcome.sentAs())
                : shown(kept, of, outcome, form, HttpStatus.UNPROCESSABLE_CONTENT);
    }

    /** From the page's own script. */
    @PostMapping("/entry")
    ResponseEntity<Outcome> entry(
            @PathVariable String id, @PathVariable long trial, @RequestParam Map<String, String> form) {
        cases.get(id);
        Outcome outcome = keep(begun(id, trial), form);
        return ResponseEntity.status(outcome.fault().isEmpty() ? HttpStatus.OK : HttpStatus.UNPROCESSABLE_CONTENT)
                .body(outcome);
    }

    private Outcome keep(StoredTrial trial, Map<String, String> form) {
        RunEntry entry = RunEntry.of(form, trial.begun().orElseThrow());
        if (!Mark.isOne(entry.sentAs())) {
            throw new ResponseStatusException(HttpStatus.BAD_REQUEST);
        }
        if (!entry.fault().isEmpty()) {
            return new Outcome(entry.sentAs(), "", "", entry.fault());
        }
        return outcome(trial, store.addRun(trial.id(), entry.sentAs(), entry.place(), entry.made(), entry.cells()));
    }

    private Outcome outcome(StoredTrial trial, WrittenRun run) {
        return RunLine.of(trial.begun().orElseThrow(), store.runs(trial.id())).stream()
                .filter(l -> l.sentAs().equals(run.sentAs()))
                .findFirst()
                .map(l -> new Outcome(run.sentAs(), said(l), l.look(), ""))
                .orElse(Outcome.NONE);
    }

    /** Takes a run back; one that never came has nothing to be taken back. */
    @PostMapping("/undo")
    ResponseEntity<Outcome> undo(@PathVariable String id, @PathVariable long trial, @RequestParam String sentAs) {
        cases.get(id);
        StoredTrial of = begun(id, trial);
        Optional<WrittenRun> run = store.run(trial, sentAs);
        run.ifPresent(r -> store.setUndone(of.id(), sentAs, true));
        return ResponseEntity.ok(run.map(r -> outcome(of, r)).orElse(new Outcome(sentAs, "", "", "")));
    }

    /** The same from a browser without scripts. */
    @PostMapping("/back")
    ModelAndView back(
            @PathVariable String id,
            @PathVariable long trial,
            @RequestParam String sentAs,
            @RequestParam boolean undone) {
        cases.get(id);
        store.setUndone(begun(id, trial).id(), sentAs, undone);
        return new ModelAndView("redirect:/field/" + id + "/" + trial);
    }

    private StoredTrial begun(String id, long trial) {
        return store.get(id, trial)
                .filter(t -> t.setup() != null)
                .orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND));
    }
}
