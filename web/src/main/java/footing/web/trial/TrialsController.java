package footing.web.trial;

import footing.core.fleet.Called;
import footing.core.fleet.Case;
import footing.core.trial.TrialKind;
import footing.io.form.FileText;
import footing.io.trial.Measure;
import footing.io.trial.TrialReading;
import footing.io.words.TrialCautions;
import footing.web.store.CaseStore;
import footing.web.store.StoredCase;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.server.ResponseStatusException;
import org.springframework.web.servlet.ModelAndView;

/** The trials of a case: a list, one begun, a file of one handed over. */
@Controller
@RequestMapping("/cases/{id}/trials")
class TrialsController {
    private static final int LONGEST_NAME = 100;

    private final CaseStore cases;
    private final TrialStore store;
    private final SecureRandom tosses = new SecureRandom();

    TrialsController(CaseStore cases, TrialStore store) {
        this.cases = cases;
        this.store = store;
    }

    /** A trial in the list. */
    record Line(StoredTrial trial, String when, String said) {}

    @GetMapping
    ModelAndView list(@PathVariable String id) {
        return listed(cases.get(id), List.of(), HttpStatus.OK);
    }

    private ModelAndView listed(StoredCase kept, List<String> faults, HttpStatus status) {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("kept", kept);
        model.put("trials", store.list(kept.id()).stream().map(this::line).toList());
        model.put("faults", faults);
        return new ModelAndView("trial/list", model, status);
    }

    private Line line(StoredTrial trial) {
        String said = TrialView.of(trial, store.runs(trial.id())).sentence();
        return new Line(trial, footing.web.cases.Spoken.time(trial.at()), said);
    }

    @GetMapping("/new")
    ModelAndView form(@PathVariable String id) {
        return asked(cases.get(id), Map.of(), Map.of(), HttpStatus.OK);
    }

    private static ModelAndView asked(
            StoredCase kept, Map<String, String> typed, Map<String, String> faults, HttpStatus status) {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("kept", kept);
        model.put("typed", typed);
        model.put("faults", faults);
        model.put("measures", Arrays.asList(Measure.values()));
        model.put("things", things(kept));
        model.put("machines", machines(kept));
        model.put("metric", isMetric(kept));
        Set<String> cautions = new LinkedHashSet<>();
        Arrays.stream(TrialKind.values()).forEach(k -> cautions.addAll(TrialCautions.of(k)));
        model.put("cautions", cautions);
        model.put("mark", typed.getOrDefault("sentAs", UUID.randomUUID().toString()));
        return new ModelAndView("trial/new", model, status);
    }

    /** What the case could compare, by what it is called. */
    private static Set<String> things(StoredCase kept) {
        Set<String> things = new LinkedHashSet<>();
        kept.read().found().ifPresent(c -> {
            Called called = Called.in(c);
            c.packages().forEach(p -> things.add(called.wheels(p.id())));
            c.assemblies().forEach(a -> things.add(called.withSize(a.id())));
        });
        return things;
    }

    private static List<String> machines(StoredCase kept) {
        return kept.read().found().stream()
                .flatMap(c -> c.machines().stream())
                .map(Case.Machine::id)
                .toList();
    }

    private static boolean isMetric(StoredCase kept) {
        return kept.read().found().map(c -> c.heading().si()).orElse(false);
    }

    @PostMapping
    ModelAndView begin(@PathVariable String id, @RequestParam Map<String, String> form) {
        StoredCase kept = cases.get(id);
        String mark = form.getOrDefault("sentAs", "");
        if (!Mark.isOne(mark)) {
            throw new ResponseStatusException(HttpStatus.BAD_REQUEST);
        }
        StartForm.Stated stated = StartForm.read(form, isMetric(kept), tosses.nextLong());
        if (!stated.faults().isEmpty()) {
            return asked(kept, form, stated.faults(), HttpStatus.UNPROCESSABLE_CONTENT);
        }
        return to(id, store.begin(id, mark, stated.setup()));
    }

    /** Takes a trial file in; one that can't be judged comes back with everything that is wrong with it. */
    @PostMapping("/file")
    ModelAndView take(@PathVariable String id, @RequestParam(required = false) @Nullable MultipartFile file)
            throws IOException {
        StoredCase kept = cases.get(id);
        if (file == null || file.isEmpty()) {
            return refused(kept, List.of("Nothing came; choose a file first."));
        }
        byte[] bytes = file.getBytes();
        String text;
        try {
            text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            return refused(kept, List.of("That is not UTF-8 text; a trial is YAML, JSON or a CSV sheet."));
        }
        if (bytes.length > FileText.MOST_BYTES) {
            return refused(kept, List.of("Longer than 2 MB."));
        }
        String name = name(file.getOriginalFilename());
        TrialReading reading = new TrialText(text, name).read();
        if (reading instanceof TrialReading.Accepted accepted) {
            String digest = UUID.nameUUIDFromBytes(bytes).toString();
            return to(id, store.take(id, digest, accepted.stated().title(), text, name));
        }
        return refused(
                kept,
                ((TrialReading.Refused) reading)
                        .problems().stream().map(TrialsController::placed).toList());
    }

    private static String placed(footing.io.form.Problem problem) {
        return "Line " + problem.line() + ": " + TrialView.said(problem);
    }

    private ModelAndView refused(StoredCase kept, List<String> faults) {
        return listed(kept, faults, HttpStatus.UNPROCESSABLE_CONTENT);
    }

    /** The last part of the name, on one line; its ending says whether it is a sheet. */
    private static String name(@Nullable String sent) {
        String line = StartForm.clean(sent == null ? "" : sent).replaceAll(".*[/\\\\]", "");
        String name = line.isEmpty() ? "trial.yaml" : line;
        return name.length() > LONGEST_NAME ? name.substring(name.length() - LONGEST_NAME) : name;
    }

    static ModelAndView to(String id, long trial) {
        return new ModelAndView("redirect:/cases/" + id + "/trials/" + trial);
    }
}
