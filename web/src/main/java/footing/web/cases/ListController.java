package footing.web.cases;

import footing.web.store.CaseStore;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;

/** The list of cases, which is the first page. */
@Controller
class ListController {
    private final CaseStore store;

    ListController(CaseStore store) {
        this.store = store;
    }

    @GetMapping({"/", "/cases"})
    String list(Model model) {
        model.addAttribute(
                "cases", store.list().stream().filter(c -> !c.archived()).toList());
        return "cases/list";
    }
}
