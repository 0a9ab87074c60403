package footing.web.bay;

import footing.core.fitting.SetUp;
import footing.core.fleet.Case;
import footing.core.fleet.Measure;
import footing.core.fleet.Physical;
import footing.io.card.FittingCard;
import footing.io.edit.CaseEdit;
import footing.io.edit.Edited;
import footing.io.form.Problem;
import footing.io.paper.Paper;
import footing.web.store.CaseStore;
import footing.web.store.FileName;
import footing.web.store.StoredCase;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
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
import org.springframework.web.util.UriComponentsBuilder;

/** Fit, set-up and ground of a machine and a package; what is measured after fitting is kept with the case. */
@Controller
@RequestMapping("/cases/{id}/machines/{machine}")
class BayController {
    private static final String BARE = "-?\\d{1,4}([.,]\\d{1,4})?";

    private final CaseStore store;

    BayController(CaseStore store) {
        this.store = store;
    }

    @GetMapping("/fit")
    ModelAndView fit(
            @PathVariable String id, @PathVariable String machine, @RequestParam(defaultValue = "") String wheels) {
        StoredCase kept = store.get(id);
        Case stated = stated(kept, machine);
        return page(kept, stated, machine, wanted(stated.machine(machine), stated, wheels));
    }

    private static ModelAndView page(StoredCase kept, Case stated, String machine, Case.WheelPackage wheels) {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("kept", kept);
        model.put("view", BayView.of(stated, machine, wheels));
        model.put(
                "packages",
                packages(stated.machine(machine), stated).stream()
                        .map(Case.WheelPackage::id)
                        .toList());
        model.put("faults", List.of());
        return new ModelAndView("bay/page", model);
    }

    private static Case stated(StoredCase kept, String machine) {
        return kept.read()
                .found()
                .filter(c -> c.machines().stream().anyMatch(m -> m.id().equals(machine)))
                .orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND));
    }

    private static Set<Case.WheelPackage> packages(Case.Machine machine, Case stated) {
        Set<Case.WheelPackage> all = new LinkedHashSet<>(machine.consider());
        all.add(machine.carries());
        all.addAll(stated.packages());
        return all;
    }

    /** The one asked for; without any the first that is not on the machine. */
    private static Case.WheelPackage wanted(Case.Machine machine, Case stated, String asked) {
        Set<Case.WheelPackage> all = packages(machine, stated);
        if (asked.isEmpty()) {
            return all.stream()
                    .filter(p -> !p.id().equals(machine.carries().id()))
                    .findFirst()
                    .orElse(machine.carries());
        }
        return all.stream()
                .filter(p -> p.id().equals(asked))
                .findFirst()
                .orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND));
    }

    /** Keeps what was measured after fitting; an empty box takes its value back. */
    @PostMapping("/fitted")
    ModelAndView measured(
            @PathVariable String id,
            @PathVariable String machine,
            @RequestParam String wheels,
            @RequestParam long version,
            @RequestParam Map<String, String> form) {
        StoredCase kept = store.get(id);
        Case stated = stated(kept, machine);
        Case.WheelPackage wanted = wanted(stated.machine(machine), stated, wheels);
        Edited edited = edited(kept.text(), stated, machine, wanted, form);
        if (edited instanceof Edited.Refused refused) {
            ModelAndView again = page(kept, stated, machine, wanted);
            again.addObject(
                    "faults", refused.problems().stream().map(Problem::toString).toList());
            again.setStatus(HttpStatus.UNPROCESSABLE_CONTENT);
            return again;
        }
        if (!edited.text().equals(kept.text())) {
            store.save(id, edited.text(), "Measured on " + machine + " with " + wanted.id(), version);
        }
        String to = UriComponentsBuilder.fromPath("/cases/{id}/machines/{m}/fit")
                .queryParam("wheels", "{w}")
                .encode()
                .buildAndExpand(id, machine, wanted.id())
                .toUriString();
        return new ModelAndView(new org.springframework.web.servlet.view.RedirectView(to, false, true, false));
    }

    private static Edited edited(
            String text, Case stated, String machine, Case.WheelPackage wanted, Map<String, String> form) {
        String place = "machines." + machine + ".";
        Map<String, String> values = new LinkedHashMap<>();
        Edited edited = new Edited.Changed(text, stated, List.of());
        for (Measure m : BayView.FITTED) {
            String typed = form.getOrDefault(m.key(), "").strip();
            if (!typed.isEmpty()) {
                boolean bare = m.physical() == Physical.LENGTH && typed.matches(BARE);
                String unit = bare ? " " + BayView.unit(stated.heading().si()) : "";
                values.put(place + m.key(), typed + unit);
            } else if (stated.machine(machine).measures().has(m)) {
                edited = CaseEdit.remove(edited.text(), place + m.key());
            }
        }
        if (values.isEmpty()) {
            return edited;
        }
        values.put(place + "fitted.wheels", wanted.id());
        return CaseEdit.set(edited.text(), values);
    }

    /**
     * The fitting card.
     *
     * @param paper letter or a4; without it by the units of the case
     */
    @GetMapping("/card.pdf")
    ResponseEntity<byte[]> card(
            @PathVariable String id,
            @PathVariable String machine,
            @RequestParam(defaultValue = "") String wheels,
            @RequestParam(defaultValue = "") String paper)
            throws IOException {
        StoredCase kept = store.get(id);
        Case stated = stated(kept, machine);
        Case.WheelPackage wanted = wanted(stated.machine(machine), stated, wheels);
        Paper size = paper.isEmpty()
                ? Paper.usual(stated.heading().si())
                : Paper.named(paper).orElseThrow(() -> new ResponseStatusException(HttpStatus.BAD_REQUEST));
        ByteArrayOutputStream pdf = new ByteArrayOutputStream();
        FittingCard.write(stated, wanted, SetUp.of(stated, machine, wanted, null), size, pdf);
        ContentDisposition as = ContentDisposition.attachment()
                .filename(FileName.of("card " + machine) + ".pdf")
                .build();
        return ResponseEntity.ok()
                .header(HttpHeaders.CONTENT_DISPOSITION, as.toString())
                .header(HttpHeaders.CONTENT_TYPE, "application/pdf")
                .body(pdf.toByteArray());
    }
}
