package footing.bench;

import footing.core.records.Background;
import footing.core.records.Learner;
import footing.io.records.Records;
import footing.io.records.RecordsFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.poi.xssf.streaming.SXSSFRow;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;

/**
 * What it takes to read a log of 100 000 rows and to learn from it, three times in one process. The log is invented.
 * Argument: {@code csv} or {@code xlsx}.
 */
public final class RecordsTime {
    private static final int ROWS = 100_000;
    private static final int MACHINES = 100;
    private static final String HEADER = "Day,Unit,What,Hour meter,Wheel,Tire,Cause,Repair,Downtime,Paid,Why,Remarks";

    private RecordsTime() {}

    public static void main(String[] args) throws IOException {
        List<String> lines = lines();
        boolean xlsx = args.length > 0 && args[0].equals("xlsx");
        Path file = Files.createTempFile("records", xlsx ? ".xlsx" : ".csv");
        try {
            if (xlsx) {
                workbook(lines, file);
            } else {
                Files.write(file, lines);
            }
            for (int i = 0; i < 3; i++) {
                measure(file);
            }
        } finally {
            Files.delete(file);
        }
    }

    private static void measure(Path file) throws IOException {
        long wall = System.nanoTime();
        long before = ProcessorTime.used();
        Records records = RecordsFile.read(file, null);
        long read = ProcessorTime.used();
        long wallRead = System.nanoTime();
        Learner.learn(records.log(), Background.NONE, 1.6);
        long learned = ProcessorTime.used();
        long wallLearned = System.nanoTime();
        System.out.printf(
                Locale.ROOT,
                "%-5s %d rows, %d refused: read %.2f s (%.2f s of processor), learned %.2f s (%.2f s)%n",
                file.toString().replaceAll(".*\\.", ""),
                records.rows(),
                records.refused().size(),
                (wallRead - wall) / 1e9,
                (read - before) / 1e9,
                (wallLearned - wallRead) / 1e9,
                (learned - read) / 1e9);
    }

    /** Each machine runs two hours a day, wears out a set every 600 h and goes flat every seventh row. */
    private static List<String> lines() {
        List<String> lines = new ArrayList<>(List.of(HEADER));
        for (int i = 0; i < ROWS; i++) {
            int machine = i % MACHINES;
            int turn = i / MACHINES;
            LocalDate day = LocalDate.of(2000, 1, 1).plusDays(10L * turn);
            int hours = 20 * turn;
            String start = day + ",M" + machine + ",";
            if (turn == 0) {
                lines.add(start + "begin," + hours + ",,,,,,,,");
            } else if (turn % 30 == 1) {
                lines.add(start + "fit," + hours + ",drive,air-24,,,,,,");
            } else if (turn % 30 == 0) {
                lines.add(start + "off," + hours + ",drive,air-24,,,,,worn,");
            } else if (turn % 7 == 3) {
                lines.add(start + "flat," + hours + ",drive,,nail,plug on site," + (20 + i % 40) + " min,4.50,,");
            } else {
                lines.add(start + "reading," + hours + ",,,,,,,,all fine");
            }
        }
        return lines;
    }

    /** With its texts in one table, as spreadsheets write it. */
    private static void workbook(List<String> lines, Path file) throws IOException {
        try (SXSSFWorkbook book = new SXSSFWorkbook(null, 100, false, true)) {
            SXSSFSheet sheet = book.createSheet("log");
            for (int r = 0; r < lines.size(); r++) {
                SXSSFRow row = sheet.createRow(r);
                String[] cells = lines.get(r).split(",", -1);
                for (int c = 0; c < cells.length; c++) {
                    if (cells[c].matches("[0-9.]+")) {
                        row.createCell(c).setCellValue(Double.parseDouble(cells[c]));
                    } else if (!cells[c].isEmpty()) {
                        row.createCell(c).setCellValue(cells[c]);
                    }
                }
            }
            try (var out = Files.newOutputStream(file)) {
                book.write(out);
            }
        }
    }
}
