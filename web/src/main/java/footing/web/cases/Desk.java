package footing.web.cases;

import footing.core.fleet.Case;
import footing.io.casefile.CaseFile;
import footing.io.casefile.Reading;
import footing.io.form.Problem;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A case file on the desk: its text and what is wrong with it.
 *
 * @param problems in the order of their lines
 * @param warnings what is odd but can be answered
 */
record Desk(String text, Optional<Case> stated, List<Problem> problems, List<Problem> warnings) {
    static Desk of(String text) {
        return of(text, CaseFile.read(text, "case file"));
    }

    static Desk of(String text, Reading reading) {
        return new Desk(text, reading.found(), reading.problems(), reading.warnings());
    }

    /** An empty desk. */
    static Desk blank() {
        return new Desk("", Optional.empty(), List.of(), List.of());
    }

    public boolean isGood() {
        return stated.isPresent();
    }

    /** Lines with a problem, as the editor wants to be told: '3 14 15'. */
    public String markedLines() {
        return problems.stream().map(p -> Integer.toString(p.line())).distinct().collect(Collectors.joining(" "));
    }

    public String count() {
        return Spoken.count(problems.size(), "problem");
    }
}
