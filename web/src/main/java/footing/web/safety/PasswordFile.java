package footing.web.safety;

import java.io.IOException;
import java.nio.CharBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;
import org.springframework.security.crypto.bcrypt.BCryptPasswordEncoder;
import org.springframework.security.crypto.password.PasswordEncoder;

/** The hash of the page's password, in a file of the data folder. The password itself is kept nowhere. */
public final class PasswordFile {
    public static final int SHORTEST = 12;

    /** What bcrypt takes in, in bytes of UTF-8. */
    public static final int LONGEST = 72;

    /** 2^11 rounds: about a tenth of a second a try. */
    private static final int STRENGTH = 11;

    private static final String NAME = "password.bcrypt";

    private final Path folder;
    private final Path file;

    public PasswordFile(Path dataFolder) {
        folder = dataFolder;
        file = dataFolder.resolve(NAME);
    }

    static PasswordEncoder encoder() {
        return new BCryptPasswordEncoder(STRENGTH);
    }

    /** What is wrong with a password to be, and what would fit; empty if nothing is. */
    public static Optional<String> fault(char[] password) {
        int bytes = StandardCharsets.UTF_8.encode(CharBuffer.wrap(password)).remaining();
        if (password.length < SHORTEST) {
            return Optional.of("too short; at least " + SHORTEST + " characters would fit");
        }
        return bytes > LONGEST
                ? Optional.of("too long; at most " + LONGEST + " characters would fit")
                : Optional.empty();
    }

    public boolean isSet() {
        return Files.exists(file);
    }

    /** The hash; empty if no password is set. */
    Optional<String> hash() throws IOException {
        return isSet() ? Optional.of(Files.readString(file).strip()) : Optional.empty();
    }

    /**
     * Keeps the hash of a password, whole or not at all, and readable by its owner alone.
     *
     * @throws IllegalArgumentException if it has a {@link #fault}
     */
    public void set(char[] password) throws IOException {
        fault(password).ifPresent(f -> {
            throw new IllegalArgumentException(f);
        });
        OwnFolder.make(folder);
        Path aside = file.resolveSibling(NAME + ".aside");
        Files.deleteIfExists(aside);
        OwnFolder.newFile(aside);
        Files.writeString(aside, encoder().encode(CharBuffer.wrap(password)) + "\n");
        Files.move(aside, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }
}
