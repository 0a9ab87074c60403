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
    record Step(String does, List<String> command) {
        Step {
            command = List.copyOf(command);
        }
    }

    /** The whole answer, with what the page leaves out. */
    List<String> everything() {
        return ShellLines.of(List.of("footing", "assess", file, "--json"));
    }

    List<Step> of(Answer answer, Advice dearest) {
        List<Step> steps = new ArrayList<>();
        if (answer.machines().size() > 1) {
            steps.add(new Step(
                    "Everything about one machine:",
                    ShellLines.of(List.of("footing", "assess", file, "--machine", dearest.id()))));
        }
        EntryAnswer about = dearest.about();
        if (about != null) {
            steps.add(new Step("Where a figure comes from, down to the last number:", explain(answer, dearest, about)));
        }
        steps.add(
                new Step("The numbers nobody stated:", ShellLines.of(List.of("footing", "check", file, "--defaults"))));
        return steps;
    }

    private List<String> explain(Answer answer, Advice a, EntryAnswer about) {
        List<String> words = new ArrayList<>(
                List.of("footing", "explain", file, a.id(), about.entry().id(), "saving"));
        if (about.entry().when() == When.WORN) {
            words.addAll(List.of("--when", "worn"));
        }
        words.addAll(List.of("--futures", Integer.toString(answer.futures())));
        if (answer.seed() != Options.USUAL_SEED) {
            words.addAll(List.of("--seed", Long.toString(answer.seed())));
        }
        return ShellLines.of(words);
    }
}
