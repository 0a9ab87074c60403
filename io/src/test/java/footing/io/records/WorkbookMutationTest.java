package footing.io.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;

/** Whatever happens to a workbook: it is read with every row accounted for, or refused as a whole; nothing throws. */
class WorkbookMutationTest {
    private static final int OF_EACH_KIND = 1_000;
    private static final long SEED = 20_270_303;
    private static final String SHEET = "xl/worksheets/sheet1.xml";
    private static final String[] MARKUP = {
        "<",
        ">",
        "/>",
        "</c>",
        "<c>",
        "<row r=\"1\">",
        "</row>",
        "<v>",
        "&",
        "&#0;",
        "&lol;",
        "r=\"XFD7\"",
        "r=\"-1\"",
        "t=\"s\"",
        "t=\"e\"",
        "t=\"b\"",
        "s=\"99999\"",
        "<!DOCTYPE x [<!ENTITY a \"b\">]>",
        "1e999",
        "\u0000"
    };

    private final RandomGenerator random =
            RandomGeneratorFactory.of("L64X128MixRandom").create(SEED);

    private static void check(byte[] bytes, String what) {
        Records records = RecordsFile.read("log.xlsx", bytes, Map.of());
        assertThat(records.log().rows() + records.refused().size()).as(what).isEqualTo(records.rows());
        assertThat(records.unread().isEmpty() || records.rows() == 0).as(what).isTrue();
    }

    /** Some rows of the demo's log, numbers as numbers. */
    private static byte[] workbook() throws IOException {
        try (XSSFWorkbook book = new XSSFWorkbook()) {
            XSSFSheet sheet = book.createSheet("log");
            List<String> lines = Files.readAllLines(DemoRecords.FILE).subList(0, 25);
            for (int i = 0; i < lines.size(); i++) {
                XSSFRow row = sheet.createRow(i);
                String[] cells = lines.get(i).split(",", -1);
                for (int c = 0; c < cells.length; c++) {
                    if (cells[c].matches("[0-9]+")) {
                        row.createCell(c).setCellValue(Double.parseDouble(cells[c]));
                    } else if (!cells[c].isEmpty()) {
                        row.createCell(c).setCellValue(cells[c]);
                    }
                }
            }
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            book.write(out);
            return out.toByteArray();
        }
    }

    private static Map<String, byte[]> unzipped(byte[] bytes) throws IOException {
        Map<String, byte[]> parts = new LinkedHashMap<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(bytes))) {
            for (ZipEntry e = zip.getNextEntry(); e != null; e = zip.getNextEntry()) {
                parts.put(e.getName(), zip.readAllBytes());
            }
        }
        return parts;
    }

    private static byte[] zipped(Map<String, byte[]> parts) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Map.Entry<String, byte[]> part : parts.entrySet()) {
                zip.putNextEntry(new ZipEntry(part.getKey()));
                zip.write(part.getValue());
            }
        }
        return out.toByteArray();
    }

    /** The workbook with another first sheet. */
    private static byte[] with(String sheet) throws IOException {
        Map<String, byte[]> parts = unzipped(workbook());
        parts.put(SHEET, sheet.getBytes(StandardCharsets.UTF_8));
        return zipped(parts);
    }

    @Test
    void read_workbookAsItIs_findsItsRows() throws IOException {
        Records records = RecordsFile.read("log.xlsx", workbook(), Map.of());
        assertThat(records.unread()).isEmpty();
        assertThat(records.rows()).isEqualTo(24);
        assertThat(records.refused()).hasSize(1);
    }

    @Test
    void read_bytesOfTheFileChanged_neverThrows() throws IOException {
        byte[] whole = workbook();
        for (int i = 0; i < OF_EACH_KIND; i++) {
            byte[] changed = whole.clone();
            for (int n = random.nextInt(1, 6); n > 0; n--) {
                changed[4 + random.nextInt(changed.length - 4)] = (byte) random.nextInt(256);
            }
            int length = random.nextInt(4) == 0 ? random.nextInt(5, changed.length) : changed.length;
            check(java.util.Arrays.copyOf(changed, length), "file " + i + " of seed " + SEED);
        }
    }

    @Test
    void read_markupInsideChanged_neverThrows() throws IOException {
        Map<String, byte[]> whole = unzipped(workbook());
        List<String> names = List.copyOf(whole.keySet());
        for (int i = 0; i < OF_EACH_KIND; i++) {
            Map<String, byte[]> parts = new LinkedHashMap<>(whole);
            // Half of the time the sheet itself.
            String name = random.nextBoolean() ? SHEET : names.get(random.nextInt(names.size()));
            StringBuilder text = new StringBuilder(new String(parts.get(name), StandardCharsets.UTF_8));
            for (int n = random.nextInt(1, 4); n > 0; n--) {
                int at = random.nextInt(text.length());
                text.replace(
                        at, Math.min(at + random.nextInt(12), text.length()), MARKUP[random.nextInt(MARKUP.length)]);
            }
            parts.put(name, text.toString().getBytes(StandardCharsets.UTF_8));
            check(zipped(parts), name + " " + i + " of seed " + SEED + ":\n" + text);
        }
    }

    @Test
    void read_cellsChanged_accountsForEveryRow() throws IOException {
        List<String> lines = Files.readAllLines(DemoRecords.FILE).subList(0, 25);
        for (int i = 0; i < OF_EACH_KIND; i++) {
            StringBuilder sheet = new StringBuilder(
                    "<worksheet xmlns=" + "\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><sheetData>");
            for (int row = 0; row < lines.size(); row++) {
                sheet.append("<row r=\"").append(row + 1).append("\">");
                String[] cells = lines.get(row).split(",", -1);
                for (int c = 0; c < cells.length; c++) {
                    boolean spared = row == 0 || random.nextInt(30) > 0;
                    sheet.append(spared ? text(c, row, cells[c]) : changed(row));
                }
                sheet.append("</row>");
            }
            String text = sheet.append("</sheetData></worksheet>").toString();
            Records records = RecordsFile.read("log.xlsx", with(text), Map.of());
            assertThat(records.unread()).as(text).isEmpty();
            assertThat(records.rows()).as(text).isEqualTo(24);
            assertThat(records.log().rows() + records.refused().size()).as(text).isEqualTo(24);
        }
    }

    private static String text(int column, int row, String text) {
        return "<c r=\"" + (char) ('A' + column) + (row + 1) + "\" t=\"inlineStr\"><is><t>" + escaped(text)
                + "</t></is></c>";
    }

    /** A cell of another kind, value or place. */
    private String changed(int row) {
        String nasty = RecordsMutationTest.NASTY[random.nextInt(RecordsMutationTest.NASTY.length)];
        return switch (random.nextInt(6)) {
            case 0 -> "<c t=\"e\"><v>#DIV/0!</v></c>";
            case 1 -> "<c t=\"b\"><v>1</v></c>";
            case 2 -> "<c s=\"0\"><v>" + random.nextDouble(-1e9, 1e9) + "</v></c>";
            case 3 -> text(random.nextInt(26), row, nasty);
            case 4 -> "<c r=\"XFD" + (row + 1) + "\" t=\"inlineStr\"><is><t>far</t></is></c>";
            default -> "<c t=\"inlineStr\"><is><t>" + escaped(nasty) + "</t></is></c>";
        };
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace("\u0000", "");
    }

    /** Three hundred megabytes of nothing in a few hundred kilobytes. */
    @Test
    void read_fileThatUnpacksTooFar_isRefusedUnread() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Map.Entry<String, byte[]> part : unzipped(workbook()).entrySet()) {
                zip.putNextEntry(new ZipEntry(part.getKey()));
                zip.write(part.getValue());
            }
            zip.putNextEntry(new ZipEntry("xl/media/image1.png"));
            write(zip, 300);
        }
        assertThat(out.size()).isLessThan(1_000_000);
        Records records = RecordsFile.read("log.xlsx", out.toByteArray(), Map.of());
        assertThat(records.unread())
                .singleElement()
                .satisfies(p -> assertThat(p.message()).contains("unpacks to more than 200 MB"));
    }

    private static void write(OutputStream out, int megabytes) throws IOException {
        byte[] zeros = new byte[1_000_000];
        for (int i = 0; i < megabytes; i++) {
            out.write(zeros);
        }
    }

    /** A cell at the edge of the sheet in every row, and a size that claims all of it. */
    @Test
    void read_cellsAtTheEdgeOfTheSheet_makeNoEmptyOnes() throws IOException {
        StringBuilder sheet =
                new StringBuilder("<worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\">"
                        + "<dimension ref=\"A1:XFD1048576\"/><sheetData><row r=\"1\">"
                        + text(0, 0, "date") + text(1, 0, "event") + "</row>");
        for (int row = 2; row <= 2_001; row++) {
            sheet.append("<row r=\"")
                    .append(row)
                    .append("\"><c r=\"XFD")
                    .append(row)
                    .append("\"><v>1</v></c></row>");
        }
        byte[] bytes = with(sheet.append("</sheetData></worksheet>").toString());
        Table table = tableOf(bytes);
        assertThat(table.rows())
                .hasSize(2_001)
                .allSatisfy(r -> assertThat(r.cells()).hasSizeLessThan(600));
        assertThat(RecordsFile.read("log.xlsx", bytes, Map.of()).refused()).hasSize(2_000);
    }

    private static Table tableOf(byte[] bytes) {
        try {
            return RecordsFile.table(bytes);
        } catch (Table.Unreadable e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void read_entitiesThatMultiply_areRefused() throws IOException {
        String bomb = "<!DOCTYPE x [<!ENTITY a \"ha\"><!ENTITY b \"&a;&a;&a;&a;\">]><worksheet xmlns="
                + "\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><sheetData><row r=\"1\">"
                + "<c t=\"inlineStr\"><is><t>&b;</t></is></c></row></sheetData></worksheet>";
        assertThat(RecordsFile.read("log.xlsx", with(bomb), Map.of()).unread()).hasSize(1);
    }
}
