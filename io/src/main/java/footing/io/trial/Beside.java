package footing.io.trial;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * What lies beside a trial file or below it; a name that leads elsewhere names nothing.
 *
 * @param folder null if there is nothing beside it
 */
record Beside(@Nullable Path folder) {
    /** Null if there is no such file. */
    @Nullable
    Path file(String name) {
        if (folder == null) {
            return null;
        }
        try {
            Path path = folder.resolve(name).normalize();
            return path.startsWith(folder.normalize()) && Files.isRegularFile(path) ? path : null;
        } catch (InvalidPathException e) {
            return null;
        }
    }
}
