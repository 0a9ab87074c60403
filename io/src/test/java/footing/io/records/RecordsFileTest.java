package footing.io.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import footing.core.records.Entry;
import footing.core.records.Event;
import footing.core.records.Spot;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sheets as shops keep them. */
class RecordsFileTest {
    private static final String BEGIN = "date,machine,event,hours\n2026-04-01,A,begin,300\n";

    private static Records read(String csv) {
        return RecordsFile.read("log.csv", csv.getBytes(StandardCharsets.UTF_8), Map.of());
    }

    private static List<Entry> rows(Records records) {
        assertThat(records.unread()).isEmpty();
        assertThat(records.refused()).isEmpty();
        return records.log().machines().getOrDefault("A", List.of());
    }

    @Test
    void read_otherNamesAndOrder_findsTheColumns() {
        Records records = read("""
                Remarks;Hour meter (h);Unit No.;What;Day;Tread (mm);Wheel;Weather
                new;300;A;start;2026-04-01;;;dry
                ;350;A;tread;2026-05-01;9.5;rear;wet
                """);
        Entry tread = rows(records).get(1);
        assertThat(tread.event()).isEqualTo(Event.TREAD);
        assertThat(tread.spot()).isEqualTo(Spot.DRIVE);
        assertThat(tread.detail().depth().orElseThrow()).isEqualTo(9.5);
        assertThat(records.ignored()).containsExactly("Weather");
    }

    @Test
    void read_mappingFile_winsOverNames(@TempDir Path folder) throws IOException {
        Path sheet = folder.resolve("log.csv");
        Path columns = folder.resolve("columns.yaml");
        Files.writeString(sheet, "Tag,Datum,what,hours,date\nA,2026-04-01,begin,300,x\n");
        Files.writeString(columns, "machine: Tag\ndate: Datum\n");
        assertThat(rows(RecordsFile.read(sheet, columns))).hasSize(1);
        Files.writeString(columns, "mashine: Tag\n");
        assertThat(RecordsFile.read(sheet, columns).unread().get(0).toString()).contains("did you mean \"machine\"?");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            4/13/2026,A,flat,310,,,,    | is no date                    | write 2026-04-13
            4/5/2026,A,flat,310,,,,     | is no date                    | write 2026-04-05 or 2026-05-04
            2026-02-30,A,flat,310,,,,   | is no day of the calendar     | ''
            2026-05-01,A,flatt,310,,,,  | is not known as event         | did you mean 'flat'?
            2026-05-01,,flat,310,,,,    | only a purchase may leave     | ''
            2026-05-01,A,flat,3l0,,,,   | the unit 'l0'                 | write the number alone
            2026-05-01,A,flat,-5,,,,    | must lie between              | ''
            2026-05-01,A,flat,310,,1 day,,   | is no time               | write 35 min or 1.5 h
            2026-05-01,A,tread,310,drive,,9.5, | needs its unit         | write 9.5 mm or 9.5/32 in
            2026-05-01,A,tread,310,,,9.5 mm,   | say drive or caster    | ''
            2026-05-01,A,flat,310,,,,2.5       | whole and at least 1   | ''
            2026-05-01,A,fit,310,drive,,,      | say which was fitted   | ''
            """)
    void read_rowThatCantBe_isListedWithItsMend(String row, String reason, String mend) {
        Records records = read(
                "date,machine,event,hours,position,minutes,depth,quantity\n2026-04-01,A,begin,300,,,,\n" + row + "\n");
        assertThat(records.refused()).singleElement().satisfies(p -> {
            assertThat(p.line()).isEqualTo(3);
            assertThat(p.file()).isEqualTo("log.csv");
            assertThat(p.toString()).contains(reason);
            assertThat(p.advice()).contains(mend);
        });
        assertThat(records.log().rows()).isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource({"35, 35", "35 min, 35", "1.5 h, 90", "1:45, 105"})
    void read_minutes_inTheUnitTheyAreWrittenIn(String text, double minutes) {
        Records records =
                read("date,machine,event,hours,minutes\n2026-04-01,A,begin,300,\n2026-05-01,A,flat,310," + text + "\n");
        assertThat(rows(records).get(1).detail().minutes().orElseThrow()).isCloseTo(minutes, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"9.5 mm, 9.5", "12/32 in, 9.525", "0.375 in, 9.525", "12/32, 9.525"})
    void read_depth_inMillimeters(String text, double depth) {
        Records records =
                read("date,machine,event,hours,position,depth\n2026-04-01,A,begin,300,,\n2026-05-01,A,tread,310,drive,"
                        + text + "\n");
        assertThat(rows(records).get(1).detail().depth().orElseThrow()).isCloseTo(depth, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"4 tires, 2", "2 sets, 2", "4, 2", "1 tire, 0.5"})
    void read_bought_inSets(String text, double sets) {
        Records records = read("date,machine,event,assembly,qty\n2026-04-01,,bought,air," + text + "\n");
        assertThat(records.log().purchases().get(0).detail().quantity().orElseThrow())
                .isEqualTo(sets);
    }

    @ParameterizedTest
    @CsvSource({"about 5, true", "~5, true", "5 or so, true", "5, false"})
    void read_countFromMemory_isKnownAsOne(String text, boolean about) {
        Records records =
                read("date,machine,event,hours,count\n2026-04-01,A,begin,300,\n2026-11-01,A,flat,," + text + "\n");
        Entry.Detail detail = rows(records).get(1).detail();
        assertThat(detail.quantity().orElseThrow()).isEqualTo(5);
        assertThat(detail.about()).isEqualTo(about);
    }

    @Test
    void read_newMeter_isNoStepBackwards() {
        Records records = read(
                "date,machine,event,hours,position\n2026-04-01,A,begin,900,\n2026-05-01,A,fit,0,meter\n2026-06-01,A,end,70,\n");
        assertThat(rows(records)).hasSize(3);
    }

    @Test
    void read_quotesBlankRowsAndOldLetters_areRead() {
        byte[] old = (BEGIN + "\n,,,\n\"2026-05-01\",A,flat,\"310\"\n2026-05-02,A,end,320\n")
                .replace("A", "Mäher")
                .getBytes(Charset.forName("windows-1252"));
        Records records = RecordsFile.read("log.csv", old, Map.of());
        assertThat(records.refused()).isEmpty();
        assertThat(records.rows()).isEqualTo(3);
        assertThat(records.log().machines()).containsOnlyKeys("Mäher");
    }

    @Test
    void read_workbook_takesDateCellsAndNamesOtherSheets() throws IOException {
        Records records = RecordsFile.read("log.xlsx", workbook(false), Map.of());
        List<Entry> rows = rows(records);
        assertThat(rows.get(0).date()).isEqualTo(LocalDate.of(2026, 4, 1));
        assertThat(rows.get(1).date()).isEqualTo(LocalDate.of(2026, 5, 20));
        assertThat(rows.get(1).hours().orElseThrow()).isEqualTo(355.5);
        assertThat(rows.get(1).line()).isEqualTo(4);
        assertThat(records.notes()).singleElement().asString().contains("'plans'");
    }

    @Test
    void read_workbookOf1904_takesTheSameDays() throws IOException {
        assertThat(rows(RecordsFile.read("log.xlsx", workbook(true), Map.of()))
                        .get(1)
                        .date())
                .isEqualTo(LocalDate.of(2026, 5, 20));
    }

    private static byte[] workbook(boolean from1904) throws IOException {
        try (XSSFWorkbook book = new XSSFWorkbook()) {
            if (from1904) {
                book.getCTWorkbook().getWorkbookPr().setDate1904(true);
            }
            CellStyle day = book.createCellStyle();
            day.setDataFormat(book.createDataFormat().getFormat("d/m/yy"));
            XSSFSheet sheet = book.createSheet("log");
            book.createSheet("plans");
            row(sheet, 0, "Date", "Machine", "Event", "Hours");
            row(sheet, 1, "2026-04-01", "A", "begin", "300");
            Row flat = row(sheet, 3, "", "A", "flat", "");
            flat.getCell(0).setCellValue(LocalDate.of(2026, 5, 20));
            flat.getCell(0).setCellStyle(day);
            flat.getCell(3).setCellValue(355.5);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            book.write(out);
            return out.toByteArray();
        }
    }

    private static Row row(XSSFSheet sheet, int at, String... cells) {
        Row row = sheet.createRow(at);
        for (int i = 0; i < cells.length; i++) {
            row.createCell(i).setCellValue(cells[i]);
        }
        return row;
    }

    @Test
    void read_noTable_saysWhy() {
        assertThat(read("").unread().get(0).message()).contains("empty");
        assertThat(read("a,b\n1,2\n").unread().get(0).message()).contains("no column date");
        assertThat(read("day,when,event\n").unread().get(0).message()).contains("both mean date");
        assertThat(RecordsFile.read("log.xlsx", new byte[] {'P', 'K', 3, 4, 0}, Map.of())
                        .unread())
                .hasSize(1);
    }
}
