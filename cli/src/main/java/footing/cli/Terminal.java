package footing.cli;

import footing.cli.text.Letters;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;

/**
 * What the program finds around itself.
 *
 * @param letters what the terminal can show
 * @param watched true if somebody may be looking at standard error
 * @param in standard input
 * @param folder where files are written
 * @param stop asked whether to stop with what is known
 */
record Terminal(Letters letters, boolean watched, InputStream in, Path folder, Stop stop) {
    private static final Path STANDARD_ERROR = Path.of("/proc/self/fd/2");

    static Terminal here(Stop stop) {
        return new Terminal(letters(System.getenv()), isWatched(), System.in, Path.of(""), stop);
    }

    /** By the first of the settings that counts, as POSIX has it. */
    static Letters letters(Map<String, String> environment) {
        for (String name : new String[] {"LC_ALL", "LC_CTYPE", "LANG"}) {
            String value = environment.getOrDefault(name, "");
            if (!value.isEmpty()) {
                String lower = value.toLowerCase(Locale.ROOT);
                return lower.contains("utf-8") || lower.contains("utf8") ? Letters.UTF8 : Letters.ASCII;
            }
        }
        return Letters.ASCII;
    }

    private static boolean isWatched() {
        try {
            String target = Files.readSymbolicLink(STANDARD_ERROR).toString();
            return target.startsWith("/dev/pts") || target.startsWith("/dev/tty") || target.equals("/dev/console");
        } catch (IOException | UnsupportedOperationException e) {
            return false;
        }
    }
}
