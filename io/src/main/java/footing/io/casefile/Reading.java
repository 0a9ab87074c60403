package footing.io.casefile;

import footing.core.fleet.Case;
import footing.io.form.Problem;
import footing.io.trial.StatedTrial;
import java.util.List;
import java.util.Optional;

/** What came of reading a case file: a case, or everything that is wrong with it. */
public sealed interface Reading {
    /** What doesn't stop an answer, but should be looked at. */
    List<Problem> warnings();

    /** The case, if there is one. */
    Optional<Case> found();

    /** What is wrong; empty if there is a case. */
    List<Problem> problems();

    /** The trials the case names, as far as they could be read. */
    List<StatedTrial> trials();

    /** A case. */
    record Accepted(Case stated, List<Problem> warnings, List<StatedTrial> trials) implements Reading {
        public Accepted {
            warnings = List.copyOf(warnings);
            trials = List.copyOf(trials);
        }

        @Override
        public Optional<Case> found() {
            return Optional.of(stated);
        }

        @Override
        public List<Problem> problems() {
            return List.of();
        }
    }

    /** No case: at least one problem. */
    record Refused(List<Problem> problems, List<Problem> warnings) implements Reading {
        public Refused {
            problems = List.copyOf(problems);
            warnings = List.copyOf(warnings);
            if (problems.isEmpty()) {
                throw new IllegalArgumentException("refused without a reason");
            }
        }

        @Override
        public Optional<Case> found() {
            return Optional.empty();
        }

        @Override
        public List<StatedTrial> trials() {
            return List.of();
        }
    }
}
