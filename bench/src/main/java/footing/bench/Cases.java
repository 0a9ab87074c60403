package footing.bench;

import footing.core.fleet.Case;
import footing.io.casefile.CaseFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;

/** The example cases, from the folder the property {@code footing.cases} names. */
final class Cases {
    private Cases() {}

    static Case read(String name) {
        Path file = Path.of(System.getProperty("footing.cases", "cases"), name + ".yaml");
        try {
            return CaseFile.read(file)
                    .found()
                    .orElseThrow(() -> new IllegalStateException(file + " is not a valid case"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
