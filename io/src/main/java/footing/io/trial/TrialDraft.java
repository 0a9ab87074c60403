package footing.io.trial;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import tools.jackson.databind.json.JsonMapper;

/**
 * A trial as it is written down run by run: keys of the format {@value TrialFile#FORMAT} with their values as texts.
 * Nothing is checked here; {@link TrialFile} reads what {@link #yaml} writes and says what is wrong with it.
 *
 * @param top what stands above the two things, without the format; empty values are left out
 * @param a keys of the first thing
 * @param b keys of the second
 * @param heldEqual what was kept the same
 * @param runs keys of each run, in the order in which they were made
 */
public record TrialDraft(
        Map<String, String> top,
        Map<String, String> a,
        Map<String, String> b,
        List<String> heldEqual,
        List<Map<String, String>> runs) {
    /** Read the same with and without quotes, wherever it stands. */
    private static final Pattern PLAIN = Pattern.compile("[A-Za-z0-9](?:[A-Za-z0-9 ./%()-]*[A-Za-z0-9/%()])?");

    private static final Pattern OTHER_VALUES =
            Pattern.compile("(?i)true|false|null|yes|no|on|off|y|n|[-+.0-9]+(?:e[0-9]+)?|0[xo][0-9a-f]+");

    private static final Pattern NUMBER = Pattern.compile("[0-9]{1,9}(?:\\.[0-9]{1,9})?");
    private static final JsonMapper JSON = JsonMapper.builder().build();

    public TrialDraft {
        top = new LinkedHashMap<>(top);
        a = new LinkedHashMap<>(a);
        b = new LinkedHashMap<>(b);
        heldEqual = List.copyOf(heldEqual);
        runs = List.copyOf(runs);
    }

    /** The trial file. */
    public String yaml() {
        StringBuilder text = new StringBuilder();
        line(text, "format", TrialFile.FORMAT);
        top.forEach((key, value) -> line(text, key, value));
        text.append("a: ").append(group(a)).append('\n');
        text.append("b: ").append(group(b)).append('\n');
        if (!heldEqual.isEmpty()) {
            String items = heldEqual.stream().map(TrialDraft::scalar).collect(Collectors.joining(", "));
            text.append("heldEqual: [").append(items).append("]\n");
        }
        text.append(runs.isEmpty() ? "runs: []\n" : "runs:\n");
        runs.forEach(run -> text.append("  - ").append(group(run)).append('\n'));
        return text.toString();
    }

    private static void line(StringBuilder text, String key, String value) {
        if (!value.isEmpty()) {
            text.append(key).append(": ").append(scalar(value)).append('\n');
        }
    }

    private static String group(Map<String, String> keys) {
        return keys.entrySet().stream()
                .filter(e -> !e.getValue().isEmpty())
                .map(e -> e.getKey() + ": " + scalar(e.getValue()))
                .collect(Collectors.joining(", ", "{", "}"));
    }

    /** A string of JSON is one of YAML. */
    private static String scalar(String value) {
        boolean plain = NUMBER.matcher(value).matches()
                || (PLAIN.matcher(value).matches()
                        && !OTHER_VALUES.matcher(value).matches());
        return plain ? value : JSON.writeValueAsString(value);
    }
}
