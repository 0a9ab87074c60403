package footing.core.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/** The data files beside the tests: one named set a line, its cells divided by tabs. */
final class DataSet {
    private DataSet() {}

    static String[] row(String file, String id) {
        try (InputStream in = Objects.requireNonNull(DataSet.class.getResourceAsStream(file), file)) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return text.lines()
                    .map(line -> line.split("\t", -1))
                    .filter(cells -> cells[0].equals(id))
                    .findFirst()
                    .orElseThrow(() -> new AssertionError("no " + id + " in " + file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static double[] numbers(String text) {
        return Arrays.stream(text.trim().split(" ", -1))
                .mapToDouble(Double::parseDouble)
                .toArray();
    }

    /** Lives written as {@code [from:]to[*][xN]}. */
    static List<Life> lives(String id) {
        List<Life> lives = new ArrayList<>();
        for (String word : row("lives.tsv", id)[1].split(" ", -1)) {
            String[] times = word.split("x", -1);
            String age = times[0].replace("*", "");
            String[] ends = age.split(":", -1);
            double entry = ends.length > 1 ? Double.parseDouble(ends[0]) : 0;
            double exit = Double.parseDouble(ends[ends.length - 1]);
            int count = times.length > 1 ? Integer.parseInt(times[1]) : 1;
            for (int i = 0; i < count; i++) {
                lives.add(new Life(entry, exit, word.contains("*")));
            }
        }
        assertThat(lives).isNotEmpty();
        return lives;
    }

    /** Systems written as {@code ages|end}, divided by semicolons. */
    static List<PowerLaw.Window> windows(String id) {
        return Arrays.stream(row("repairs.tsv", id)[1].split(";", -1))
                .map(system -> {
                    String[] parts = system.split("\\|", -1);
                    List<Double> ages = parts[0].isBlank()
                            ? List.of()
                            : Arrays.stream(numbers(parts[0])).boxed().toList();
                    return new PowerLaw.Window(0, Double.parseDouble(parts[1]), ages);
                })
                .toList();
    }

    static Line line(String id) {
        String[] row = row("lines.tsv", id);
        return Line.of(numbers(row[1]), numbers(row[2]));
    }
}
