package footing.web.answer;

import footing.core.answer.Explain;
import footing.core.answer.Explanation;
import footing.core.fleet.Case;
import footing.core.fleet.ResolvedMachine;
import footing.core.fleet.Resolver;
import footing.core.fleet.When;
import footing.io.words.Pieces;
import footing.web.store.CaseStore;
import footing.web.store.StoredCase;
import java.util.Map;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.server.ResponseStatusException;
import org.springframework.web.servlet.ModelAndView;

/** Takes a figure of an answer apart, down to the numbers somebody stated and what was counted. */
@Controller
class ExplainController {
    private final CaseStore store;
    private final Answers answers;

    ExplainController(CaseStore store, Answers answers) {
        this.store = store;
        this.answers = answers;
    }

    /** The tree of a figure, on the futures of the answer that is shown. */
    @GetMapping("/cases/{id}/explain")
    ModelAndView explain(
            @PathVariable String id,
            @RequestParam String of,
            @RequestParam String wheels,
            @RequestParam(defaultValue = "now") String when,
            @RequestParam String figure,
            @RequestParam(defaultValue = "0") int futures) {
        StoredCase kept = store.get(id);
        Case stated = CaseModel.read(kept).found().orElseThrow(() -> new ResponseStatusException(HttpStatus.CONFLICT));
        if (!Explain.FIGURES.contains(figure)) {
            throw new ResponseStatusException(HttpStatus.NOT_FOUND);
        }
        When time = when.equals("worn") ? When.WORN : When.NOW;
        try {
            Told told = answers.now(id, stated, of);
            // The screen may still show the first answer.
            int shown = futures == Answers.FIRST ? futures : told.answer().futures();
            Explanation tree = Explain.figure(
                    stated, of, wheels, time, figure, told.answer().seed(), shown);
            return new ModelAndView(
                    "answer/explain :: tree",
                    Map.of(
                            "root",
                            TreeView.of(tree, stated.heading().currency()),
                            "of",
                            of,
                            "wheels",
                            wheels(stated, of, wheels, time),
                            "futures",
                            footing.io.words.Figures.money(shown)));
        } catch (IllegalArgumentException e) {
            throw new ResponseStatusException(HttpStatus.NOT_FOUND, "no such figure", e);
        }
    }

    /** In plain pieces. */
    private static String wheels(Case stated, String machine, String id, When time) {
        ResolvedMachine resolved = Resolver.resolve(stated, stated.machine(machine));
        return resolved.entries().stream()
                .filter(e -> e.id().equals(id) && (e.when() == time || e.equals(resolved.carried())))
                .findFirst()
                .map(e -> Pieces.all(resolved, e) + (e.when() == When.WORN ? " when worn" : ""))
                .orElse(id);
    }
}
