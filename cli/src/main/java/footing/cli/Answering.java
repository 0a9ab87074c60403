package footing.cli;

import footing.cli.text.AnswerText;
import footing.cli.text.NextSteps;
import footing.core.answer.Answer;
import footing.core.answer.Assessment;
import footing.core.answer.Narrowing;
import footing.core.answer.Options;
import footing.core.fleet.Case;
import footing.io.answer.AnswerCsv;
import footing.io.answer.AnswerJson;
import footing.io.answer.Threads;
import footing.io.casefile.Unlearned;
import footing.io.words.NarrowedWords;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Answers a case and prints the answer as asked. */
final class Answering {
    /** What the program ends with if it was stopped before everything was known. */
    static final int STOPPED = 1;

    private final Terminal terminal;
    private final AnswerOptions asked;
    private final PrintWriter out;
    private final PrintWriter err;

    Answering(Terminal terminal, AnswerOptions asked, PrintWriter out, PrintWriter err) {
        this.terminal = terminal;
        this.asked = asked;
        this.out = out;
        this.err = err;
    }

    Answer answer(Case stated, Options options) throws BadInput {
        try (Threads threads = new Threads(asked.threads());
                Progress progress = new Progress(err, terminal, System::nanoTime)) {
            return Assessment.answer(stated, options, threads, progress);
        }
    }

    /** Writes an answer's workbook; false if it was stopped. */
    boolean workbook(Answer answer, List<String> warnings, Path to) throws BadInput, IOException {
        try (Threads threads = new Threads(asked.threads());
                Progress progress = new Progress(err, terminal, System::nanoTime)) {
            return answer.complete() && WorkbookFile.write(answer, warnings, threads, progress, to);
        }
    }

    /** How much surer records make an answer; empty if nothing is learned from any, or it was stopped. */
    private String narrowed(Answer answer) throws BadInput {
        Optional<Case> unlearned = answer.complete() ? Unlearned.of(answer.of()) : Optional.empty();
        if (unlearned.isEmpty()) {
            return "";
        }
        try (Threads threads = new Threads(asked.threads())) {
            return NarrowedWords.of(answer, unlearned.get(), Narrowing.of(answer, unlearned.get(), threads));
        }
    }

    /** Prints in the form asked for; the exit code. */
    int print(Answer answer, List<String> warnings, NextSteps next) throws IOException, BadInput {
        if (asked.json()) {
            AnswerJson.write(answer, warnings, out);
        } else if (asked.csv()) {
            AnswerCsv.write(answer, out);
        } else {
            out.print(AnswerText.of(answer, narrowed(answer), next, terminal.letters()));
        }
        out.flush();
        if (!answer.complete()) {
            err.println("footing: stopped; printed is what was known by then");
        }
        return answer.complete() ? 0 : STOPPED;
    }
}
