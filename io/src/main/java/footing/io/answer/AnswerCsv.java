package footing.io.answer;

import footing.core.answer.Answer;
import footing.core.answer.EntryAnswer;
import footing.core.answer.MachineAnswer;
import footing.io.sheet.CsvTable;
import java.io.IOException;
import java.io.Writer;
import java.util.Locale;

/**
 * Writes an answer as comma-separated values, a row for each machine and entry, the carried one first. Columns are named
 * as in the JSON document, with a point where that nests; what does not exist is an empty cell.
 */
public final class AnswerCsv {
    private AnswerCsv() {}

    /**
     * Writes the table and leaves the writer open.
     *
     * @throws IOException if the writer does
     */
    public static void write(Answer answer, Writer to) throws IOException {
        try (CsvTable table = new CsvTable(to)) {
            CsvRow row = new CsvRow(table);
            row.names().end();
            for (MachineAnswer m : answer.machines()) {
                for (int e = 0; e < m.entries().size(); e++) {
                    fill(row, m, m.entries().get(e), e == m.recommended());
                }
            }
        }
    }

    private static void fill(CsvRow row, MachineAnswer m, EntryAnswer e, boolean recommended) {
        row.text(m.id()).text(m.machine().crew().id()).text(m.carried().entry().id());
        row.text(e.entry().id()).text(MachineJson.when(e.entry()));
        row.text(recommended ? "yes" : "no").text(m.verdict().name().toLowerCase(Locale.ROOT));
        row.number(e.startCost()).number(e.neverFitted());
        row.estimate(e.cost()).parts(e.parts()).counts(e.counts()).saving(e.saving());
        e.levels().forEach(l -> row.number(l.mean()).number(l.chance()));
        row.overNext(e.overNext()).number(e.paybackHours());
        EntryAnswer.BreakEvenFlats flats = e.breakEvenFlats();
        row.number(flats == null ? null : flats.at()).number(flats == null ? null : flats.now());
        row.number(e.breakEvenPrice());
        EntryAnswer.Monthly monthly = e.monthly();
        row.number(monthly == null ? null : monthly.payment()).number(monthly == null ? null : monthly.avoided());
        row.number(monthly == null ? null : (double) monthly.months()).end();
    }
}
