package footing.cli;

import footing.io.interview.Choice;
import footing.io.interview.Field;
import footing.io.interview.Interview;
import footing.io.interview.Question;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Asks the questions of the interview one after another; the end of the input is 'don't know' for the rest. */
final class Interviewer {
    private static final int TRIES = 3;
    private static final int LONGEST_LINE = 10_000;

    private final Terminal terminal;
    private final PrintWriter out;
    private final BufferedReader in;
    private final Map<String, String> answers = new LinkedHashMap<>();
    private boolean ended;

    Interviewer(Terminal terminal, PrintWriter out) {
        this.terminal = terminal;
        this.out = out;
        this.in = new BufferedReader(new InputStreamReader(terminal.in(), StandardCharsets.UTF_8));
    }

    /** The answers that fit, by field. */
    Map<String, String> ask() throws IOException {
        List<Question> questions = Interview.questions();
        say(questions.size() + " questions. Enter or ? = don't know: it takes the guess in brackets.");
        for (int i = 0; i < questions.size() && !ended; i++) {
            Question question = questions.get(i);
            say("");
            say((i + 1) + ". " + question.text());
            say("   " + question.why());
            for (Field field : question.fields()) {
                if (!ended && Interview.isAsked(field, answers)) {
                    ask(field);
                }
            }
        }
        return answers;
    }

    private void ask(Field field) throws IOException {
        List<Choice> choices = field.shape().choices();
        for (int i = 0; i < choices.size(); i++) {
            say("     " + (i + 1) + " " + choices.get(i).words());
        }
        Interview.Taken guess = Interview.guess(field, answers);
        String unit = Interview.unit(field, answers);
        String label = field.label() + (unit.isEmpty() ? "" : ", " + unit);
        for (int i = 1; ; i++) {
            out.print(terminal.letters().shown("   " + label + " [" + guess.shown() + "]: "));
            out.flush();
            String typed = line();
            String fault = typed == null ? "" : fault(field, typed);
            if (fault.isEmpty()) {
                return;
            }
            answers.remove(field.id());
            say("   " + fault);
            if (i == TRIES && !terminal.watched()) {
                say("   Taken instead, as a guess: " + guess.shown());
                return;
            }
        }
    }

    /** What is wrong with the answer, alone or beside the others; it is kept if nothing is. */
    private String fault(Field field, String typed) {
        if (Field.isUnknown(typed)) {
            return "";
        }
        answers.put(field.id(), typed);
        return Interview.faults(answers).getOrDefault(field.id(), "");
    }

    private @Nullable String line() throws IOException {
        String line = in.readLine();
        if (line == null) {
            ended = true;
            say("");
            say("   The input ends here: what was not asked is a guess.");
            return null;
        }
        return line.length() > LONGEST_LINE ? line.substring(0, LONGEST_LINE) : line;
    }

    private void say(String words) {
        out.println(terminal.letters().shown(words));
    }
}
