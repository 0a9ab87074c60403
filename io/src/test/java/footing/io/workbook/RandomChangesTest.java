package footing.io.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import footing.core.answer.Answer;
import footing.core.answer.EntryAnswer;
import footing.core.answer.MachineAnswer;
import footing.core.chance.Metalog;
import footing.core.chance.Spread;
import footing.core.fleet.Case;
import footing.core.fleet.InForce;
import footing.core.fleet.Key;
import footing.core.fleet.Values;
import footing.io.words.Naming;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Flats, billing, prices and lives altered by chance, each to between half and twice what was stated: the workbook,
 * worked out by LibreOffice, against a fresh simulation of the altered case. Seed 20270215.
 */
class RandomChangesTest {
    private static final int CHANGES = 40;
    private static final int FUTURES = 8192;
    private static final double MONEY = 40;
    private static final double SHARE = 0.05;
    private static final int YOURS = 5;

    private final Case stated = Written.read(Written.example("quillbrook.yaml"));
    private final SplittableRandom random = new SplittableRandom(20270215);
    private final Map<String, Written> books = new HashMap<>();

    /** A change: the case with it, and the workbook with the same written into it. */
    private record Change(String machine, Case changed, Path book) {}

    private double factor() {
        return Math.pow(2, random.nextDouble(-1, 1));
    }

    private static boolean canChange(Key key) {
        return switch (key) {
            case FLATS_PER_SEASON, BILLING, PRICE, TIRE_PRICE, RENEWAL_PRICE, LIFE, UPCHARGE -> true;
            default -> false;
        };
    }

    private Written book(String machine) {
        return books.computeIfAbsent(machine, id -> {
            try {
                return Written.of(stated, 64, id);
            } catch (IOException e) {
                throw new java.io.UncheckedIOException(e);
            }
        });
    }

    private Change change(int number, String machine, Path folder) throws IOException {
        Map<String, Double> factors = new HashMap<>();
        Case changed = stated;
        try (XSSFWorkbook book = book(machine).open()) {
            Sheet sheet = book.getSheet("Change me");
            for (InForce input : new Values(stated, stated.machine(machine)).all()) {
                Key key = input.input().key();
                List<Row> rows = Written.rows(sheet, Naming.of(stated, input.input()));
                if (!canChange(key) || rows.isEmpty()) {
                    continue;
                }
                String kind = key == Key.LIFE ? "life" : key == Key.FLATS_PER_SEASON ? "flats" : "money";
                double factor = factors.computeIfAbsent(kind + input.input().owner(), k -> factor());
                Spread to = input.value().times(factor);
                changed = changed.with(input.input(), to);
                write(rows.get(0), to);
            }
            Path to = folder.resolve("change" + number + ".xlsx");
            try (OutputStream out = Files.newOutputStream(to)) {
                book.write(out);
            }
            return new Change(machine, changed, to);
        }
    }

    private static void write(Row row, Spread to) {
        set(row, YOURS + 1, to.likely());
        if (to instanceof Metalog m) {
            set(row, YOURS, m.low());
            set(row, YOURS + 2, m.high());
        }
    }

    private static void set(Row row, int column, double value) {
        Cell cell = row.getCell(column);
        cell.setBlank();
        cell.setCellValue(value);
    }

    @Test
    void saving_afterFortyChanges_isThatOfAFreshSimulation(@TempDir Path folder) throws Exception {
        List<String> machines = stated.machines().stream().map(Case.Machine::id).toList();
        List<Change> changes = new ArrayList<>();
        for (int i = 0; i < CHANGES; i++) {
            changes.add(change(i, machines.get(i % machines.size()), folder));
        }
        Path done = Files.createDirectory(folder.resolve("done"));
        List<Path> recalculated =
                LibreOffice.recalculated(changes.stream().map(Change::book).toList(), done);
        List<String> report = new ArrayList<>();
        int cannot = 0;
        boolean allWithin = true;
        for (int i = 0; i < CHANGES; i++) {
            Change change = changes.get(i);
            EntryAnswer fresh = fresh(change);
            try (var in = Files.newInputStream(recalculated.get(i));
                    XSSFWorkbook book = new XSSFWorkbook(in)) {
                Cell said = Written.rows(book.getSheet("Change me"), change.machine())
                        .get(0)
                        .getCell(3);
                boolean number = said.getCachedFormulaResultType() == CellType.NUMERIC;
                cannot += number ? 0 : 1;
                double mean = fresh.saving().mean();
                double off = number ? said.getNumericCellValue() - mean : 0;
                allWithin &= Math.abs(off) <= Math.max(MONEY, SHARE * Math.abs(mean));
                report.add(String.format(
                        Locale.ROOT,
                        "%s %s: simulated %.1f (standard error %.1f), sheet %s, off by %.1f",
                        change.machine(),
                        fresh.entry().id(),
                        mean,
                        fresh.saving().standardError(),
                        number ? String.format(Locale.ROOT, "%.1f", said.getNumericCellValue()) : "can't say",
                        off));
            }
        }
        Files.write(Path.of("target", "workbook-changes.txt"), report);
        assertThat(allWithin).as(String.join("\n", report)).isTrue();
        assertThat(cannot).as(String.join("\n", report)).isLessThanOrEqualTo(CHANGES / 4);
    }

    private EntryAnswer fresh(Change change) {
        MachineAnswer compared = book(change.machine()).answer().machines().get(0);
        EntryAnswer best = compared.bestChange();
        if (best == null) {
            throw new AssertionError("nothing to change to");
        }
        Answer answer = Written.answer(change.changed(), FUTURES, change.machine());
        return answer.machines().get(0).entries().get(compared.entries().indexOf(best));
    }

    @Test
    void saving_farFromWhatWasStated_saysThatItCannot(@TempDir Path folder) throws Exception {
        try (XSSFWorkbook book = book("S1").open()) {
            Sheet sheet = book.getSheet("Change me");
            Row billing = Written.rows(sheet, "billed per crew-hour of mowing (crew streets)")
                    .get(0);
            set(billing, YOURS + 1, 3 * billing.getCell(3).getNumericCellValue() + 1000);
            Path to = folder.resolve("far.xlsx");
            try (OutputStream out = Files.newOutputStream(to)) {
                book.write(out);
            }
            try (XSSFWorkbook done = LibreOffice.recalculated(to, Files.createDirectory(folder.resolve("done")))) {
                assertThat(Written.rows(done.getSheet("Change me"), "S1")
                                .get(0)
                                .getCell(3)
                                .getStringCellValue())
                        .isEqualTo("can't say");
            }
        }
    }
}
