package footing.web.answer;

import footing.core.fleet.Case;
import footing.core.fleet.InForce;
import footing.io.edit.CaseEdit;
import footing.io.edit.Edited;
import footing.io.words.Lists;
import footing.web.store.CaseStore;
import footing.web.store.StoredCase;
import jakarta.servlet.http.HttpServletResponse;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;

/** Changes inputs beside the answer. What can't be taken stays as typed, with what is wrong under it. */
@Controller
@RequestMapping("/cases/{id}/inputs")
class InputController {
    private static final List<String> BOXES = List.of("value", "low", "likely", "high");

    private final CaseStore store;
    private final Editing editing;
    private final CaseModel models;

    InputController(CaseStore store, Editing editing, CaseModel models) {
        this.store = store;
        this.editing = editing;
        this.models = models;
    }

    /**
     * What was sent of one input.
     *
     * @param boxes what stood in its boxes, by their names
     * @param turns true if it was marked as a guess that could turn the verdict
     */
    private record Sent(String id, String path, String machine, Map<String, String> boxes, boolean turns) {
        static Sent of(String id, Map<String, String> form) {
            Map<String, String> boxes = new LinkedHashMap<>();
            for (String box : BOXES) {
                String value = form.get(box);
                if (value != null) {
                    boxes.put(box, value.strip());
                }
            }
            return new Sent(
                    id,
                    form.getOrDefault("path", ""),
                    form.getOrDefault("machine", ""),
                    boxes,
                    form.getOrDefault("turns", "").equals("true"));
        }

        private String box(String name) {
            return boxes.getOrDefault(name, "");
        }

        /** One outer value alone is no three-point. */
        boolean isHalf() {
            return box("low").isEmpty() != box("high").isEmpty();
        }

        Sent completed(InForce number) {
            return new Sent(id, path, machine, BareTime.completed(number, boxes), turns);
        }

        String joined() {
            String middle = box("likely") + box("value");
            return box("low").isEmpty() ? middle : box("low") + " / " + middle + " / " + box("high");
        }
    }

    @PostMapping
    ModelAndView set(@PathVariable String id, @RequestParam Map<String, String> form, HttpServletResponse response) {
        Sent sent = Sent.of(id, form);
        if (sent.isHalf()) {
            String fault = "Give all three, or the middle one alone if it is always the same.";
            return stated(store.get(id))
                    .map(before -> refused(sent, before, new Editing.Outcome.Refused(store.get(id), List.of(fault))))
                    .orElseGet(() -> gone(response));
        }
        return change(sent, text -> CaseEdit.set(text, sent.path(), meant(sent)), response);
    }

    /** What the boxes say, with the unit of a time where one was left out. */
    private String meant(Sent sent) {
        return stated(store.get(sent.id()))
                .flatMap(c -> Inputs.find(c, sent.path()))
                .map(sent::completed)
                .orElse(sent)
                .joined();
    }

    /** Takes a value back, so that the guess stands in for it. */
    @PostMapping("/forget")
    ModelAndView forget(@PathVariable String id, @RequestParam Map<String, String> form, HttpServletResponse response) {
        Sent sent = Sent.of(id, form);
        return change(sent, text -> CaseEdit.remove(text, sent.path()), response);
    }

    private ModelAndView change(Sent sent, Function<String, Edited> edit, HttpServletResponse response) {
        Optional<Case> found = stated(store.get(sent.id()));
        if (found.isEmpty() || Inputs.find(found.get(), sent.path()).isEmpty()) {
            return gone(response);
        }
        Case before = found.get();
        Editing.Outcome outcome = editing.change(sent.id(), edit, now -> Inputs.changed(before, now, sent.path()));
        return outcome instanceof Editing.Outcome.Refused refused
                ? refused(sent, before, refused)
                : saved((Editing.Outcome.Saved) outcome, sent.machine(), response);
    }

    private static ModelAndView refused(Sent sent, Case before, Editing.Outcome.Refused refused) {
        InForce number = Inputs.find(before, sent.path()).orElseThrow();
        FieldView field = FieldView.of(number, before, sent.turns());
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("field", field.refused(sent.boxes(), refused.faults()));
        model.put("kept", refused.kept());
        return new ModelAndView("answer/parts :: field", model, HttpStatus.UNPROCESSABLE_CONTENT);
    }

    /** Tax, loan, spares and units, each a form of its own. */
    @PostMapping("/sharpen")
    ModelAndView sharpen(
            @PathVariable String id, @RequestParam Map<String, String> form, HttpServletResponse response) {
        String machine = form.getOrDefault("machine", "");
        String which = form.getOrDefault("form", "");
        StoredCase kept = store.get(id);
        Optional<Case> found = stated(kept);
        Optional<Sharpening> sharpening = found.flatMap(c -> Sharpening.of(which, c, form));
        if (found.isEmpty() || sharpening.isEmpty()) {
            return gone(response);
        }
        Editing.Outcome outcome = editing.change(
                id,
                sharpening.get()::edit,
                now -> Lists.capital(sharpening.get().what()));
        if (outcome instanceof Editing.Outcome.Saved saved) {
            return saved(saved, machine, response);
        }
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("kept", kept);
        model.put(
                "sharpen",
                SharpenView.of(found.get(), CaseModel.machine(found.get(), machine))
                        .refused(which, sharpening.get().typed(), ((Editing.Outcome.Refused) outcome).faults()));
        return new ModelAndView("answer/parts :: sharpen", model, HttpStatus.UNPROCESSABLE_CONTENT);
    }

    private ModelAndView saved(Editing.Outcome.Saved saved, String machine, HttpServletResponse response) {
        response.setHeader("HX-Retarget", "#case");
        response.setHeader("HX-Reswap", "morph");
        return new ModelAndView(AnswerPages.REGION, models.of(saved.kept(), saved.stated(), machine));
    }

    private static Optional<Case> stated(StoredCase kept) {
        return CaseModel.read(kept).found();
    }

    /** What is no longer there can't be changed: the page is to be opened anew. */
    private static ModelAndView gone(HttpServletResponse response) {
        response.setHeader("HX-Refresh", "true");
        ModelAndView nothing = new ModelAndView("answer/nothing");
        nothing.setStatus(HttpStatus.NO_CONTENT);
        return nothing;
    }
}
