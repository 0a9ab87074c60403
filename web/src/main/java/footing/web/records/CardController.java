package footing.web.records;

import footing.core.fleet.Case;
import footing.io.card.VisorCard;
import footing.io.paper.Paper;
import footing.web.store.CaseStore;
import footing.web.store.FileName;
import footing.web.store.StoredCase;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.server.ResponseStatusException;

/** The visor card of a case, to print. */
@Controller
class CardController {
    private final CaseStore cases;

    CardController(CaseStore cases) {
        this.cases = cases;
    }

    /** @param paper letter or a4; left out, by the units of the case */
    @GetMapping("/cases/{id}/card.pdf")
    ResponseEntity<byte[]> card(@PathVariable String id, @RequestParam(defaultValue = "") String paper)
            throws IOException {
        StoredCase kept = cases.get(id);
        Optional<Case> stated = kept.read().found();
        boolean si = stated.filter(c -> c.heading().si()).isPresent();
        Paper size = paper.isEmpty()
                ? Paper.usual(si)
                : Paper.named(paper).orElseThrow(() -> new ResponseStatusException(HttpStatus.BAD_REQUEST));
        ByteArrayOutputStream pdf = new ByteArrayOutputStream();
        VisorCard.write(stated, size, pdf);
        return SheetController.file(
                FileName.of(kept.name() + " visor card") + ".pdf", "application/pdf", pdf.toByteArray());
    }
}
