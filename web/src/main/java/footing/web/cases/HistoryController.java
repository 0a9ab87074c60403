package footing.web.cases;

import footing.web.store.CaseStore;
import footing.web.store.Change;
import java.util.ArrayList;
import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/** Everything that was ever changed in a case. */
@Controller
class HistoryController {
    private static final int MOST_SHOWN = 200;

    private final CaseStore store;

    HistoryController(CaseStore store) {
        this.store = store;
    }

    @GetMapping("/cases/{id}/history")
    String history(@PathVariable String id, Model model) {
        List<Change> changes = store.history(id);
        List<HistoryLine> lines = new ArrayList<>();
        for (int i = 0; i < Math.min(changes.size(), MOST_SHOWN); i++) {
            Change before = i + 1 < changes.size() ? changes.get(i + 1) : null;
            lines.add(HistoryLine.of(changes.get(i), before, i == 0));
        }
        model.addAttribute("kept", store.get(id));
        model.addAttribute("lines", lines);
        model.addAttribute("older", changes.size() - lines.size());
        return "cases/history";
    }
}
