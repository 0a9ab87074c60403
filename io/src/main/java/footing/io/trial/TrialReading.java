package footing.io.trial;

import footing.io.form.Problem;
import java.util.List;

/** What came of reading a trial: the trial, or everything that is wrong with it. */
public sealed interface TrialReading {
    /** A trial, and what should be looked at. */
    record Accepted(StatedTrial stated, List<Problem> warnings) implements TrialReading {
        public Accepted {
            warnings = List.copyOf(warnings);
        }
    }

    /** No trial. */
    record Refused(List<Problem> problems) implements TrialReading {
        public Refused {
            problems = List.copyOf(problems);
        }
    }
}
