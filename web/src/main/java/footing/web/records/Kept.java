package footing.web.records;

import java.time.Instant;
import java.util.Map;

/** What is kept of a case's records. */
final class Kept {
    private Kept() {}

    /**
     * A sheet as it came, but for its content.
     *
     * @param mapping its headers by the columns they stand for
     */
    record SheetFile(long id, String name, Map<String, String> mapping, boolean archived, Instant at) {
        SheetFile {
            mapping = Map.copyOf(mapping);
        }
    }

    /** What is to stand in cells of a row instead; no cells leave the row out. */
    record Mended(long id, long sheet, int line, Map<String, String> cells, boolean undone) {
        Mended {
            cells = Map.copyOf(cells);
        }

        boolean leavesOut() {
            return cells.isEmpty();
        }
    }

    /**
     * A row written on the page.
     *
     * @param sentAs made by the sender, once for each row
     */
    record Written(long id, String sentAs, Map<String, String> cells, boolean undone, Instant at) {
        Written {
            cells = Map.copyOf(cells);
        }
    }
}
