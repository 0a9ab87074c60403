package footing.web.cases;

import footing.web.store.CaseStore;
import footing.web.store.StoredCase;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** What can be done with a case as a whole. Every request names the version it was made from. */
@Controller
@RequestMapping("/cases/{id}")
class ChangeController {
    private final CaseStore store;

    ChangeController(CaseStore store) {
        this.store = store;
    }

    @GetMapping("/rename")
    String askName(@PathVariable String id, Model model) {
        model.addAttribute("kept", store.get(id));
        return "cases/rename";
    }

    @PostMapping("/rename")
    String rename(@PathVariable String id, @RequestParam long version, @RequestParam String name) {
        if (!name.isBlank()) {
            store.rename(id, name, version);
        }
        return "redirect:/cases";
    }

    @PostMapping("/copy")
    String copy(@PathVariable String id) {
        StoredCase from = store.get(id);
        StoredCase copy = store.copy(id, "Copy of " + from.name());
        return "redirect:/cases/" + copy.id();
    }

    @PostMapping("/archive")
    String archive(@PathVariable String id, @RequestParam long version) {
        store.archive(id, version);
        return "redirect:/cases?archived=" + id;
    }

    @PostMapping("/restore")
    String restore(@PathVariable String id, @RequestParam long version) {
        store.restore(id, version);
        return "redirect:/cases";
    }

    /** The second step before a case is gone. */
    @GetMapping("/delete")
    String askDelete(@PathVariable String id, Model model) {
        StoredCase kept = store.get(id);
        if (!kept.archived()) {
            return "redirect:/cases";
        }
        model.addAttribute("kept", kept);
        model.addAttribute("changes", store.history(id).size());
        return "cases/delete";
    }

    @PostMapping("/delete")
    String delete(@PathVariable String id, @RequestParam long version) {
        if (!store.get(id).archived()) {
            return "redirect:/cases";
        }
        store.deleteForGood(id, version);
        return "redirect:/cases/archived";
    }

    @PostMapping("/undo")
    String undo(@PathVariable String id, @RequestParam long version, @RequestParam(defaultValue = "") String to) {
        store.undo(id, version);
        return after(id, to);
    }

    @PostMapping("/redo")
    String redo(@PathVariable String id, @RequestParam long version, @RequestParam(defaultValue = "") String to) {
        store.redo(id, version);
        return after(id, to);
    }

    @PostMapping("/back")
    String back(@PathVariable String id, @RequestParam long version, @RequestParam long then) {
        store.goBackTo(id, then, version);
        return after(id, "history");
    }

    private static String after(String id, String to) {
        return "redirect:/cases/" + id + (to.equals("history") ? "/history" : "");
    }
}
