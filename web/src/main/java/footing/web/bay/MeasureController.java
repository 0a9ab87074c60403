package footing.web.bay;

import footing.core.fleet.Case;
import footing.io.edit.Edited;
import footing.io.edit.MeasureEdit;
import footing.io.edit.Standing;
import footing.web.answer.Editing;
import footing.web.answer.FieldView;
import footing.web.store.CaseStore;
import footing.web.store.Overtaken;
import footing.web.store.StoredCase;
import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;

/** Keeps what is measured, one box at a time. What can't be taken stays as typed, with what is wrong under it. */
@Controller
@RequestMapping("/cases/{id}/machines/{machine}")
class MeasureController {
    private static final String OVERTAKEN =
            "Changed in another window meanwhile, so nothing was undone. This is how it stands now.";

    private final CaseStore store;
    private final Editing editing;
    private final BayPages pages;

    MeasureController(CaseStore store, Editing editing, BayPages pages) {
        this.store = store;
        this.editing = editing;
        this.pages = pages;
    }

    /** Which bay somebody stands in. */
    private record Asked(String machine, String wheels, String page) {
        Optional<Bench> bench(StoredCase kept) {
            return Bench.find(kept, machine, wheels);
        }
    }

    @PostMapping("/measures")
    ModelAndView set(
            @PathVariable String id,
            @PathVariable String machine,
            @RequestParam Map<String, String> form,
            HttpServletResponse response) {
        Asked asked = asked(machine, form);
        StoredCase kept = store.get(id);
        Optional<Bench> bench = asked.bench(kept);
        Optional<FieldView> field = bench.flatMap(b -> MeasurePanel.of(b).find(form.getOrDefault("path", "")));
        if (bench.isEmpty() || field.isEmpty()) {
            return gone(id, response);
        }
        String typed = form.getOrDefault("value", "");
        String path = field.get().path();
        Editing.Outcome outcome = editing.change(
                id, text -> edited(text, bench.get(), path, typed), now -> told(bench.get(), field.get(), typed));
        if (outcome instanceof Editing.Outcome.Refused refused) {
            FieldView again = field.get().refused(Map.of("value", typed), refused.faults());
            Map<String, Object> model = Map.of("field", again.htmlAt(BayPages.address(bench.get())));
            return new ModelAndView("bay/parts :: field", model, HttpStatus.UNPROCESSABLE_CONTENT);
        }
        return region(asked, ((Editing.Outcome.Saved) outcome).kept(), "", response);
    }

    private static Asked asked(String machine, Map<String, String> form) {
        return new Asked(machine, form.getOrDefault("wheels", ""), form.getOrDefault("page", ""));
    }

    private static Edited edited(String text, Bench bench, String path, String typed) {
        Case stated = bench.kept().read(text).found().orElse(bench.stated());
        return Spot.of(path, stated)
                .map(spot -> edited(new MeasureEdit(text, stated, spot.owner()), spot, typed, bench.wheels()))
                .orElseGet(() -> new Edited.Changed(text, stated, List.of()));
    }

    private static Edited edited(MeasureEdit edit, Spot spot, String typed, Case.WheelPackage wheels) {
        return spot.measure()
                .map(m -> MeasureGroup.FITTED.contains(m) ? edit.setFitted(m, typed, wheels.id()) : edit.set(m, typed))
                .orElseGet(() -> edit.set(spot.place(), spot.key(), typed));
    }

    /** 'Bolt circle (drive24-air): 4.5 in to 4 in'. */
    private static String told(Bench before, FieldView field, String typed) {
        String was = Standing.of(before.kept().text()).value(field.path()).orElse("not measured");
        String owner = Spot.of(field.path(), before.stated()).map(Spot::owner).orElse("");
        return field.label() + " (" + owner + "): " + was + " to " + (typed.isBlank() ? "not measured" : typed.strip());
    }

    @PostMapping("/undo")
    ModelAndView undo(
            @PathVariable String id,
            @PathVariable String machine,
            @RequestParam long version,
            @RequestParam Map<String, String> form,
            HttpServletResponse response) {
        return step(asked(machine, form), () -> store.undo(id, version), response);
    }

    @PostMapping("/redo")
    ModelAndView redo(
            @PathVariable String id,
            @PathVariable String machine,
            @RequestParam long version,
            @RequestParam Map<String, String> form,
            HttpServletResponse response) {
        return step(asked(machine, form), () -> store.redo(id, version), response);
    }

    private ModelAndView step(Asked asked, Supplier<StoredCase> step, HttpServletResponse response) {
        try {
            return region(asked, step.get(), "", response);
        } catch (Overtaken e) {
            return region(asked, e.now(), OVERTAKEN, response);
        }
    }

    private ModelAndView region(Asked asked, StoredCase kept, String notice, HttpServletResponse response) {
        Optional<Bench> bench = asked.bench(kept);
        if (bench.isEmpty()) {
            return gone(kept.id(), response);
        }
        response.setHeader("HX-Retarget", "#case");
        response.setHeader("HX-Reswap", "morph");
        return pages.region(bench.get(), asked.page(), notice);
    }

    /** What is no longer there can't be measured: the answer says what there is. */
    private static ModelAndView gone(String id, HttpServletResponse response) {
        response.setHeader("HX-Redirect", "/cases/" + id);
        ModelAndView nothing = new ModelAndView("answer/nothing");
        nothing.setStatus(HttpStatus.NO_CONTENT);
        return nothing;
    }
}
