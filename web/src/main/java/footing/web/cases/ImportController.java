package footing.web.cases;

import footing.web.store.CaseStore;
import java.io.IOException;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.ModelAndView;

/** Takes case files in. One that can't be answered comes back in an editor with everything that is wrong with it. */
@Controller
class ImportController {
    private static final String VIEW = "cases/import";

    private final CaseStore store;

    ImportController(CaseStore store) {
        this.store = store;
    }

    @GetMapping("/cases/import")
    ModelAndView ask() {
        return shown(Desk.blank(), "", HttpStatus.OK);
    }

    @PostMapping("/cases/import")
    ModelAndView take(
            @RequestParam(required = false) @Nullable MultipartFile file, @RequestParam(defaultValue = "") String text)
            throws IOException {
        MultipartFile upload = file != null && !file.isEmpty() ? file : null;
        CaseText.Decoded decoded =
                upload != null ? CaseText.decode(upload.getBytes()) : new CaseText.Decoded(CaseText.ofForm(text), "");
        if (!decoded.fault().isEmpty()) {
            return shown(Desk.blank(), decoded.fault(), HttpStatus.UNPROCESSABLE_CONTENT);
        }
        if (decoded.text().isBlank()) {
            return shown(
                    Desk.blank(), "nothing came; choose a file or paste its text", HttpStatus.UNPROCESSABLE_CONTENT);
        }
        Desk desk = Desk.of(decoded.text());
        return desk.stated()
                .map(c -> store.create(
                        c.heading().title(), desk.text(), upload != null ? "Imported from a file" : "Pasted"))
                .map(kept -> new ModelAndView("redirect:/cases/" + kept.id()))
                .orElseGet(() -> shown(desk, "", HttpStatus.UNPROCESSABLE_CONTENT));
    }

    private static ModelAndView shown(Desk desk, String fault, HttpStatus status) {
        return new ModelAndView(VIEW, Map.of("desk", desk, "fault", fault), status);
    }
}
