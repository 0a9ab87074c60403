package footing.io.catalog;

import footing.io.form.Problems;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Reads the catalog that comes with the program, once. */
final class Starter {
    static final String FILE = "starter-catalog.yaml";
    static final Catalog CATALOG = load();

    private Starter() {}

    private static Catalog load() {
        try (InputStream in = Starter.class.getResourceAsStream(FILE)) {
            if (in == null) {
                throw new IllegalStateException(FILE + " is not packed with the program");
            }
            Problems problems = new Problems(FILE);
            Catalog catalog = CatalogFile.read(new String(in.readAllBytes(), StandardCharsets.UTF_8), problems);
            if (problems.hasErrors()) {
                throw new IllegalStateException(problems.errors().toString());
            }
            return catalog;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
