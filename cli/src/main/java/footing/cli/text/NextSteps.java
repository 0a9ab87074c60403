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

    List<Step> of(Answer answer, Advice dearest) {
        List<Step> steps = new ArrayList<>();
        if (answer.machines().size() > 1) {
            steps.add(new Step(
                    "Everything about one machine:",
                    command("footing assess", quoted(file), "--machine " + quoted(dearest.id()))));
        }
        EntryAnswer about = dearest.about();
        if (about != null) {
            steps.add(new Step("Where a figure comes from, down to the last number:", explain(answer, dearest, about)));
        }
        steps.add(new Step("The numbers nobody stated:", command("footing check", quoted(file), "--defaults")));
        return steps;
    }

    private List<String> explain(Answer answer, Advice a, EntryAnswer about) {
        return command(
                "footing explain",
                quoted(file),
                quoted(a.id()),
                quoted(about.entry().id()),
                "saving",
                about.entry().when() == When.WORN ? "--when worn" : "",
                "--futures " + answer.futures(),
                answer.seed() == Options.USUAL_SEED ? "" : "--seed " + answer.seed());
    }

    /** A command on as many lines as it takes, so that a shell takes them together. */
    private static List<String> command(String... words) {
        List<String> lines = new ArrayList<>();
        String line = "   ";
        for (String word : words) {
            if (line.length() + 1 + word.length() > Lines.WIDTH - 2 && !line.isBlank()) {
                lines.add(line + " \\");
                line = "       ";
            }
            line += word.isEmpty() ? "" : " " + word;
        }
        lines.add(line);
        return lines;
    }

    /** Quoted for a shell where it has to be. */
    private static String quoted(String word) {
        return word.matches("[\\w./@%+,:=-]+") ? word : "'" + word.replace("'", "'\\''") + "'";
    }
}
