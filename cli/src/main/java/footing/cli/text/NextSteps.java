package footing.cli.text;

import footing.core.answer.Answer;
import footing.core.answer.EntryAnswer;
import footing.core.answer.Options;
import footing.core.fleet.When;
import footing.io.words.Advice;
import java.util.ArrayList;
import java.util.List;

/**
 * What to run next.
 *
 * @param file the case file as it was named
 */
public record NextSteps(String file) {
    /** A command and what it does. */
    record Step(String does, String command) {}

    List<Step> of(Answer answer, Advice dearest) {
        List<Step> steps = new ArrayList<>();
        if (answer.machines().size() > 1) {
            steps.add(new Step(
                    "Everything about one machine:",
                    "footing assess " + quoted(file) + " --machine " + quoted(dearest.id())));
        }
        EntryAnswer about = dearest.about();
        if (about != null) {
            steps.add(new Step("Where a figure comes from, down to the last number:", explain(answer, dearest, about)));
        }
        steps.add(new Step("The numbers nobody stated:", "footing check " + quoted(file) + " --defaults"));
        return steps;
    }

    private String explain(Answer answer, Advice a, EntryAnswer about) {
        return "footing explain " + quoted(file) + " " + quoted(a.id()) + " "
                + quoted(about.entry().id()) + " saving"
                + (about.entry().when() == When.WORN ? " --when worn" : "") + " --futures " + answer.futures()
                + (answer.seed() == Options.USUAL_SEED ? "" : " --seed " + answer.seed());
    }

    /** Quoted for a shell where it has to be. */
    private static String quoted(String word) {
        return word.matches("[\\w./@%+,:=-]+") ? word : "'" + word.replace("'", "'\\''") + "'";
    }
}
