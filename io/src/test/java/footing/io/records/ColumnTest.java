package footing.io.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Headers as shops write them. */
class ColumnTest {
    @Test
    void synonyms_ofAllColumns_meanOneColumnEach() {
        Map<String, Column> meanings = new HashMap<>();
        for (Column column : Column.values()) {
            Stream.concat(Stream.of(column.header()), column.synonyms().stream())
                    .map(Column::plain)
                    .forEach(name ->
                            assertThat(meanings.put(name, column)).as(name).isNull());
        }
    }

    @ParameterizedTest
    @CsvSource({
        "Delay, MINUTES, ''",
        "Delay (h), MINUTES, h",
        "downtime min, MINUTES, min",
        "Time lost, MINUTES, ''",
        "Mower No., MACHINE, ''",
        "Date worked, DATE, ''",
        "Tread mm, DEPTH, mm",
        "Tread [32nds], DEPTH, 32nds",
        "Hours, HOURS, ''",
        "Machine hours, HOURS, ''",
        "Tire type, ASSEMBLY, ''",
        "Reason for removal, REASON, ''",
        "Cost USD, COST, USD",
    })
    void of_aShopsHeader_findsColumnAndUnit(String header, Column column, String unit) {
        assertThat(Column.of(header)).contains(column);
        assertThat(Column.unit(header)).isEqualTo(unit);
    }

    @ParameterizedTest
    @CsvSource({"Weather", "Driver", "Check in", "min max"})
    void of_anotherHeader_isNoColumn(String header) {
        assertThat(Column.of(header)).isEmpty();
    }

    private static Records read(String csv) {
        return RecordsFile.read("log.csv", csv.getBytes(StandardCharsets.UTF_8), Map.of());
    }

    @Test
    void read_delayInHours_isTheTimeUntilItCutsAgain() {
        Records records =
                read("date,machine,event,hours,delay h\n2026-04-01,A,begin,300,\n2026-05-01,A,flat,310,1.5\n");
        assertThat(records.log()
                        .machines()
                        .values()
                        .iterator()
                        .next()
                        .get(1)
                        .detail()
                        .minutes())
                .hasValue(90);
    }

    @Test
    void read_ownNameBesideASynonym_takesTheOwnAndNamesTheOther() {
        for (String header : new String[] {"date,when", "when,date"}) {
            String row = header.startsWith("date") ? "2026-04-01,x" : "x,2026-04-01";
            Records records = read(header + ",machine,event,hours\n" + row + ",A,begin,300\n");
            assertThat(records.unread()).isEmpty();
            assertThat(records.refused()).isEmpty();
            assertThat(records.ignored()).containsExactly("when");
        }
        assertThat(read("date,machine,event,delay,downtime\n").unread().get(0).message())
                .contains("'delay' and 'downtime' both mean minutes");
    }
}
