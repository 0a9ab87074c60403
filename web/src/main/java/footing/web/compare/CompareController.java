package footing.web.compare;

import footing.core.compare.Difference;
import footing.core.fleet.Case;
import footing.web.store.CaseStore;
import footing.web.store.LinkedRecords;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.server.ResponseStatusException;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Two states of a case, or of two cases, side by side. */
@Controller
@RequestMapping("/cases/{id}/compare")
class CompareController {
    /** A page waits so long for its comparison; after that it shows how far it is. */
    private static final long FIRST_MILLIS = 800;

    private static final long NEXT_MILLIS = 100;

    private final CaseStore store;
    private final LinkedRecords records;
    private final Comparisons comparisons;

    CompareController(CaseStore store, LinkedRecords records, Comparisons comparisons) {
        this.store = store;
        this.records = records;
        this.comparisons = comparisons;
    }

    /** Two states that can be compared; or why they can't. */
    private record Pair(
            Choice.Side then, Choice.Side now, Optional<Case> before, Optional<Case> after, String trouble) {}

    /**
     * The whole page.
     *
     * @param then the state to compare with: a version of this case, or another case as it stands; left out, the version
     *     before the present one
     * @param now the other state; left out, the present one
     */
    @GetMapping
    ModelAndView page(
            @PathVariable String id,
            @RequestParam(defaultValue = "") String then,
            @RequestParam(defaultValue = "") String now) {
        Choice choice = Choice.of(store, id);
        Map<String, Object> model = model(id, pair(choice, then, now), FIRST_MILLIS);
        model.put("own", choice.ownLines());
        model.put("others", choice.otherLines());
        return new ModelAndView("compare/page", model);
    }

    /** The part of the page that waits for the comparison. */
    @GetMapping("/result")
    ModelAndView result(@PathVariable String id, @RequestParam String then, @RequestParam String now) {
        return new ModelAndView(
                "compare/parts :: result", model(id, pair(Choice.of(store, id), then, now), NEXT_MILLIS));
    }

    @PostMapping("/stop")
    String stop(@PathVariable String id, @RequestParam String then, @RequestParam String now, RedirectAttributes to) {
        Pair pair = pair(Choice.of(store, id), then, now);
        if (pair.trouble().isEmpty()) {
            comparisons
                    .of(pair.before().orElseThrow(), pair.after().orElseThrow())
                    .stop();
        }
        return back(id, then, now, to);
    }

    @PostMapping("/again")
    String again(@PathVariable String id, @RequestParam String then, @RequestParam String now, RedirectAttributes to) {
        Pair pair = pair(Choice.of(store, id), then, now);
        if (pair.trouble().isEmpty()) {
            comparisons.forget(pair.before().orElseThrow(), pair.after().orElseThrow());
        }
        return back(id, then, now, to);
    }

    private static String back(String id, String then, String now, RedirectAttributes to) {
        to.addAttribute("id", id);
        to.addAttribute("then", then);
        to.addAttribute("now", now);
        return "redirect:/cases/{id}/compare";
    }

    private Map<String, Object> model(String id, Pair pair, long patience) {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("kept", store.get(id));
        model.put("then", pair.then());
        model.put("now", pair.now());
        model.put("trouble", pair.trouble());
        model.put("percent", 0);
        model.put("view", null);
        if (pair.trouble().isEmpty()) {
            Comparison comparison =
                    comparisons.of(pair.before().orElseThrow(), pair.after().orElseThrow());
            Optional<Difference> known = comparison.within(patience);
            model.put("percent", comparison.percent());
            model.put("view", known.map(CompareView::of).orElse(null));
        }
        return model;
    }

    private Pair pair(Choice choice, String then, String now) {
        Choice.Side after = now.isEmpty() ? choice.present() : side(choice, now);
        Choice.Side before = then.isEmpty() ? choice.previous() : side(choice, then);
        Optional<Case> was = records.read(before.text()).found();
        Optional<Case> is = records.read(after.text()).found();
        return new Pair(before, after, was, is, trouble(before, after, was, is));
    }

    private Choice.Side side(Choice choice, String key) {
        return choice.side(store, key).orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND));
    }

    /** Why two states can't be compared, in a sentence; empty if they can. */
    private static String trouble(Choice.Side before, Choice.Side after, Optional<Case> was, Optional<Case> is) {
        if (before.text().equals(after.text())) {
            return "Both are the same, to the letter. Change a number on the answer page, or choose another state above.";
        }
        if (was.isEmpty() || is.isEmpty()) {
            return (was.isEmpty() ? before : after).said() + " can’t be answered as it stands, so there is nothing to"
                    + " compare. Choose another state above.";
        }
        if (was.get().machines().isEmpty() || is.get().machines().isEmpty()) {
            return "One of the two has no machine, so it has no answer to compare.";
        }
        String had = was.get().heading().currency();
        String has = is.get().heading().currency();
        return had.equals(has)
                ? ""
                : "One is in " + had + ", the other in " + has + "; savings in two currencies can’t be compared.";
    }
}
