package footing.io.trial;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import footing.core.signal.Log;
import footing.io.form.At;
import footing.io.form.Problems;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Reads the log of an instrument: a time and one value or three a line, with or without a heading. Reads as it comes and
 * keeps numbers alone, up to a bound, so that no file is too large for the memory.
 */
final class LogFile {
    private static final int MOST_PREAMBLE = 30;
    private static final int MOST_FAULTS = 5;
    private static final int LONGEST_LINE = 1 << 16;

    private final int values;
    private final Problems problems;
    private final Samples samples;
    private @Nullable LogHeading heading;
    private List<String> above = List.of();
    private long preamble;
    private int faults;

    /** For a log of one value (a force) or of three (an acceleration). */
    LogFile(int values, Problems problems) {
        this.values = values;
        this.problems = problems;
        samples = new Samples(values);
    }

    /**
     * A log as read.
     *
     * @param unit as the heading has it; null if it has none
     */
    record Read(Log log, @Nullable String unit) {}

    /** The log; null if there is none, with what is wrong reported. */
    @Nullable
    Read read(Reader from) throws IOException {
        BufferedReader reader = new BufferedReader(from, LONGEST_LINE);
        char separator = separator(reader);
        try (CsvReader<CsvRecord> csv = CsvReader.builder()
                .fieldSeparator(separator)
                .allowExtraFields(true)
                .allowMissingFields(true)
                .allowExtraCharsAfterClosingQuote(true)
                .maxBufferSize(LONGEST_LINE)
                .ofCsvRecord(reader)) {
            for (CsvRecord row : csv) {
                if (!take(row, separator != ',')) {
                    return null;
                }
            }
        } catch (CsvParseException | UncheckedIOException e) {
            problems.error(At.TOP, "", "not a log that can be read", "export it as comma-separated values");
            return null;
        }
        return finished();
    }

    /** The heading may hold commas in a unit or a name, so the first lines vote together. */
    private static char separator(BufferedReader reader) throws IOException {
        reader.mark(LONGEST_LINE);
        char[] start = new char[LONGEST_LINE / 2];
        int n = Math.max(0, reader.read(start));
        reader.reset();
        String text = new String(start, 0, n);
        long semicolons = text.chars().filter(c -> c == ';').count();
        long tabs = text.chars().filter(c -> c == '\t').count();
        long lines = 1 + text.chars().filter(c -> c == '\n').count();
        return semicolons >= lines ? ';' : tabs >= lines ? '\t' : ',';
    }

    /** False if reading can't go on. */
    private boolean take(CsvRecord row, boolean commas) {
        LogHeading columns = heading;
        if (columns == null) {
            columns = LogHeading.of(above, values);
            if (columns.numbers(row.getFields(), commas) == null) {
                above = row.getFields();
                return ++preamble <= MOST_PREAMBLE || refuse(row, "no line of numbers so far", columns.due());
            }
            heading = columns;
        }
        double[] numbers = columns.numbers(row.getFields(), commas);
        if (numbers == null) {
            return fault(row, "a time and " + (values == 1 ? "a value are" : "three values are") + " due");
        }
        if (samples.size() >= Log.MOST_SAMPLES) {
            return refuse(row, "longer than " + Log.MOST_SAMPLES + " samples", "cut the log to the run");
        }
        return samples.add(numbers) || fault(row, "the time runs back here");
    }

    private boolean fault(CsvRecord row, String message) {
        problems.error(at(row), String.join(",", row.getFields()), message, "take the line out or export the log anew");
        return ++faults < MOST_FAULTS;
    }

    private boolean refuse(CsvRecord row, String message, String advice) {
        problems.error(at(row), "", message, advice);
        return false;
    }

    private static At at(CsvRecord row) {
        return new At((int) Math.min(Integer.MAX_VALUE, row.getStartingLineNumber()), "");
    }

    private @Nullable Read finished() {
        if (faults > 0) {
            return null;
        }
        if (heading == null || samples.size() < 2) {
            problems.error(
                    At.TOP,
                    "",
                    "no samples in it",
                    LogHeading.of(List.of(), values).due());
            return null;
        }
        return new Read(samples.log(heading), heading.unit());
    }

    /** Samples as they come, in arrays that grow. */
    private static final class Samples {
        private double[][] columns;
        private int size;

        Samples(int values) {
            columns = new double[values + 1][1024];
        }

        int size() {
            return size;
        }

        /** False if the time runs back. A second sample of the same time is left out, as coarse clocks make them. */
        boolean add(double[] numbers) {
            if (size > 0 && numbers[0] < columns[0][size - 1]) {
                return false;
            }
            if (size > 0 && numbers[0] == columns[0][size - 1]) {
                return true;
            }
            if (size == columns[0].length) {
                columns = Arrays.stream(columns)
                        .map(c -> Arrays.copyOf(c, 2 * size))
                        .toArray(double[][]::new);
            }
            for (int i = 0; i < columns.length; i++) {
                columns[i][size] = numbers[i];
            }
            size++;
            return true;
        }

        Log log(LogHeading heading) {
            List<double[]> channels = new ArrayList<>();
            for (int i = 1; i < columns.length; i++) {
                channels.add(Arrays.copyOf(columns[i], size));
            }
            double first = columns[0][0];
            double[] times = new double[size];
            double factor = heading.secondsOf((columns[0][size - 1] - first) / (size - 1));
            Arrays.setAll(times, i -> (columns[0][i] - first) * factor);
            return new Log(times, channels.toArray(double[][]::new));
        }
    }
}
