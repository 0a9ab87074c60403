package footing.io.casefile;

import footing.core.fleet.Case;
import footing.core.ground.TakenPrint;
import footing.core.ground.TakenPrints;
import footing.io.form.At;
import footing.io.form.Found;
import footing.io.form.Problem;
import footing.io.form.Problems;
import footing.io.trial.StatedTrial;
import footing.io.trial.TrialFile;
import footing.io.trial.TrialReading;
import footing.io.words.TakenWords;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The trials a case names: read beside it, their prints put where they hold. */
final class NamedTrials {
    private final Found named;
    private final @Nullable Path folder;
    private final Problems problems;
    private final List<StatedTrial> trials = new ArrayList<>();

    NamedTrials(Found named, @Nullable Path folder, Problems problems) {
        this.named = named;
        this.folder = folder;
        this.problems = problems;
    }

    List<StatedTrial> all() {
        return trials;
    }

    /** The case with what the prints say. */
    Case into(Case stated) {
        if (!named.isList()) {
            return stated;
        }
        if (folder == null) {
            problems.warn(
                    named.at(),
                    "",
                    "these trials can't be read from here; what they measured is left out",
                    "use the file of the case itself");
            return stated;
        }
        for (Found item : named.items()) {
            read(item.text() + "", item.at(), folder);
        }
        List<TakenPrint> prints =
                trials.stream().flatMap(t -> t.evidence().prints().stream()).toList();
        TakenPrints.Placed placed = TakenPrints.into(stated, prints);
        placed.unused().forEach(u -> problems.warn(named.at(), "", TakenWords.of(u), TakenWords.advice(u.why())));
        return placed.stated();
    }

    private void read(String name, At at, Path beside) {
        try {
            Path path = beside.resolve(name).normalize();
            if (Path.of(name).isAbsolute() || !path.startsWith(beside.normalize()) || !Files.isRegularFile(path)) {
                problems.error(at, name, "no file beside or below this case", "name a file such as trials/pull.yaml");
                return;
            }
            TrialReading reading = TrialFile.read(path);
            if (reading instanceof TrialReading.Accepted accepted) {
                trials.add(accepted.stated());
            } else if (reading instanceof TrialReading.Refused refused) {
                Problem first = refused.problems().get(0);
                problems.error(
                        at,
                        name,
                        "this trial can't be used: " + first.message(),
                        "footing trial " + name + " lists all that is wrong");
            }
        } catch (InvalidPathException e) {
            problems.error(at, name, "not the name of a file", "name a file such as trials/pull.yaml");
        } catch (IOException e) {
            problems.error(at, name, "can't be read", "check that it may be opened");
        }
    }
}
