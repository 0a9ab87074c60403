package footing.io.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import footing.core.answer.Answer;
import footing.io.words.Advice;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TablesTest {
    private static List<CsvRecord> read(Path file) throws IOException {
        try (CsvReader<CsvRecord> reader = CsvReader.builder().ofCsvRecord(file)) {
            return reader.stream().toList();
        }
    }

    @Test
    void write_example_isAFileForEveryTable(@TempDir Path folder) throws IOException {
        Answer answer = Printed.answer(Printed.example("quillbrook.yaml"), 200, false);
        List<String> names = Tables.write(answer, folder);
        assertThat(names)
                .contains(
                        "machines.csv",
                        "choices.csv",
                        "ladder.csv",
                        "where-it-goes.csv",
                        "by-year.csv",
                        "what-moves-it.csv",
                        "find-out.csv",
                        "numbers.csv",
                        "shared-numbers.csv",
                        "order-now.csv",
                        "next-sets.csv",
                        "spares.csv",
                        "after-list.csv");
        for (String name : names) {
            List<CsvRecord> rows = read(folder.resolve(name));
            int cells = rows.get(0).getFieldCount();
            assertThat(rows).as(name).allMatch(r -> r.getFieldCount() == cells);
        }
    }

    @Test
    void write_choices_holdUnroundedNumbers(@TempDir Path folder) throws IOException {
        Answer answer = Printed.answer(Printed.example("quillbrook.yaml"), 200, true);
        Tables.write(answer, folder);
        List<CsvRecord> rows = read(folder.resolve("choices.csv"));
        int entries =
                answer.machines().stream().mapToInt(m -> m.entries().size()).sum();
        assertThat(rows).hasSize(1 + entries);
        CsvRecord first = rows.get(1);
        assertThat(first.getField(0)).isEqualTo("E1");
        double cheapest = answer.machine("E1").entries().stream()
                .mapToDouble(e -> e.cost().mean())
                .min()
                .orElseThrow();
        assertThat(Double.parseDouble(first.getField(3)))
                .isCloseTo(cheapest, org.assertj.core.api.Assertions.within(1e-6));
        assertThat(rows).hasSizeGreaterThan(Advice.all(answer).size());
    }

    @Test
    void write_textsThatLookLikeFormulas_staysText(@TempDir Path folder) throws IOException {
        String text = Printed.example("one-machine.yaml")
                .replace("name: plug on site", "name: '=HYPERLINK(\"x\")'")
                .replace("crew: me,", "kind: '@SUM(1)', crew: me,");
        Tables.write(Printed.answer(text, 100, false), folder);
        int cells = 0;
        try (var files = Files.list(folder)) {
            for (Path file : files.toList()) {
                for (CsvRecord row : read(file)) {
                    for (String cell : row.getFields()) {
                        assertThat(cell.isEmpty() || "=+@\t\r".indexOf(cell.charAt(0)) < 0)
                                .as(cell)
                                .isTrue();
                        cells++;
                    }
                }
            }
        }
        assertThat(cells).isGreaterThan(300);
    }
}
