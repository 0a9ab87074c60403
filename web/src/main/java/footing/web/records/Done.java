package footing.web.records;

import java.util.Map;

/** What the page says was just done. */
final class Done {
    private static final Map<String, String> SAID = Map.ofEntries(
            Map.entry("kept", "The sheet is kept as it came."),
            Map.entry("empty", "Nothing came; choose a file first."),
            Map.entry("columns", "The columns are matched as you said."),
            Map.entry("archived", "The sheet is laid away and counts no more. It can be taken back below."),
            Map.entry("restored", "The sheet counts again."),
            Map.entry("mended", "Mended. The sheet itself stays as it came; the mend can be undone below."),
            Map.entry("out", "The row is left out. That can be undone below."),
            Map.entry("unmended", "The mend is undone."),
            Map.entry("same", "Nothing was to be changed."),
            Map.entry("gone", "That row is no longer there, or was mended already."),
            Map.entry("back", "The entry is taken back and counts no more."),
            Map.entry("again", "The entry counts again."),
            Map.entry(
                    "accepted",
                    "The case now uses what was learned. Undo and history are on its pages, as for any change."));

    private Done() {}

    static String said(String done) {
        return SAID.getOrDefault(done, "");
    }
}
