package footing.io.answer;

import static footing.io.words.Invented.saving;
import static org.assertj.core.api.Assertions.assertThat;

import footing.core.answer.Answer;
import footing.core.answer.Verdict;
import footing.core.fleet.When;
import footing.io.words.Invented;
import java.io.IOException;
import java.io.StringWriter;
import java.util.List;
import org.junit.jupiter.api.Test;

class AnswerCsvTest {
    private static List<String> lines(String id) throws IOException {
        Answer answer = new Invented()
                .machine(id, false, Verdict.PAYS, "airless")
                .saves(id.replaceAll("^\"|\"$", ""), "airless", When.NOW, saving(1000.5, -200, 1800, 0.97), 900)
                .answer();
        StringWriter text = new StringWriter();
        AnswerCsv.write(answer, text);
        assertThat(text.toString()).endsWith("\r\n");
        return List.of(text.toString().split("\r\n", -1));
    }

    @Test
    void write_answer_hasARowForEachEntryOfAsManyCells() throws IOException {
        List<String> lines = lines("A");
        assertThat(lines).hasSize(5);
        int cells = lines.get(0).split(",", -1).length;
        assertThat(lines.subList(1, 4))
                .allSatisfy(l -> assertThat(l.split(",", -1)).hasSize(cells));
        assertThat(lines.get(1)).startsWith("A,north,on-air,on-air,now,no,pays,0,,4000,");
        assertThat(lines.get(2)).startsWith("A,north,on-air,airless,now,yes,pays,900,,2999.5,");
    }

    @Test
    void write_columns_standUnderTheirNames() throws IOException {
        List<String> lines = lines("A");
        List<String> names = List.of(lines.get(0).split(",", -1));
        String[] row = lines.get(2).split(",", -1);
        assertThat(row[names.indexOf("saving.mean")]).isEqualTo("1000.5");
        assertThat(row[names.indexOf("saving.chance")]).isEqualTo("0.97");
        assertThat(row[names.indexOf("counts.lostHours")]).isEqualTo("5");
        assertThat(row[names.indexOf("levels.partsAndTime.chance")]).isEqualTo("0.2");
        assertThat(row[names.indexOf("overNext.package")]).isEqualTo("on-air");
        assertThat(row[names.indexOf("monthly.months")]).isEqualTo("36");
    }

    @Test
    void write_idThatASpreadsheetWouldRun_isLedByAnApostrophe() throws IOException {
        assertThat(lines("=1+1").get(1)).startsWith("\"'=1+1\",north");
    }
}
