package footing.web.records;

import footing.io.records.Ledger;
import footing.web.store.CaseStore;
import footing.web.store.StoredCase;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
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
 * Flats and meter readings written down in the field. The sender marks each row with an id of its own, so that a double
 * tap, or a row sent again after the line came back, makes one record.
 */
@Controller
@RequestMapping("/cases/{id}/log")
class LogController {
    private final CaseStore cases;
    private final RecordStore store;
    private final Learning learning;

    LogController(CaseStore cases, RecordStore store, Learning learning) {
        this.cases = cases;
        this.store = store;
        this.learning = learning;
    }

    /**
     * What came of a row.
     *
     * @param said the row in words
     * @param look what to look at, such as hours that run backwards; empty if nothing
     * @param fault why it wasn't taken; empty if it was
     */
    record Outcome(String sentAs, String said, String look, String fault) {}

    /** @param kept the mark of the row just kept by a browser without scripts */
    @GetMapping
    ModelAndView page(
            @PathVariable String id,
            @RequestParam(defaultValue = "") String machine,
            @RequestParam(defaultValue = "") String kept) {
        StoredCase stored = cases.get(id);
        Optional<Kept.Written> just = store.entry(id, kept);
        Outcome outcome = just.filter(e -> !e.undone()).map(e -> outcome(id, e)).orElse(new Outcome("", "", "", ""));
        return shown(stored, machine, outcome, Map.of(), HttpStatus.OK);
    }

    private ModelAndView shown(
            StoredCase kept, String machine, Outcome outcome, Map<String, String> typed, HttpStatus status) {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("kept", kept);
        model.put("view", LogView.of(kept.read().found(), learning.book(kept.id()), store.entries(kept.id()), machine));
        model.put("outcome", outcome);
        model.put("typed", typed);
        model.put("today", LocalDate.now(ZoneId.systemDefault()).toString());
        model.put("mark", UUID.randomUUID().toString());
        return new ModelAndView("records/log", model, status);
    }

    /** From a browser without scripts. */
    @PostMapping
    ModelAndView keep(@PathVariable String id, @RequestParam Map<String, String> form) {
        StoredCase kept = cases.get(id);
        Outcome outcome = keep(kept, form);
        return outcome.fault().isEmpty()
                ? new ModelAndView("redirect:/cases/" + id + "/log?kept=" + outcome.sentAs())
                : shown(kept, form.getOrDefault("machine", ""), outcome, form, HttpStatus.UNPROCESSABLE_CONTENT);
    }

    /** From the page's own script. */
    @PostMapping("/entry")
    ResponseEntity<Outcome> entry(@PathVariable String id, @RequestParam Map<String, String> form) {
        Outcome outcome = keep(cases.get(id), form);
        return ResponseEntity.status(outcome.fault().isEmpty() ? HttpStatus.OK : HttpStatus.UNPROCESSABLE_CONTENT)
                .body(outcome);
    }

    private Outcome keep(StoredCase kept, Map<String, String> form) {
        QuickEntry entry = QuickEntry.of(form, kept.read().found());
        if (!QuickEntry.isMark(entry.sentAs())) {
            throw new ResponseStatusException(HttpStatus.BAD_REQUEST);
        }
        if (!entry.fault().isEmpty()) {
            return new Outcome(entry.sentAs(), EntryWords.of(entry.cells()), "", entry.fault());
        }
        return outcome(kept.id(), store.addEntry(kept.id(), entry.sentAs(), entry.cells()));
    }

    private Outcome outcome(String id, Kept.Written entry) {
        Logbook book = learning.book(id);
        RowKey key = new RowKey(0, (int) entry.id());
        String look = book.refused().stream()
                .filter(r -> book.key(r.row()).equals(key))
                .map(Ledger.Refused::reason)
                .findFirst()
                .orElse("");
        return new Outcome(entry.sentAs(), EntryWords.of(entry.cells()), look, "");
    }

    /** Takes a row back; one that never came has nothing to be taken back. */
    @PostMapping("/undo")
    ResponseEntity<Outcome> undo(@PathVariable String id, @RequestParam String sentAs) {
        cases.get(id);
        Optional<Kept.Written> entry = store.entry(id, sentAs);
        entry.ifPresent(e -> store.setUndone(id, e.id(), true));
        return ResponseEntity.ok(
                new Outcome(sentAs, entry.map(e -> EntryWords.of(e.cells())).orElse(""), "", ""));
    }

    /** The same from a browser without scripts. */
    @PostMapping("/back")
    ModelAndView back(@PathVariable String id, @RequestParam long entry, @RequestParam boolean undone) {
        cases.get(id);
        store.setUndone(id, entry, undone);
        return new ModelAndView("redirect:/cases/" + id + "/log");
    }
}
