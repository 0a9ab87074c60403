package footing.web.bay;

import footing.core.fitting.SetUp;
import footing.io.card.FittingCard;
import footing.io.paper.Paper;
import footing.web.store.CaseStore;
import footing.web.store.FileName;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
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

/** Fit and set-up of a machine and a package, the machine on the ground, and the fitting card. */
@Controller
@RequestMapping("/cases/{id}/machines/{machine}")
class BayController {
    private final CaseStore store;
    private final BayPages pages;

    BayController(CaseStore store, BayPages pages) {
        this.store = store;
        this.pages = pages;
    }

    @GetMapping("/fit")
    ModelAndView fit(
            @PathVariable String id, @PathVariable String machine, @RequestParam(defaultValue = "") String wheels) {
        return pages.page(Bench.of(store.get(id), machine, wheels), "fit");
    }

    @GetMapping("/ground")
    ModelAndView ground(
            @PathVariable String id, @PathVariable String machine, @RequestParam(defaultValue = "") String wheels) {
        return pages.page(Bench.of(store.get(id), machine, wheels), BayPages.GROUND);
    }

    /**
     * The fitting card.
     *
     * @param paper letter or a4; without it by the units of the case
     */
    @GetMapping("/card.pdf")
    ResponseEntity<byte[]> card(
            @PathVariable String id,
            @PathVariable String machine,
            @RequestParam(defaultValue = "") String wheels,
            @RequestParam(defaultValue = "") String paper)
            throws IOException {
        Bench bench = Bench.of(store.get(id), machine, wheels);
        Paper size = paper.isEmpty()
                ? Paper.usual(bench.si())
                : Paper.named(paper).orElseThrow(() -> new ResponseStatusException(HttpStatus.BAD_REQUEST));
        ByteArrayOutputStream pdf = new ByteArrayOutputStream();
        SetUp setUp = SetUp.of(bench.stated(), machine, bench.wheels(), null);
        FittingCard.write(bench.stated(), bench.wheels(), setUp, size, pdf);
        ContentDisposition as = ContentDisposition.attachment()
                .filename(FileName.of("card " + machine) + ".pdf")
                .build();
        return ResponseEntity.ok()
                .header(HttpHeaders.CONTENT_DISPOSITION, as.toString())
                .header(HttpHeaders.CONTENT_TYPE, "application/pdf")
                .body(pdf.toByteArray());
    }
}
