package footing.io.form;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/** Gathers what is wrong with one file, so that one run reports all of it. */
public final class Problems {
    private static final int MOST = 500;

    private final String file;
    private final List<Problem> errors = new ArrayList<>();
    private final List<Problem> warnings = new ArrayList<>();
    private boolean tooLarge;

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

    /** A name nobody knows: advises the nearest of those that are known. */
    public void unknown(At at, String read, String message, Collection<String> known) {
        // The search is what costs, so it ends with the list.
        String advice = errors.size() < MOST ? Nearest.advice(read, known) : "";
        boolean said = at.path().equals(Node.shown(read)) || at.path().endsWith("." + Node.shown(read));
        add(errors, at, said ? "" : read, message, advice);
    }

    /** A part too large to go through: its meaning isn't looked at. */
    void tooLarge(At at, String size, String message, int most) {
        error(at, size, message, "at most " + most + " would fit");
        tooLarge = true;
    }

    public boolean isTooLarge() {
        return tooLarge;
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
        tooLarge |= other.tooLarge;
        warnings.addAll(other.warnings);
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
