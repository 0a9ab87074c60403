package footing.core.money;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;

/** A line of a reference data file: what function of which inputs gives what, within what, and who says so. */
public record ReferenceValue(
        String id, String function, List<String> inputs, double expected, double tolerance, String source) {

    /** All lines of a file beside a class, but comments and the heading. */
    public static Stream<ReferenceValue> read(Class<?> owner, String file) {
        try (InputStream in = Objects.requireNonNull(owner.getResourceAsStream(file), file)) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return text
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .skip(1)
                    .map(ReferenceValue::parse)
                    .toList()
                    .stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static ReferenceValue parse(String line) {
        String[] cells = line.split("\t");
        assertThat(cells).as(line).hasSize(6).noneMatch(String::isBlank);
        return new ReferenceValue(
                cells[0],
                cells[1],
                List.of(cells[2].split(" ")),
                Double.parseDouble(cells[3]),
                Double.parseDouble(cells[4]),
                cells[5]);
    }

    public double number(int i) {
        return Double.parseDouble(inputs.get(i));
    }

    public int whole(int i) {
        return Integer.parseInt(inputs.get(i));
    }

    /** Inputs from one on, as numbers. */
    public double[] from(int first) {
        return inputs.stream().skip(first).mapToDouble(Double::parseDouble).toArray();
    }

    PaymentTime time(int i) {
        return whole(i) == 0 ? PaymentTime.END : PaymentTime.BEGINNING;
    }

    public void check(double actual) {
        assertThat(actual).as("%s: %s", id, source).isCloseTo(expected, Offset.offset(tolerance));
    }

    @Override
    public String toString() {
        return id + " " + function;
    }
}
