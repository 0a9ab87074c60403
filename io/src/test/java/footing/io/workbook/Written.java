package footing.io.workbook;

import footing.core.answer.Answer;
import footing.core.answer.Assessment;
import footing.core.answer.Options;
import footing.core.answer.Watch;
import footing.core.answer.Workers;
import footing.core.fleet.Case;
import footing.io.answer.AnswerJson;
import footing.io.casefile.CaseFile;
import footing.io.casefile.Reading;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A case, its answer and its workbook, for tests. */
final class Written {
    private final Answer answer;
    private final byte[] bytes;

    private Written(Answer answer, byte[] bytes) {
        this.answer = answer;
        this.bytes = bytes;
    }

    Answer answer() {
        return answer;
    }

    JsonNode json() throws IOException {
        StringWriter to = new StringWriter();
        AnswerJson.write(answer, List.of(), to);
        return JsonMapper.shared().readTree(to.toString());
    }

    static Case read(String text) {
        if (CaseFile.read(text, "case.yaml") instanceof Reading.Accepted accepted) {
            return accepted.stated();
        }
        throw new AssertionError(CaseFile.read(text, "case.yaml").problems().toString());
    }

    static String example(String name) {
        try {
            return Files.readString(Path.of("../cases", name));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    static Answer answer(Case stated, int futures, @Nullable String machine) {
        Options options =
                new Options(OptionalInt.of(futures), 1, Options.USUAL_THRESHOLD, true, Optional.ofNullable(machine));
        return Assessment.answer(stated, options, Workers.one(), Watch.NOBODY);
    }

    static Written of(Case stated, int futures, @Nullable String machine) throws IOException {
        Answer answer = answer(stated, futures, machine);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        if (!CaseWorkbook.write(answer, List.of("a note"), Workers.one(), Watch.NOBODY, bytes)) {
            throw new AssertionError("not written");
        }
        return new Written(answer, bytes.toByteArray());
    }

    XSSFWorkbook open() throws IOException {
        return new XSSFWorkbook(new ByteArrayInputStream(bytes));
    }

    Path saved(Path folder, String name) throws IOException {
        return Files.write(folder.resolve(name), bytes);
    }

    /** The rows of a sheet whose first cell is a text. */
    static List<Row> rows(Sheet sheet, String first) {
        List<Row> rows = new ArrayList<>();
        for (Row row : sheet) {
            Cell cell = row.getCell(0);
            if (cell != null && cell.toString().equals(first)) {
                rows.add(row);
            }
        }
        return rows;
    }

    static double number(Row row, int column) {
        return row.getCell(column).getNumericCellValue();
    }
}
