package footing.io.records;

import footing.core.records.Log;
import footing.io.form.Problem;
import java.util.List;

/**
 * What came of reading a records file.
 *
 * @param log the rows that can be
 * @param refused the rows that can't, in the order of their lines
 * @param rows of the file that hold anything, but the header
 * @param ignored headers of columns nobody reads
 * @param notes what else was left out
 * @param unread why there is nothing at all; empty if the file was read
 */
public record Records(
        String file,
        Log log,
        List<Problem> refused,
        int rows,
        List<String> ignored,
        List<String> notes,
        List<Problem> unread) {
    public Records {
        refused = List.copyOf(refused);
        ignored = List.copyOf(ignored);
        notes = List.copyOf(notes);
        unread = List.copyOf(unread);
    }

    static Records unread(String file, List<Problem> why) {
        return new Records(file, Log.of(List.of()), List.of(), 0, List.of(), List.of(), why);
    }
}
