package footing.io.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import footing.core.answer.MachineAnswer;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

class CaseWorkbookTest {
    private static final int FUTURES = 500;
    private static final double CENT = 0.005;

    /** Against the JSON document of the same answer. */
    private static void agreesToTheCent(Workbook book, Written written) throws IOException {
        JsonNode json = written.json();
        Sheet packages = book.getSheet("Packages");
        double fleet = 0;
        for (MachineAnswer m : written.answer().machines()) {
            JsonNode entries = machine(json, m.id()).get("entries");
            List<Row> rows = Written.rows(packages, m.id());
            assertThat(rows).hasSize(entries.size());
            for (int e = 0; e < rows.size(); e++) {
                agrees(rows.get(e), entries.get(e));
            }
            int choice = m.entries().indexOf(m.choice());
            List<Row> ofFleet = Written.rows(book.getSheet("Fleet"), m.id());
            assertThat(Written.number(ofFleet.get(0), 6))
                    .isCloseTo(at(entries.get(choice), "saving", "mean"), within(CENT));
            fleet += at(entries.get(choice), "startCost");
        }
        yearsAgree(book.getSheet("By year"), written, json);
        Row all = Written.rows(book.getSheet("Fleet"), "all machines").get(0);
        assertThat(Written.number(all, 5)).isCloseTo(fleet, within(CENT));
        assertThat(Written.number(all, 6)).isCloseTo(at(json, "fleet", "saving", "mean"), within(CENT));
    }

    private static JsonNode machine(JsonNode json, String id) {
        for (JsonNode m : json.get("machines")) {
            if (m.get("id").asString().equals(id)) {
                return m;
            }
        }
        throw new AssertionError("no machine " + id);
    }

    private static double at(JsonNode node, String... path) {
        JsonNode there = node;
        for (String key : path) {
            there = there.get(key);
        }
        return there.asDouble();
    }

    private static void yearsAgree(Sheet byYear, Written written, JsonNode json) {
        String[] parts = {"purchase", "renewals", "repairs", "crewTime", "lostWork", "upkeep", "tradeIn"};
        for (MachineAnswer m : written.answer().machines()) {
            Iterator<Row> rows = Written.rows(byYear, m.id()).iterator();
            for (JsonNode entry : machine(json, m.id()).get("entries")) {
                for (JsonNode year : entry.get("yearly")) {
                    Row row = rows.next();
                    assertThat(row.getCell(1).getStringCellValue())
                            .isEqualTo(entry.get("id").asString());
                    assertThat(Written.number(row, 3)).isEqualTo(at(year, "year"));
                    double all = 0;
                    for (int i = 0; i < parts.length; i++) {
                        assertThat(Written.number(row, 4 + i))
                                .as(m.id() + " " + entry.get("id") + " " + year)
                                .isCloseTo(at(year, parts[i]), within(CENT));
                        all += (parts[i].equals("tradeIn") ? -1 : 1) * at(year, parts[i]);
                    }
                    assertThat(Written.number(row, 11)).isCloseTo(all, within(CENT));
                    assertThat(Written.number(row, 12)).isCloseTo(all, within(CENT));
                }
            }
            assertThat(rows).isExhausted();
        }
    }

    private static void agrees(Row row, JsonNode entry) {
        String[][] places = {
            {"startCost"},
            {},
            {"parts", "purchase"},
            {"parts", "renewals"},
            {"parts", "repairs"},
            {"parts", "crewTime"},
            {"parts", "lostWork"},
            {"parts", "upkeep"},
            {"parts", "tradeIn"},
            {"cost", "mean"},
            {"saving", "mean"}
        };
        for (int i = 0; i < places.length; i++) {
            if (places[i].length > 0) {
                assertThat(Written.number(row, 3 + i)).isCloseTo(at(entry, places[i]), within(CENT));
            }
        }
    }

    private static void hasNoErrors(Workbook book) {
        for (Sheet sheet : book) {
            for (Row row : sheet) {
                for (Cell cell : row) {
                    boolean error = cell.getCellType() == CellType.ERROR
                            || (cell.getCellType() == CellType.FORMULA
                                    && cell.getCachedFormulaResultType() == CellType.ERROR);
                    assertThat(error)
                            .as(sheet.getSheetName() + " " + cell.getAddress() + " "
                                    + (error ? FormulaError.forInt(cell.getErrorCellValue()) : ""))
                            .isFalse();
                }
            }
        }
    }

    @Test
    void workbook_evaluatedByPoi_agreesWithTheAnswerToTheCent() throws IOException {
        Written written = Written.of(Written.read(Written.example("quillbrook.yaml")), FUTURES, null);
        try (XSSFWorkbook book = written.open()) {
            agreesToTheCent(book, written);
        }
    }

    @Test
    void workbook_withLoanAndTax_agreesInLibreOfficeAndPoi(@TempDir Path folder) throws Exception {
        String taxed = Written.example("quillbrook.yaml")
                .replace(
                        "loan: {rate: 6.9 %, months: 36}",
                        "loan: {rate: 6.9 %, months: 36, down: 10 %, for: all}\n"
                                + "  tax: {rate: 27 %, schedule: [20 %, 32 %, 19.2 %, 11.52 %, 11.52 %, 5.76 %]}");
        Written written = Written.of(Written.read(taxed), FUTURES, null);
        try (XSSFWorkbook poi = written.open();
                XSSFWorkbook office = LibreOffice.recalculated(
                        written.saved(folder, "taxed.xlsx"), Files.createDirectory(folder.resolve("done")))) {
            agreesToTheCent(poi, written);
            agreesToTheCent(office, written);
            hasNoErrors(office);
            for (MachineAnswer m : written.answer().machines()) {
                Row row = Written.rows(office.getSheet("Change me"), m.id()).get(0);
                double mean = Written.number(row, 4);
                assertThat(Written.number(row, 3)).isCloseTo(mean, within(Math.max(40, 0.05 * Math.abs(mean))));
            }
        }
    }

    @Test
    void workbook_textsLikeFormulas_stayTexts() throws IOException {
        String hostile = Written.example("one-machine.yaml")
                .replace("title: One mower, one owner", "title: '=HYPERLINK(\"x\")'\nnote: '@SUM(1)'")
                .replace("plug on site", "'=1+1'")
                .replace("{id: mower,", "{id: m1, kind: '+cmd|x!A1',");
        Written written = Written.of(Written.read(hostile), 50, null);
        try (XSSFWorkbook book = written.open()) {
            Cell title = book.getSheet("Fleet").getRow(0).getCell(0);
            assertThat(title.getCellType()).isEqualTo(CellType.STRING);
            assertThat(title.getStringCellValue()).isEqualTo("=HYPERLINK(\"x\")");
            assertThat(title.getCellStyle().getQuotePrefixed()).isTrue();
            for (Sheet sheet : book) {
                for (Row row : sheet) {
                    for (Cell cell : row) {
                        assertThat(cell.getCellType() == CellType.FORMULA
                                        && cell.getCellFormula().matches(".*(HYPERLINK|cmd|@SUM|\\[).*"))
                                .isFalse();
                    }
                }
            }
        }
    }

    @Test
    void workbook_oddNamesAndOnePackage_isSensible(@TempDir Path folder) throws Exception {
        String odd = Written.example("one-machine.yaml")
                .replace(
                        "title: One mower, one owner",
                        "title: \u0413\u0430\u0437\u043E\u043D\u044B \u8349\u576A " + "x".repeat(50))
                .replace("{id: mower,", "{id: m1, consider: [on-air],")
                .replace("crewOutput: 100 %,", "crewOutput: 100 %, kind: \u8349\u576A \u0436,");
        Written written = Written.of(Written.read(odd), 50, null);
        try (XSSFWorkbook book = LibreOffice.recalculated(
                written.saved(folder, "odd.xlsx"), Files.createDirectory(folder.resolve("done")))) {
            assertThat(book.getSheet("Fleet").getRow(0).getCell(0).getStringCellValue())
                    .startsWith("\u0413\u0430\u0437\u043E\u043D\u044B \u8349\u576A");
            agreesToTheCent(book, written);
            hasNoErrors(book);
            assertThat(book.getSheet("Change me").getRow(3).getCell(0).getStringCellValue())
                    .startsWith("No machine here has another package");
        }
    }

    @Test
    void workbook_largeFleet_tellsTwoPackagesOfEachAndSaysSo() throws IOException {
        String text = Written.example("one-machine.yaml");
        String line = text.substring(text.indexOf("  - {id: mower"));
        StringBuilder fleet = new StringBuilder(text);
        for (int i = 1; i <= CaseWorkbook.SMALL_FLEET; i++) {
            fleet.append(line.replace("id: mower", "id: mower" + i).replace("crewOutput: 100 %", "crewOutput: 1 %"));
        }
        Written written = Written.of(Written.read(fleet.toString()), 50, null);
        try (XSSFWorkbook book = written.open()) {
            Sheet packages = book.getSheet("Packages");
            assertThat(packages.getRow(2).getCell(0).getStringCellValue()).contains("--machine ID");
            for (MachineAnswer m : written.answer().machines()) {
                assertThat(Written.rows(packages, m.id())).hasSize(m.recommended() == 0 ? 1 : 2);
            }
            assertThat(Written.number(
                            Written.rows(book.getSheet("Fleet"), "all machines").get(0), 6))
                    .isCloseTo(written.answer().fleet().saving().mean(), within(CENT));
        }
    }

    @Test
    void workbook_everySheet_isFrozenNamedAndPrintsOnePageWide() throws IOException {
        Written written = Written.of(Written.read(Written.example("one-machine.yaml")), 50, null);
        try (XSSFWorkbook book = written.open()) {
            for (Sheet sheet : book) {
                assertThat(sheet.getPaneInformation().isFreezePane()).isTrue();
                assertThat(sheet.getRepeatingRows()).isNotNull();
                assertThat(sheet.getPrintSetup().getFitWidth()).isEqualTo((short) 1);
                assertThat(sheet.getPrintSetup().getLandscape()).isTrue();
            }
            for (String name : List.of("AsOf", "DiscountRate", "Inflation", "TaxRate", "Growth", "LoanRate")) {
                assertThat(book.getName(name)).isNotNull();
            }
        }
    }

    /** On paper the engines are a page each, and no line of the first sheet is longer than a page is wide. */
    @Test
    void workbook_onPaper_leavesTheEnginesStepsOutAndBreaksLongLines() throws IOException {
        String wordy = Written.example("one-machine.yaml")
                .replace(
                        "title: One mower, one owner",
                        "title: One mower, one owner\nnote: " + "wheels and ".repeat(60));
        Written written = Written.of(Written.read(wordy), 50, null);
        try (XSSFWorkbook book = written.open()) {
            int engines = 0;
            for (int i = 0; i < book.getNumberOfSheets(); i++) {
                boolean engine = book.getSheetName(i).endsWith(" engine");
                String area = book.getPrintArea(i);
                assertThat(area != null).as(book.getSheetName(i)).isEqualTo(engine);
                if (engine) {
                    AreaReference printed = new AreaReference(area, SpreadsheetVersion.EXCEL2007);
                    assertThat(printed.getLastCell().getRow())
                            .isLessThan(25)
                            .isLessThan(book.getSheetAt(i).getLastRowNum());
                    engines++;
                }
            }
            assertThat(engines).isEqualTo(1);
            for (Row row : book.getSheet("Read me")) {
                assertThat(row.getCell(0).getStringCellValue()).hasSizeLessThanOrEqualTo(104);
            }
        }
    }
}
