package footing.io.casefile;

import footing.io.catalog.Catalog;
import footing.io.catalog.CatalogFile;
import footing.io.form.FileText;
import footing.io.form.Found;
import footing.io.form.Problems;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/** Finds the catalog a case names: the starter, or a file beside or below the case's own. */
final class CatalogChoice {
    private static final String STARTER = "starter";
    private static final String FITS = "try: starter, or a file beside the case such as prices.yaml";

    private final Found named;
    private final @Nullable Path folder;
    private final Problems problems;

    CatalogChoice(Found file, @Nullable Path folder, Problems problems) {
        this.named = file.get("catalog");
        this.folder = folder;
        this.problems = problems;
    }

    Catalog read() {
        String name = named.text();
        if (name == null) {
            return Catalog.NONE;
        }
        if (name.equals(STARTER)) {
            return Catalog.starter();
        }
        Path path = path(name);
        return path == null ? Catalog.NONE : read(name, path);
    }

    private @Nullable Path path(String name) {
        if (folder == null) {
            problems.error(named.at(), name, "no catalog file can be read from here", "try: starter");
            return null;
        }
        try {
            Path path = folder.resolve(name).normalize();
            if (!Path.of(name).isAbsolute() && path.startsWith(folder.normalize()) && Files.isRegularFile(path)) {
                return path;
            }
            problems.error(named.at(), name, "no file beside or below this case", FITS);
        } catch (InvalidPathException e) {
            problems.error(named.at(), name, "not the name of a file", FITS);
        }
        return null;
    }

    private Catalog read(String name, Path path) {
        Problems inside = new Problems(name);
        Catalog catalog = Catalog.NONE;
        try {
            String text = FileText.read(path, inside);
            catalog = text == null ? Catalog.NONE : CatalogFile.read(text, inside);
        } catch (IOException e) {
            problems.error(named.at(), name, "the catalog can't be read", FITS);
        }
        problems.addAll(inside);
        return catalog;
    }
}
