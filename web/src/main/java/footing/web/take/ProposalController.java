package footing.web.take;

import footing.core.answer.Answer;
import footing.core.answer.Watch;
import footing.io.drawing.SvgDrawer;
import footing.io.paper.Paper;
import footing.io.proposal.Proposal;
import footing.web.store.FileName;
import footing.web.store.StoredCase;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
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
    private final LastTaken last = new LastTaken();
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
        StoredCase kept = taking.kept(id);
        Optional<Paper> size = Paper.named(paper);
        if (!paper.isEmpty() && size.isEmpty()) {
            throw new ResponseStatusException(HttpStatus.BAD_REQUEST);
        }
        byte[] pdf = last.of(List.of(id, kept.version(), paper), () -> printed(kept, size));
        ContentDisposition as = ContentDisposition.attachment()
                .filename(FileName.of(kept.name()) + ".pdf")
                .build();
        return ResponseEntity.ok()
                .header(HttpHeaders.CONTENT_DISPOSITION, as.toString())
                .header(HttpHeaders.CONTENT_TYPE, "application/pdf")
                .body(pdf);
    }

    private byte[] printed(StoredCase kept, Optional<Paper> size) throws IOException {
        Answer answer = taking.take(kept, Proposal.MOST_WHOLE).answer();
        SvgDrawer ready = drawer == null ? new SvgDrawer() : drawer;
        drawer = ready;
        ByteArrayOutputStream pdf = new ByteArrayOutputStream();
        Paper paper = size.orElse(Paper.usual(answer.of().heading().si()));
        Proposal.write(answer, paper, ready, Watch.NOBODY, pdf);
        return pdf.toByteArray();
    }
}
