package footing.io.casefile;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A case file with a few lines changed, and what its reading must say. Kept in {@code edits.txt}
 * and, for what can't be built, {@code geometry.txt}: a name and who can
 * see the fault (both reader and schema; 'reader' alone; 'yaml' for what is no tree of values at all), lines of the
 * base file to replace (-), lines put in (+), and the printed problems (=).
 */
record BrokenCase(String name, String seenBy, String text, String expected) {
    static final String FILE = "case.yaml";

    static String base() {
        return resource("base.yaml");
    }

    static List<BrokenCase> all() {
        List<BrokenCase> all = new ArrayList<>();
        String edits = resource("edits.txt") + resource("geometry.txt");
        for (String block : edits.split("(?m)^## ", -1)) {
            if (!block.isBlank()) {
                all.add(parse(block.lines().toList()));
            }
        }
        return all;
    }

    private static BrokenCase parse(List<String> lines) {
        String[] head = lines.get(0).split(" ", -1);
        String text = base();
        StringBuilder expected = new StringBuilder();
        StringBuilder out = new StringBuilder();
        StringBuilder in = new StringBuilder();
        for (String line : lines.subList(1, lines.size())) {
            String rest = line.substring(1);
            if (line.startsWith("-")) {
                text = in.length() > 0 ? replace(head[0], text, out, in) : text;
                out.append(rest).append('\n');
            } else if (line.startsWith("+")) {
                in.append(rest.replace("\\u0007", "\u0007")).append('\n');
            } else {
                expected.append(rest).append('\n');
            }
        }
        text = replace(head[0], text, out, in);
        return new BrokenCase(head[0], head.length > 1 ? head[1] : "both", text, expected.toString());
    }

    private static String replace(String name, String text, StringBuilder out, StringBuilder in) {
        int at = ("\n" + text).indexOf("\n" + out);
        if (at < 0 || ("\n" + text).indexOf("\n" + out, at + 1) >= 0) {
            throw new IllegalStateException(name + ": these lines stand not once in the base file:\n" + out);
        }
        String changed = text.substring(0, at) + in + text.substring(at + out.length());
        out.setLength(0);
        in.setLength(0);
        return changed;
    }

    static String resource(String name) {
        try (InputStream in = Objects.requireNonNull(BrokenCase.class.getResourceAsStream(name), name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public String toString() {
        return name;
    }
}
