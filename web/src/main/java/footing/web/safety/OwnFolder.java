package footing.web.safety;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;

/** Makes folders and files that their owner alone may read, where the system knows such rights. */
public final class OwnFolder {
    private OwnFolder() {}

    /** Makes a folder unless it is there; one that is there keeps its rights. */
    public static Path make(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            Files.createDirectories(folder, rights(folder, "rwx------"));
        }
        return folder;
    }

    static void newFile(Path file) throws IOException {
        Files.createFile(file, rights(file, "rw-------"));
    }

    private static FileAttribute<?>[] rights(Path at, String rights) {
        boolean known = at.getFileSystem().supportedFileAttributeViews().contains("posix");
        return known
                ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(rights))}
                : new FileAttribute<?>[0];
    }
}
