package footing.web.records;

import footing.core.fleet.Case;
import footing.core.records.Learned;
import footing.io.edit.LearnedEdit;
import footing.io.records.Ledger;
import footing.web.store.CaseStore;
import footing.web.store.FileName;
import footing.web.store.LinkedRecords;
import footing.web.store.StoredCase;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
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

/** A case's records: what is wrong with them, mended here, and what they teach, taken into the case. */
@Controller
@RequestMapping("/cases/{id}")
class RecordsController {
    private static final HttpStatus UNFIT = HttpStatus.UNPROCESSABLE_CONTENT;

    private final CaseStore cases;
    private final RecordStore store;
    private final Learning learning;
    private final LinkedRecords linked;

    RecordsController(CaseStore cases, RecordStore store, Learning learning, LinkedRecords linked) {
        this.cases = cases;
        this.store = store;
        this.learning = learning;
        this.linked = linked;
    }

    /** @param done what was just done, to be confirmed */
    @GetMapping("/records")
    ModelAndView page(@PathVariable String id, @RequestParam(defaultValue = "") String done) {
        return shown(cases.get(id), Done.said(done), "", HttpStatus.OK);
    }

    private ModelAndView shown(StoredCase kept, String done, String fault, HttpStatus status) {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("kept", kept);
        model.put("view", RecordsView.of(kept, store, learning));
        model.put("done", done);
        model.put("fault", fault);
        return new ModelAndView("records/page", model, status);
    }

    /** All rows with their mends, as one sheet. */
    @GetMapping("/records.csv")
    ResponseEntity<byte[]> all(@PathVariable String id) {
        StoredCase kept = cases.get(id);
        byte[] csv = learning.book(id).ledger().csv().getBytes(StandardCharsets.UTF_8);
        return SheetController.file(FileName.of(kept.name() + " records") + ".csv", "text/csv;charset=UTF-8", csv);
    }

    /**
     * Mends one row, or leaves it out.
     *
     * @param row which
     * @param out true to leave it out
     */
    @PostMapping("/records/mend")
    ModelAndView mend(
            @PathVariable String id,
            @RequestParam String row,
            @RequestParam(defaultValue = "false") boolean out,
            @RequestParam Map<String, String> form) {
        cases.get(id);
        RowKey key = RowKey.of(row).orElseThrow(() -> new ResponseStatusException(HttpStatus.BAD_REQUEST));
        Optional<Map<String, String>> stands = learning.book(id).cells(key);
        if (stands.isEmpty()) {
            return to(id, "gone");
        }
        Map<String, String> changed = Cells.changed(stands.get(), Cells.ofForm(form));
        if (!out && changed.isEmpty()) {
            return to(id, "same");
        }
        if (key.isEntry()) {
            store.setUndone(id, key.line(), true);
            if (!out) {
                store.addEntry(id, "mend-" + key.line(), Cells.with(stands.get(), changed));
            }
        } else {
            store.addMends(id, Map.of(key, out ? Map.of() : changed));
        }
        return to(id, out ? "out" : "mended");
    }

    /** Accepts every mend of which there is but one to choose. */
    @PostMapping("/records/mend-plain")
    ModelAndView mendPlain(@PathVariable String id) {
        cases.get(id);
        Logbook book = learning.book(id);
        Map<RowKey, Map<String, String>> mends = new LinkedHashMap<>();
        for (Ledger.Refused refused : book.refused()) {
            if (RecordsView.isPlain(book, refused)) {
                mends.put(book.key(refused.row()), refused.mends().get(0).cells());
            }
        }
        store.addMends(id, mends);
        return to(id, mends.isEmpty() ? "same" : "mended");
    }

    @PostMapping("/records/unmend")
    ModelAndView unmend(@PathVariable String id, @RequestParam long mend) {
        cases.get(id);
        store.undoMend(id, mend);
        return to(id, "unmended");
    }

    /** Takes a row written on the page back, or takes that back. */
    @PostMapping("/records/entry")
    ModelAndView entry(@PathVariable String id, @RequestParam long entry, @RequestParam boolean undone) {
        cases.get(id);
        store.setUndone(id, entry, undone);
        return to(id, undone ? "back" : "again");
    }

    /** Puts what was learned into the case; undo takes it back like any change. */
    @PostMapping("/records/accept")
    ModelAndView accept(@PathVariable String id, @RequestParam long version) {
        StoredCase kept = cases.get(id);
        Optional<Case> stated = kept.read().found();
        Logbook book = learning.book(id);
        if (stated.isEmpty() || book.ledger().log().rows() == 0) {
            return shown(kept, "", "There is nothing to take in, or the case file can’t be read.", UNFIT);
        }
        Learned learned = learning.learned(kept, book);
        Ledger sound = book.sound();
        Optional<LearnedEdit.Result> written =
                LearnedEdit.write(kept.text(), stated.get(), learned, linked.keep(sound.csv()));
        if (written.isEmpty()) {
            return shown(kept, "", "This case file can’t name its records; look at it under ‘Case file’.", UNFIT);
        }
        if (!written.get().text().equals(kept.text())) {
            String left = book.refused().isEmpty() ? "" : ", " + book.refused().size() + " left out";
            cases.save(id, written.get().text(), "Learned from " + sound.rows() + " rows of records" + left, version);
        }
        return to(id, "accepted");
    }

    static ModelAndView to(String id, String done) {
        return new ModelAndView("redirect:/cases/" + id + "/records?done=" + done);
    }
}
