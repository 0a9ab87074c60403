package footing.io.proposal;

import footing.core.answer.Answer;
import footing.core.answer.EntryAnswer;
import footing.io.sheet.CsvTable;
import footing.io.words.Advice;
import footing.io.words.Reason;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * Every table of a proposal as comma-separated values after RFC 4180, a file for each kind: numbers as they are, not
 * rounded, texts so that no spreadsheet takes one for a formula.
 */
public final class Tables {
    private Tables() {}

    /**
     * Writes the files into a folder, over files of the same names.
     *
     * @return the names of the files
     * @throws IOException if one can't be written
     */
    public static List<String> write(Answer answer, Path folder) throws IOException {
        for (Map.Entry<String, List<Table>> kind : all(answer).entrySet()) {
            Path file = folder.resolve(fileName(kind.getKey()));
            try (Writer to = Files.newBufferedWriter(file, StandardCharsets.UTF_8)) {
                write(kind.getValue(), to);
            }
        }
        return names(answer);
    }

    /**
     * The same files in an archive; leaves the stream open.
     *
     * @throws IOException if it can't be written
     */
    public static void zip(Answer answer, OutputStream to) throws IOException {
        ZipOutputStream archive = new ZipOutputStream(to, StandardCharsets.UTF_8);
        for (Map.Entry<String, List<Table>> kind : all(answer).entrySet()) {
            ZipEntry file = new ZipEntry(fileName(kind.getKey()));
            file.setTimeLocal(answer.of().heading().asOf().atStartOfDay());
            archive.putNextEntry(file);
            Writer text = new OutputStreamWriter(archive, StandardCharsets.UTF_8);
            write(kind.getValue(), text);
            text.flush();
            archive.closeEntry();
        }
        archive.finish();
    }

    /** What {@link #write} calls its files. */
    public static List<String> names(Answer answer) {
        return all(answer).keySet().stream().map(Tables::fileName).toList();
    }

    private static String fileName(String id) {
        return id + ".csv";
    }

    /** Tables by id; those of single machines one after the other, led by the machine. */
    static Map<String, List<Table>> all(Answer answer) {
        Map<String, List<Table>> all = new LinkedHashMap<>();
        put(all, machines(answer));
        for (Advice a : Advice.all(answer)) {
            new MachineTables(answer, a).all().forEach(t -> put(all, t.led("machine", a.id())));
        }
        put(all, Assumptions.shared(answer));
        OrderSheet order = new OrderSheet(answer);
        List.of(order.now(), order.ifTaken(), order.nextSets(), order.spares()).forEach(t -> put(all, t));
        put(all, AfterList.of(answer));
        return all;
    }

    private static void put(Map<String, List<Table>> all, Table table) {
        all.computeIfAbsent(table.id(), id -> new ArrayList<>()).add(table);
    }

    /** The lines of page one. */
    static Table machines(Answer answer) {
        Table.Builder table = Table.named(
                "machines",
                "Machines",
                "machine",
                "crew",
                "what to do",
                "#saves in its life",
                "#if it goes badly",
                "#if it goes well",
                "#pays in",
                "#at the start",
                "why");
        for (Advice a : Advice.all(answer)) {
            EntryAnswer about = a.about();
            Cell id = Cell.text(a.id());
            Cell crew = Cell.text(a.machine().machine().crew().id());
            Cell what = Cell.text(a.row());
            Cell why = Cell.text(Reason.of(answer, a));
            if (about == null) {
                table.row(id, crew, what, Cell.EMPTY, Cell.EMPTY, Cell.EMPTY, Cell.EMPTY, Cell.EMPTY, why);
            } else {
                table.row(
                        id,
                        crew,
                        what,
                        Cell.money(about.saving().mean()),
                        Cell.money(about.saving().p10()),
                        Cell.money(about.saving().p90()),
                        Cell.odds(about.saving().chance()),
                        Cell.money(about.startCost()),
                        why);
            }
        }
        return table.built();
    }

    static void write(List<Table> alike, Writer to) throws IOException {
        try (CsvTable csv = new CsvTable(to)) {
            alike.get(0).columns().forEach(c -> csv.text(c.head()));
            csv.end();
            for (Table table : alike) {
                for (List<Cell> row : table.rows()) {
                    row.forEach(c -> cell(csv, c));
                    csv.end();
                }
            }
        }
    }

    private static void cell(CsvTable csv, Cell cell) {
        if (cell.number() == null) {
            csv.text(cell.shown());
        } else {
            csv.number(cell.number());
        }
    }
}
