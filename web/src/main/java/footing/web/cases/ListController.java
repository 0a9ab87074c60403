package footing.web.cases;

import footing.web.store.CaseStore;
import footing.web.store.CaseSummary;
import java.util.List;
import java.util.function.Predicate;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The list of cases, which is the first page, and the list of those laid away. */
@Controller
class ListController {
    private final CaseStore store;

    ListController(CaseStore store) {
        this.store = store;
    }

    /** @param archived the case that has just been laid away, to be taken back at once */
    @GetMapping({"/", "/cases"})
    String list(@RequestParam(defaultValue = "") String archived, Model model) {
        List<CaseSummary> all = store.list();
        model.addAttribute("cases", lines(all, c -> !c.archived()));
        model.addAttribute("laidAway", lines(all, c -> c.archived() && c.id().equals(archived)));
        model.addAttribute("archivedCount", lines(all, CaseSummary::archived).size());
        return "cases/list";
    }

    @GetMapping("/cases/archived")
    String archived(Model model) {
        model.addAttribute("cases", lines(store.list(), CaseSummary::archived));
        return "cases/archived";
    }

    private static List<CaseLine> lines(List<CaseSummary> all, Predicate<CaseSummary> which) {
        return all.stream().filter(which).map(CaseLine::of).toList();
    }
}
