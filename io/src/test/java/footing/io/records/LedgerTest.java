package footing.io.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sheets laid out, put together and mended. */
class LedgerTest {
    private static final String BEGIN = "date,machine,event,hours,position,depth,quantity\n2026-04-01,A,begin,300,,,\n";

    private static List<Ledger.Row> rows(String file, String csv) {
        Sheet sheet = Sheet.read(file, csv.getBytes(StandardCharsets.UTF_8), Map.of());
        assertThat(sheet.faults()).isEmpty();
        return sheet.rows().stream()
                .map(r -> new Ledger.Row(file, r.line(), r.cells()))
                .toList();
    }

    private static Ledger.Refused refused(String row) {
        Ledger ledger = Ledger.of(rows("log.csv", BEGIN + row + "\n"));
        assertThat(ledger.refused()).hasSize(1);
        return ledger.refused().get(0);
    }

    @ParameterizedTest
    @CsvSource({
        "'13/04/2026,A,reading,310,,,', date: 2026-04-13, ''",
        "'3/4/2026,A,reading,310,,,', date: 2026-03-04, date: 2026-04-03",
        "'2026-04-09,A,reding,310,,,', event: reading, ''",
        "'2026-04-09,A,reading,310 km,,,', hours: 310, ''",
        "'2026-04-09,A,reading,\"1,310\",,,', hours: 1310, ''",
        "'2026-04-09,A,tread,310,,9 mm,', position: drive, position: caster",
        "'2026-04-09,A,tread,310,drive,9,', depth: 9 mm, depth: 9/32 in",
    })
    void mends_ofARowThatCantBe_makeItOneThatCan(String row, String first, String second) {
        Ledger.Refused refused = refused(row);
        List<String> words = refused.mends().stream().map(Mend::words).toList();
        assertThat(words).isEqualTo(second.isEmpty() ? List.of(first) : List.of(first, second));
        for (Mend mend : refused.mends()) {
            Map<String, String> cells = new HashMap<>(refused.row().cells());
            cells.putAll(mend.cells());
            List<Ledger.Row> mended = new ArrayList<>(rows("log.csv", BEGIN));
            mended.add(new Ledger.Row("log.csv", 3, cells));
            assertThat(Ledger.of(mended).refused())
                    .extracting(Ledger.Refused::column)
                    .doesNotContain(refused.column());
        }
    }

    @Test
    void mends_ofExamplesInAdvice_areNotProposed() {
        assertThat(refused("last week,A,reading,310,,,").mends()).isEmpty();
        assertThat(refused("2026-04-09,A,bought,,,,3 boxes").mends()).isEmpty();
        assertThat(refused("2026-04-09,A,reading,200,,,").mends()).isEmpty();
    }

    @Test
    void refused_theSameRowInTwoSheets_namesTheOther() {
        List<Ledger.Row> rows = new ArrayList<>(rows("a.csv", BEGIN + "2026-04-09,A,reading,310,,,\n"));
        rows.addAll(rows("b.csv", "event,date,machine,hours\nreading,2026-04-09,A,310\n"));
        List<Ledger.Refused> refused = Ledger.of(rows).refused();
        assertThat(refused).hasSize(1);
        assertThat(refused.get(0).row().source()).isEqualTo("b.csv");
        assertThat(refused.get(0).reason()).contains("line 3 of a.csv");
        assertThat(refused.get(0).mends()).extracting(Mend::leavesOut).containsExactly(true);
    }

    @Test
    void read_unitsInTheHeader_moveToTheCells() {
        String csv = """
                date,machine,event,hours,position,tread (mm),minutes (h)
                2026-04-01,A,tread,300,drive,9.5,
                2026-04-02,A,flat,301,drive,,1.5
                """;
        List<Ledger.Row> rows = rows("log.csv", csv);
        assertThat(rows.get(0).cells()).containsEntry("depth", "9.5 mm");
        assertThat(rows.get(1).cells()).containsEntry("minutes", "1.5 h");
    }

    @Test
    void read_aRowOfUnknownColumnsAlone_isRefusedAndNotLost() {
        List<Ledger.Row> rows = rows("log.csv", "date,event,weather\n,,dry all week\n");
        assertThat(Ledger.of(rows).refused()).hasSize(1);
        assertThat(rows.get(0).cells()).containsEntry("note", "dry all week");
    }

    @Test
    void read_columnsNobodyKnows_keepsTheHeaderForAMapping() {
        byte[] csv = "Datum,Was\n2026-04-01,begin\n".getBytes(StandardCharsets.UTF_8);
        Sheet sheet = Sheet.read("log.csv", csv, Map.of("nonsense", "Was"));
        assertThat(sheet.faults()).hasSize(1);
        assertThat(sheet.header()).containsExactly("Datum", "Was");
        Sheet mapped = Sheet.read("log.csv", csv, Map.of("date", "Datum", "event", "Was"));
        assertThat(mapped.rows()).hasSize(1);
    }

    @Test
    void csv_ofAnyRows_readsBackLineForLine() {
        List<Ledger.Row> rows = List.of(
                new Ledger.Row("x", 2, Map.of("date", "2026-04-01", "machine", "-3", "event", "begin", "hours", "5")),
                new Ledger.Row("x", 3, Map.of("note", "two\nlines, and \"quotes\"")),
                new Ledger.Row("x", 4, Map.of("note", "=HYPERLINK(1)")));
        String csv = Ledger.of(rows).csv();
        assertThat(csv.lines().collect(Collectors.toList())).hasSize(4);
        Sheet back = Sheet.read("y", csv.getBytes(StandardCharsets.UTF_8), Map.of());
        assertThat(back.rows()).extracting(Sheet.Row::line).containsExactly(2, 3, 4);
        assertThat(back.rows().get(0).cells()).containsEntry("machine", "-3");
        assertThat(back.rows().get(1).cells()).containsEntry("note", "two lines, and \"quotes\"");
        assertThat(back.rows().get(2).cells().get("note")).startsWith("'=");
    }
}
