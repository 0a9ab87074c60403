package footing.web.store;

import java.nio.file.Path;

/** The one file all that is kept lives in, and how it is opened. */
public final class DataFile {
    /**
     * What is acknowledged is on the disk. Every transaction begins by taking the right to write, and waits for it
     * this many milliseconds at most; a single statement that reads never waits.
     */
    private static final String MANNER =
            "?journal_mode=WAL&synchronous=FULL&foreign_keys=true&busy_timeout=20000&transaction_mode=IMMEDIATE";

    private DataFile() {}

    /** For JDBC, in a data folder. */
    public static String url(Path folder) {
        return "jdbc:sqlite:" + folder.resolve("footing.db") + MANNER;
    }
}
