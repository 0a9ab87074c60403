package footing.io.form;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Gathers what is wrong with one file, so that one run reports all of it. */
public final class Problems {
    private static final int MOST = 500;

    private final String file;
    private final List<Problem> errors = new ArrayList<>();
    private final List<Problem> warnings = new ArrayList<>();

    public Problems(String file) {
        this.file = file;
    }

    /** For a second look at what has been checked: gathers what nobody will ask for. */
    static Problems unheard() {
        return new Problems("");
    }

    public void error(At at, String read, String message, String advice) {
        add(errors, at, read, message, advice);
    }

    public void error(At at, Node read, String message, String advice) {
        add(errors, at, read.shown(), message, advice);
    }

    public void warn(At at, String read, String message, String advice) {
        add(warnings, at, read, message, advice);
    }

    private void add(List<Problem> to, At at, String read, String message, String advice) {
        if (to.size() < MOST) {
            to.add(new Problem(file, at.line(), at.path(), Node.shown(read), message, advice));
        } else if (to.size() == MOST) {
            to.add(new Problem(
                    file, at.line(), "", "", "and more problems than can be listed", "mend those above first"));
        }
    }

    /** Takes over what another file's reading found. */
    public void addAll(Problems other) {
        errors.addAll(other.errors);
        warnings.addAll(other.warnings);
    }

    /** True if no further error will be listed, so that nobody need look for one. */
    boolean isFull() {
        return errors.size() > MOST;
    }

    public boolean hasErrors() {
        return !errors.isEmpty();
    }

    /** Errors in the order of their lines. */
    public List<Problem> errors() {
        return sorted(errors);
    }

    public List<Problem> warnings() {
        return sorted(warnings);
    }

    private static List<Problem> sorted(List<Problem> problems) {
        return problems.stream()
                .sorted(Comparator.comparing(Problem::file).thenComparingInt(Problem::line))
                .toList();
    }
}
