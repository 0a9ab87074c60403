package footing.web.take;

import footing.core.answer.Watch;
import footing.io.answer.Threads;
import footing.io.proposal.Proposal;
import footing.io.workbook.CaseWorkbook;
import footing.web.store.FileName;
import footing.web.store.StoredCase;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/** The answer as a workbook. */
@Controller
class WorkbookController {
    private static final String TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

    private final Taking taking;
    private final LastTaken last = new LastTaken();

    WorkbookController(Taking taking) {
        this.taking = taking;
    }

    @GetMapping("/cases/{id}/workbook.xlsx")
    ResponseEntity<byte[]> workbook(@PathVariable String id) throws IOException {
        StoredCase kept = taking.kept(id);
        byte[] book = last.of(List.of(id, kept.version()), () -> written(taking.take(kept, Proposal.MOST_WHOLE)));
        ContentDisposition as = ContentDisposition.attachment()
                .filename(FileName.of(kept.name()) + ".xlsx")
                .build();
        return ResponseEntity.ok()
                .header(HttpHeaders.CONTENT_DISPOSITION, as.toString())
                .header(HttpHeaders.CONTENT_TYPE, TYPE)
                .body(book);
    }

    private static byte[] written(Taking.Taken taken) throws IOException {
        ByteArrayOutputStream book = new ByteArrayOutputStream();
        try (Threads threads = Threads.usual()) {
            CaseWorkbook.write(taken.answer(), taken.warnings(), threads, Watch.NOBODY, book);
        }
        return book.toByteArray();
    }
}
