package footing.web.take;

import footing.web.store.StoredCase;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletionException;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.server.ResponseStatusException;
import org.springframework.web.servlet.ModelAndView;

/** Documents to take away: the page that makes them and shows how far they are, and the files. */
@Controller
@RequestMapping("/cases/{id}")
class TakeController {
    private final Taking taking;
    private final Workshop workshop;

    TakeController(Taking taking, Workshop workshop) {
        this.taking = taking;
        this.workshop = workshop;
    }

    /**
     * The page.
     *
     * @param what proposal, workbook or tables; left out, nothing is made yet
     */
    @GetMapping("/take")
    ModelAndView page(
            @PathVariable String id,
            @RequestParam(defaultValue = "") String what,
            @RequestParam(defaultValue = "") String paper,
            @RequestParam(defaultValue = "") String machine) {
        StoredCase kept = taking.kept(id);
        List<String> machines = taking.machines(kept);
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("kept", kept);
        model.put("machines", machines);
        model.put("made", null);
        if (!what.isEmpty()) {
            model.put("made", made(wanted(kept, what, paper, machine)));
        }
        return new ModelAndView("take/page", model);
    }

    /** How far a document is. */
    @GetMapping("/take/state")
    ModelAndView state(
            @PathVariable String id,
            @RequestParam String what,
            @RequestParam(defaultValue = "") String paper,
            @RequestParam(defaultValue = "") String machine) {
        StoredCase kept = taking.kept(id);
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("kept", kept);
        model.put("made", made(wanted(kept, what, paper, machine)));
        return new ModelAndView("take/parts :: made", model);
    }

    private MadeView made(Wanted wanted) {
        return MadeView.of(wanted, workshop.of(wanted));
    }

    /** The proposal; whoever asks before it is made waits. */
    @GetMapping("/proposal.pdf")
    ResponseEntity<byte[]> proposal(
            @PathVariable String id,
            @RequestParam(defaultValue = "") String paper,
            @RequestParam(defaultValue = "") String machine) {
        return file(wanted(taking.kept(id), Wanted.Kind.PROPOSAL.word(), paper, machine));
    }

    /** The workbook; whoever asks before it is made waits. */
    @GetMapping("/workbook.xlsx")
    ResponseEntity<byte[]> workbook(@PathVariable String id, @RequestParam(defaultValue = "") String machine) {
        return file(wanted(taking.kept(id), Wanted.Kind.WORKBOOK.word(), "", machine));
    }

    /** Every table as comma-separated values, in an archive; whoever asks before it is made waits. */
    @GetMapping("/tables.zip")
    ResponseEntity<byte[]> tables(@PathVariable String id, @RequestParam(defaultValue = "") String machine) {
        return file(wanted(taking.kept(id), Wanted.Kind.TABLES.word(), "", machine));
    }

    private Wanted wanted(StoredCase kept, String what, String paper, String machine) {
        Wanted.Kind kind =
                Wanted.Kind.named(what).orElseThrow(() -> new ResponseStatusException(HttpStatus.BAD_REQUEST));
        Wanted wanted = new Wanted(kept, kind, paper, machine);
        if (!wanted.isPossible()) {
            throw new ResponseStatusException(HttpStatus.BAD_REQUEST);
        }
        List<String> machines = taking.machines(kept);
        if (machines.isEmpty()) {
            throw new ResponseStatusException(HttpStatus.CONFLICT);
        }
        if (!machine.isEmpty() && !machines.contains(machine)) {
            throw new ResponseStatusException(HttpStatus.NOT_FOUND);
        }
        return wanted;
    }

    private ResponseEntity<byte[]> file(Wanted wanted) {
        byte[] document;
        try {
            document = workshop.of(wanted).result.join();
        } catch (CompletionException e) {
            throw new ResponseStatusException(HttpStatus.SERVICE_UNAVAILABLE, "not made", e);
        }
        ContentDisposition as =
                ContentDisposition.attachment().filename(wanted.fileName()).build();
        return ResponseEntity.ok()
                .header(HttpHeaders.CONTENT_DISPOSITION, as.toString())
                .header(HttpHeaders.CONTENT_TYPE, wanted.kind().type)
                .body(document);
    }
}
