package footing.io.edit;

import footing.core.fleet.Case;
import footing.io.form.Problem;
import java.util.List;

/** What came of a change to a case file. */
public sealed interface Edited {
    /** The changed text, or the text as it was if the change was refused. */
    String text();

    /** Why the change was refused; empty if it was made. */
    List<Problem> problems();

    /** The change was made: the new text and the case it states. */
    record Changed(String text, Case stated, List<Problem> warnings) implements Edited {
        public Changed {
            warnings = List.copyOf(warnings);
        }

        @Override
        public List<Problem> problems() {
            return List.of();
        }
    }

    /** Nothing was changed, for at least one reason. */
    record Refused(String text, List<Problem> problems) implements Edited {
        public Refused {
            problems = List.copyOf(problems);
            if (problems.isEmpty()) {
                throw new IllegalArgumentException("refused without a reason");
            }
        }
    }
}
