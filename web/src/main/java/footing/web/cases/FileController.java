package footing.web.cases;

import footing.web.store.CaseStore;
import footing.web.store.FileName;
import footing.web.store.LinkedRecords;
import footing.web.store.Overtaken;
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
import org.springframework.web.servlet.ModelAndView;

/** The case file itself: to download, and to edit as text. */
@Controller
@RequestMapping("/cases/{id}")
class FileController {
    private final CaseStore store;
    private final LinkedRecords records;

    FileController(CaseStore store, LinkedRecords records) {
        this.store = store;
        this.records = records;
    }

    @GetMapping("/download")
    ResponseEntity<byte[]> download(@PathVariable String id) {
        StoredCase kept = store.get(id);
        String ending = kept.text().stripLeading().startsWith("{") ? ".json" : ".yaml";
        ContentDisposition as = ContentDisposition.attachment()
                .filename(FileName.of(kept.name()) + ending)
                .build();
        return ResponseEntity.ok()
                .header(HttpHeaders.CONTENT_DISPOSITION, as.toString())
                .header(HttpHeaders.CONTENT_TYPE, ending.equals(".json") ? "application/json" : "application/yaml")
                .body(kept.text().getBytes(StandardCharsets.UTF_8));
    }

    @GetMapping("/file")
    ModelAndView edit(@PathVariable String id) {
        StoredCase kept = store.get(id);
        return editor(kept, Desk.of(kept.text(), kept.read()), List.of(), HttpStatus.OK);
    }

    @PostMapping("/file")
    ModelAndView save(@PathVariable String id, @RequestParam long version, @RequestParam String text) {
        StoredCase kept = store.get(id);
        String typed = CaseText.ofForm(text);
        Desk desk = Desk.of(typed, records.read(typed));
        if (kept.version() != version) {
            return overtaken(kept, desk);
        }
        if (!desk.isGood()) {
            return editor(kept, desk, List.of(), HttpStatus.UNPROCESSABLE_CONTENT);
        }
        long changed = LineChanges.count(LineChanges.between(kept.text(), desk.text()));
        if (changed == 0) {
            return new ModelAndView("redirect:/cases/" + id);
        }
        try {
            store.save(id, desk.text(), "Case file: " + Spoken.count((int) changed, "line") + " changed", version);
        } catch (Overtaken e) {
            return overtaken(e.now(), desk);
        }
        return new ModelAndView("redirect:/cases/" + id);
    }

    /** Keeps what was typed on the desk, and shows how what is kept now differs from it. */
    private static ModelAndView overtaken(StoredCase now, Desk desk) {
        return editor(now, desk, LineChanges.between(now.text(), desk.text()), HttpStatus.CONFLICT);
    }

    private static ModelAndView editor(StoredCase kept, Desk desk, List<LineChanges.Line> against, HttpStatus status) {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("kept", kept);
        model.put("desk", desk);
        model.put("overtaken", status == HttpStatus.CONFLICT);
        model.put("against", against);
        return new ModelAndView("cases/file", model, status);
    }
}
