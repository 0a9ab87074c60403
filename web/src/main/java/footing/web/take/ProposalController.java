package footing.web.take;

import footing.core.answer.Watch;
import footing.io.drawing.SvgDrawer;
import footing.io.paper.Paper;
import footing.io.proposal.Proposal;
import footing.web.store.FileName;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.server.ResponseStatusException;

/** The proposal as a PDF. One is printed at a time; what draws its figures is loaded with the first. */
@Controller
class ProposalController {
    private final Taking taking;
    private @Nullable SvgDrawer drawer;

    ProposalController(Taking taking) {
        this.taking = taking;
    }

    /**
     * Prints.
     *
     * @param paper letter or a4; without it by the units of the case
     */
    @GetMapping("/cases/{id}/proposal.pdf")
    ResponseEntity<byte[]> proposal(@PathVariable String id, @RequestParam(defaultValue = "") String paper)
            throws IOException {
        Taking.Taken taken = taking.take(id, Proposal.MOST_WHOLE);
        Paper size = paper.isEmpty()
                ? Paper.usual(taken.answer().of().heading().si())
                : Paper.named(paper).orElseThrow(() -> new ResponseStatusException(HttpStatus.BAD_REQUEST));
        ContentDisposition as = ContentDisposition.attachment()
                .filename(FileName.of(taken.kept().name()) + ".pdf")
                .build();
        return ResponseEntity.ok()
                .header(HttpHeaders.CONTENT_DISPOSITION, as.toString())
                .header(HttpHeaders.CONTENT_TYPE, "application/pdf")
                .body(printed(taken, size));
    }

    private synchronized byte[] printed(Taking.Taken taken, Paper size) throws IOException {
        SvgDrawer ready = drawer == null ? new SvgDrawer() : drawer;
        drawer = ready;
        ByteArrayOutputStream pdf = new ByteArrayOutputStream();
        Proposal.write(taken.answer(), size, ready, Watch.NOBODY, pdf);
        return pdf.toByteArray();
    }
}
