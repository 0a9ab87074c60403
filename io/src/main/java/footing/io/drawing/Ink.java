package footing.io.drawing;

import java.util.Map;

/**
 * The colors of paper, by the names the page's style sheet has for them. Printed in black and white what has to be told
 * apart differs in lightness or pattern: gain is dark and plain, loss light and hatched.
 */
final class Ink {
    private static final Map<String, String> COLORS = Map.ofEntries(
            Map.entry("--paper", "#ffffff"),
            Map.entry("--ink", "#1a1a1a"),
            Map.entry("--soft", "#4d4d4d"),
            Map.entry("--edge", "#777777"),
            Map.entry("--line", "#d9d9d9"),
            Map.entry("--sans", "Liberation Sans"),
            Map.entry("--pattern", "#ffffff"),
            Map.entry("--tone-carried", "#555555"),
            Map.entry("--tone-choice", "#174c3d"),
            Map.entry("--tone-gain", "#174c3d"),
            Map.entry("--tone-loss", "#c47a4e"),
            Map.entry("--tone-quiet", "#b5b5b5"),
            Map.entry("--tone-part-1", "#222222"),
            Map.entry("--tone-part-2", "#2f6690"),
            Map.entry("--tone-part-3", "#c9962c"),
            Map.entry("--tone-part-4", "#8fb8d6"),
            Map.entry("--tone-part-5", "#a85427"),
            Map.entry("--tone-part-6", "#cfcfcf"),
            Map.entry("--tone-part-7", "#2c7a63"));

    private Ink() {}

    static String of(String name) {
        String color = COLORS.get(name);
        if (color == null) {
            throw new IllegalArgumentException("no ink is called " + name);
        }
        return color;
    }

    static Map<String, String> all() {
        return COLORS;
    }
}
