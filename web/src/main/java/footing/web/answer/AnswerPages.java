package footing.web.answer;

import footing.core.fleet.Case;
import footing.io.casefile.Reading;
import footing.web.store.CaseStore;
import footing.web.store.Overtaken;
import footing.web.store.StoredCase;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.server.ResponseStatusException;
import org.springframework.web.servlet.ModelAndView;

/** The answer to a case: of the whole fleet, and of one machine. */
@Controller
@RequestMapping("/cases/{id}")
class AnswerPages {
    static final String REGION = "answer/parts :: region";

    private final CaseStore store;
    private final CaseModel models;
    private final Answers answers;

    AnswerPages(CaseStore store, CaseModel models, Answers answers) {
        this.store = store;
        this.models = models;
        this.answers = answers;
    }

    @GetMapping
    ModelAndView fleet(@PathVariable String id) {
        return page(store.get(id), null);
    }

    @GetMapping("/machines/{machine}")
    ModelAndView machine(@PathVariable String id, @PathVariable String machine) {
        StoredCase kept = store.get(id);
        Optional<Case> stated = CaseModel.read(kept).found();
        if (stated.isPresent() && stated.get().machines().stream().noneMatch(m -> m.id().equals(machine))) {
            throw new ResponseStatusException(HttpStatus.NOT_FOUND);
        }
        return page(kept, machine);
    }

    private ModelAndView page(StoredCase kept, @Nullable String machine) {
        Reading reading = CaseModel.read(kept);
        Optional<Case> stated = reading.found();
        if (stated.isEmpty() || stated.get().machines().isEmpty()) {
            Map<String, Object> model = new LinkedHashMap<>();
            model.put("kept", kept);
            model.put("problems", reading.problems());
            return new ModelAndView("answer/broken", model);
        }
        return new ModelAndView("answer/page", models.of(kept, stated.get(), machine));
    }

    /** A better answer, or a newer one, than the one somebody looks at; nothing if there is none yet. */
    @GetMapping("/answer")
    ModelAndView better(
            @PathVariable String id,
            @RequestParam(defaultValue = "") String machine,
            @RequestParam long version,
            @RequestParam int stage) {
        StoredCase kept = store.get(id);
        Case stated = CaseModel.read(kept).found().orElse(null);
        if (stated == null || stated.machines().isEmpty()) {
            return nothing();
        }
        Told told = answers.now(id, stated, CaseModel.machine(stated, machine));
        boolean same = kept.version() == version && told.stage() == stage && told.working();
        return same ? nothing() : new ModelAndView(REGION, models.of(kept, stated, machine));
    }

    private static ModelAndView nothing() {
        ModelAndView nothing = new ModelAndView("answer/nothing");
        nothing.setStatus(HttpStatus.NO_CONTENT);
        return nothing;
    }

    @PostMapping("/answer/stop")
    ModelAndView stop(@PathVariable String id, @RequestParam(defaultValue = "") String machine) {
        answers.stop(id);
        return region(store.get(id), machine, "");
    }

    @PostMapping("/answer/resume")
    ModelAndView resume(@PathVariable String id, @RequestParam(defaultValue = "") String machine) {
        answers.resume(id);
        return region(store.get(id), machine, "");
    }

    @PostMapping("/answer/undo")
    ModelAndView undo(
            @PathVariable String id, @RequestParam(defaultValue = "") String machine, @RequestParam long version) {
        return step(machine, () -> store.undo(id, version));
    }

    @PostMapping("/answer/redo")
    ModelAndView redo(
            @PathVariable String id, @RequestParam(defaultValue = "") String machine, @RequestParam long version) {
        return step(machine, () -> store.redo(id, version));
    }

    private ModelAndView step(String machine, java.util.function.Supplier<StoredCase> step) {
        try {
            return region(step.get(), machine, "");
        } catch (Overtaken e) {
            return region(
                    e.now(),
                    machine,
                    "Changed in another window meanwhile, so nothing was undone. This is how it stands now.");
        }
    }

    private ModelAndView region(StoredCase kept, String machine, String notice) {
        Optional<Case> stated = CaseModel.read(kept).found();
        if (stated.isEmpty() || stated.get().machines().isEmpty()) {
            return new ModelAndView("redirect:/cases/" + kept.id());
        }
        Map<String, Object> model = models.of(kept, stated.get(), machine);
        model.put("notice", notice);
        return new ModelAndView(REGION, model);
    }
}
