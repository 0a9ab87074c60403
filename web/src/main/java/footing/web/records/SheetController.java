package footing.web.records;

import footing.io.records.Sheet;
import footing.web.store.CaseStore;
import java.io.IOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
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
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.server.ResponseStatusException;
import org.springframework.web.servlet.ModelAndView;

/** Sheets handed over: kept as they came, whatever they hold. */
@Controller
@RequestMapping("/cases/{id}/records/sheets")
class SheetController {
    private static final int LONGEST_NAME = 100;

    private final CaseStore cases;
    private final RecordStore store;

    SheetController(CaseStore cases, RecordStore store) {
        this.cases = cases;
        this.store = store;
    }

    @PostMapping
    ModelAndView take(@PathVariable String id, @RequestParam(required = false) @Nullable MultipartFile file)
            throws IOException {
        cases.get(id);
        if (file == null || file.isEmpty()) {
            return RecordsController.to(id, "empty");
        }
        byte[] content = file.getBytes();
        store.addSheet(id, digest(content), name(file.getOriginalFilename()), content);
        return RecordsController.to(id, "kept");
    }

    /** The last part of the name, on one line. */
    private static String name(@Nullable String sent) {
        String line = sent == null
                ? ""
                : sent.replaceAll("\\p{Cntrl}+", " ")
                        .replaceAll(".*[/\\\\]", "")
                        .strip();
        String name = line.isEmpty() ? "sheet" : line;
        return name.length() > LONGEST_NAME ? name.substring(0, LONGEST_NAME) : name;
    }

    private static String digest(byte[] content) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    /** A sheet as it came. */
    @GetMapping("/{sheet}")
    ResponseEntity<byte[]> asItCame(@PathVariable String id, @PathVariable long sheet) {
        cases.get(id);
        Kept.SheetFile kept = store.sheets(id).stream()
                .filter(s -> s.id() == sheet)
                .findFirst()
                .orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND));
        return file(
                kept.name(),
                "application/octet-stream",
                store.content(id, sheet).orElseThrow());
    }

    static ResponseEntity<byte[]> file(String name, String type, byte[] content) {
        ContentDisposition as = ContentDisposition.attachment()
                .filename(name, java.nio.charset.StandardCharsets.UTF_8)
                .build();
        return ResponseEntity.ok()
                .header(HttpHeaders.CONTENT_DISPOSITION, as.toString())
                .header(HttpHeaders.CONTENT_TYPE, type)
                .body(content);
    }

    /** Says which column is which; an empty choice leaves it to the names. */
    @PostMapping("/{sheet}/columns")
    ModelAndView columns(@PathVariable String id, @PathVariable long sheet, @RequestParam Map<String, String> form) {
        cases.get(id);
        Map<String, String> mapping = new LinkedHashMap<>();
        for (String column : Sheet.columns()) {
            String header = Cells.clean(form.getOrDefault(Cells.FIELD + column, ""));
            if (!header.isEmpty()) {
                mapping.put(column, header);
            }
        }
        store.setMapping(id, sheet, mapping);
        return RecordsController.to(id, "columns");
    }

    /** Lays a sheet away, or takes it back. */
    @PostMapping("/{sheet}/archive")
    ModelAndView archive(@PathVariable String id, @PathVariable long sheet, @RequestParam boolean archived) {
        cases.get(id);
        store.setArchived(id, sheet, archived);
        return RecordsController.to(id, archived ? "archived" : "restored");
    }
}
