package footing.io.photo;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** Takes a photo's file into memory, or as much of it as tells that it is too large. */
public final class PhotoBytes {
    private PhotoBytes() {}

    /**
     * Reads a file.
     *
     * @throws IOException if it can't be read
     */
    public static byte[] of(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return in.readNBytes(PictureFile.MOST_BYTES + 1);
        }
    }
}
