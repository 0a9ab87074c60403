package footing.io.casefile;

import footing.core.fleet.Case;
import footing.core.records.Learned;
import footing.io.form.Found;
import footing.io.form.Problems;
import footing.io.records.CaseBackground;
import footing.io.records.Lessons;
import footing.io.records.Records;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Finds the records a case names and puts what they teach where it says {@code {learned: …}}. */
final class LearnedValues {
    private final Case stated;
    private final Found named;
    private final @Nullable Path folder;
    private final Problems problems;

    LearnedValues(Case stated, Found named, @Nullable Path folder, Problems problems) {
        this.stated = stated;
        this.named = named;
        this.folder = folder;
        this.problems = problems;
    }

    Case filledIn() {
        String name = named.text();
        if (!FilledIn.isAsked(stated)) {
            if (name != null) {
                problems.warn(
                        named.at(),
                        "",
                        CaseFile.NOTHING_LEARNED,
                        "footing learn puts {learned: flats}, {learned: life} and learned fixes into the case");
            }
            return stated;
        }
        if (name == null) {
            problems.error(
                    named.at(),
                    "",
                    "missing; a learned value needs it",
                    "name a file beside the case: records: log.csv");
            return stated;
        }
        if (folder == null) {
            problems.warn(
                    named.at(),
                    name,
                    "these records can't be read from here; what is learned stands as if nothing were known",
                    "use the file of the case itself");
            return stated;
        }
        return read(name, folder).map(this::filledIn).orElse(stated);
    }

    private Case filledIn(Learned learned) {
        LearnedFixes fixes = new LearnedFixes(learned);
        for (Case.Crew crew : stated.crews()) {
            List<String> strangers = fixes.strangers(crew);
            if (!strangers.isEmpty()) {
                problems.warn(
                        named.at(),
                        "",
                        "the shares of fixes of " + crew.id() + " leave out what the case doesn't state: "
                                + String.join(", ", strangers),
                        "add them to fixes of " + crew.id());
            }
        }
        return new FilledIn(stated, learned).filledIn();
    }

    private Optional<Learned> read(String name, Path beside) {
        try {
            Path path = beside.resolve(name).normalize();
            if (Path.of(name).isAbsolute() || !path.startsWith(beside.normalize()) || !Files.isRegularFile(path)) {
                problems.error(named.at(), name, "no file beside or below this case", "name a file such as log.csv");
                return Optional.empty();
            }
            Lessons.Taught taught = Lessons.of(path, new CaseBackground(stated), FilledIn.WEAR_LIMIT);
            Records records = taught.records();
            records.unread().forEach(p -> problems.error(named.at(), name, p.message(), p.advice()));
            if (!records.refused().isEmpty()) {
                problems.warn(
                        named.at(),
                        name,
                        records.refused().size() + " of its " + records.rows() + " rows can't be and are left out",
                        "footing learn " + name + " lists them");
            }
            return records.unread().isEmpty() ? Optional.of(taught.learned()) : Optional.empty();
        } catch (InvalidPathException e) {
            problems.error(named.at(), name, "not the name of a file", "");
        } catch (IOException e) {
            problems.error(named.at(), name, "can't be read", "");
        }
        return Optional.empty();
    }
}
