package footing.cli;

import footing.core.fleet.Case;
import footing.core.fleet.Input;
import footing.core.fleet.Key;
import footing.core.fleet.Numbers;
import footing.core.records.Learned;
import footing.io.edit.CaseEdit;
import footing.io.edit.Edited;
import footing.io.form.Written;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Puts {@code {learned: …}} into a case file, for what the records tell of, and the link to them. */
final class LearnedWriting {
    private final Path file;
    private final Case stated;
    private final Path records;
    private final Learned learned;
    private final List<String> told = new ArrayList<>();

    LearnedWriting(Path file, Case stated, Path records, Learned learned) {
        this.file = file;
        this.stated = stated;
        this.records = records;
        this.learned = learned;
    }

    /** Writes, and says what was replaced by what. */
    List<String> write() throws BadInput, IOException {
        Map<String, String> typed = new LinkedHashMap<>();
        typed.put("records", link());
        String text = Files.readString(file);
        String linked = changed(text, typed).orElseThrow(() -> new BadInput("can't link the records to " + file));
        for (Learned.Flats f : learned.flats()) {
            if (!f.unwatched()) {
                linked = put(linked, f.machine());
            }
        }
        for (Learned.SetLife life : learned.lives()) {
            boolean known = stated.assemblies().stream().anyMatch(a -> a.id().equals(life.assembly()));
            if (known && (life.sets() > 0 || life.bought().isPresent())) {
                linked = putLife(linked, life.assembly());
            }
        }
        Files.writeString(file, linked);
        return told;
    }

    private String link() throws BadInput {
        Path from = file.toAbsolutePath().normalize().getParent();
        Path to = records.toAbsolutePath().normalize();
        if (from == null || !to.startsWith(from)) {
            throw new BadInput("a case reads records beside or below itself: put " + records + " beside " + file);
        }
        return from.relativize(to).toString().replace('\\', '/');
    }

    private String put(String text, String machine) {
        return stated.machines().stream()
                .filter(m -> m.id().equals(machine))
                .findFirst()
                .map(m -> replaced(text, Input.of(m.flatsKey(), machine), m.numbers(), "{learned: flats}"))
                .orElse(text);
    }

    private String putLife(String text, String assembly) {
        Numbers numbers = stated.assembly(assembly).numbers();
        return replaced(text, Input.of(Key.LIFE, assembly), numbers, "{learned: life}");
    }

    private String replaced(String text, Input input, Numbers numbers, String value) {
        String before = numbers.get(input.key())
                .map(s -> Written.spread(input.key().dimension(), s))
                .orElse("nothing");
        var after = changed(text, Map.of(input.path(), value));
        if (after.isEmpty()) {
            told.add(input.path() + ": not written; it isn't stated in this file");
            return text;
        }
        told.add(input.path() + ": " + value + ", was " + before);
        return after.get();
    }

    private static java.util.Optional<String> changed(String text, Map<String, String> typed) {
        return CaseEdit.set(text, typed) instanceof Edited.Changed changed
                ? java.util.Optional.of(changed.text())
                : java.util.Optional.empty();
    }
}
