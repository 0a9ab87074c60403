package footing.web.records;

import static org.assertj.core.api.Assertions.assertThat;

import footing.web.serve.Served;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Sheets handed over, mended, and what they teach taken into the case; the log is invented. */
class RecordsTest extends Served {
    private static final String LOG = """
            date,machine,event,hours,position,assembly,reason
            2026-04-01,E1,begin,900,,,
            2026-04-20,E1,flat,950,drive,,
            2026-06-01,E1,flat,1080,caster,,
            2026-09-30,E1,reading,1400,,,
            """;

    private final RecordsVisit visit = new RecordsVisit(visitor());

    @Test
    void sheet_thatCanBeRead_teachesAndIsKeptAsItCame() {
        assertThat(visit.page()).contains("Nothing is written down yet");
        assertThat(visit.handOver("log.csv", LOG).statusCode()).isEqualTo(302);
        String page = visit.page();
        assertThat(page).contains("4 of 4 rows can be used.", "E1: 2 flats in 500 h", "learned-flats");
        String sheet = page.replaceAll("(?s).*(/records/sheets/\\d+)\".*", "$1");
        assertThat(visit.get(sheet).body()).isEqualTo(LOG);
    }

    @Test
    void sheet_withSetsOfTwoKindsAndFourFlats_tellsWhichLastsAndOfATrend() {
        visit.handOver("log.csv", LOG.replace("2026-09-30", """
                2026-06-10,E1,flat,1090,drive,,
                2026-06-20,E1,flat,1100,drive,,
                2026-07-01,E1,fit,1120,drive,air,
                2026-08-01,E1,off,1250,drive,,worn
                2026-08-01,E1,fit,1250,drive,foam,
                2026-09-01,E1,off,1390,drive,,worn
                2026-09-30"""));
        assertThat(visit.page())
                .contains("Which sets last longer", "air against foam: can&#39;t tell which lasts longer")
                .contains("E1: whether flats come more often than they did: can&#39;t tell from 4 flats");
    }

    @Test
    void sheet_sentTwice_isKeptOnce() {
        visit.handOver("log.csv", LOG);
        visit.handOver("again.csv", LOG);
        assertThat(visit.page()).contains("4 of 4 rows can be used.");
    }

    @Test
    void row_thatCantBe_isListedMendedAndTheMendUndone() {
        visit.handOver("log.csv", LOG + "5/13/2026,E1,flat,1000,drive,,\n");
        assertThat(visit.page())
                .contains("4 of 5 rows can be used; 1 to mend.", "Line 6 of log.csv", "date: 2026-05-13")
                .contains("value=\"5/13/2026\"");
        String row = visit.rowsToMend().get(0);
        Map<String, String> mend = Map.of("row", row, "cell.date", "2026-05-13");
        assertThat(visit.post("/records/mend", mend).headers().firstValue("Location"))
                .get()
                .asString()
                .endsWith("done=mended");
        assertThat(visit.page()).contains("5 of 5 rows can be used.", "Line 6 of log.csv: date 2026-05-13");
        assertThat(visit.post("/records/mend", mend).headers().firstValue("Location"))
                .get()
                .asString()
                .endsWith("done=same");
        String undo = visit.page().replaceAll("(?s).*name=\"mend\" value=\"(\\d+)\".*", "$1");
        visit.post("/records/unmend", Map.of("mend", undo));
        assertThat(visit.page()).contains("4 of 5 rows can be used; 1 to mend.");
    }

    @Test
    void rows_withOneMendEach_areMendedTogetherOrLeftOut() {
        visit.handOver(
                "log.csv",
                LOG + "5/13/2026,E1,flat,1000,drive,,\n5/14/2026,E1,flat,1001,drive,,\nsoon,E1,flat,,drive,,\n");
        assertThat(visit.page()).contains("Accept the 2 plain mends");
        visit.post("/records/mend-plain", Map.of());
        assertThat(visit.page()).contains("6 of 7 rows can be used; 1 to mend.");
        visit.post("/records/mend", Map.of("row", visit.rowsToMend().get(0), "out", "true"));
        assertThat(visit.page()).contains("6 of 6 rows can be used; 1 more left out by you.");
    }

    @Test
    void columns_nobodyKnows_areMatchedByHand() {
        visit.handOver("theirs.csv", "Datum,Gerät,Was,Zähler\n2026-04-01,E1,begin,900\n2026-09-01,E1,reading,1400\n");
        assertThat(visit.page()).contains("No column date", "which column is which", "<option value=\"Datum\"");
        String sheet = visit.page().replaceAll("(?s).*(/records/sheets/\\d+)/columns.*", "$1");
        visit.post(
                sheet + "/columns",
                Map.of("cell.date", "Datum", "cell.machine", "Gerät", "cell.event", "Was", "cell.hours", "Zähler"));
        assertThat(visit.page()).contains("2 of 2 rows can be used.");
    }

    @Test
    void sheet_laidAway_countsNoMoreUntilTakenBack() {
        visit.handOver("log.csv", LOG);
        String sheet = visit.page().replaceAll("(?s).*(/records/sheets/\\d+)/archive.*", "$1");
        visit.post(sheet + "/archive", Map.of("archived", "true"));
        assertThat(visit.page()).contains("Nothing is written down yet", "laid away");
        visit.post(sheet + "/archive", Map.of("archived", "false"));
        assertThat(visit.page()).contains("4 of 4 rows can be used.");
    }

    @Test
    void accept_whatWasLearned_isInTheCaseAndItsAnswerUntilUndone() {
        visit.handOver("log.csv", LOG);
        String before = visit.get("/download").body();
        assertThat(visit.page())
                .contains("E1, flats a season on air: ", "by your records; you said 3 to 11.")
                .doesNotContain("machines.E1", "{learned");
        String version = visit.version();
        visit.post("/records/accept", Map.of("version", version));
        String text = visit.get("/download").body();
        assertThat(text).containsPattern("records: records-[0-9a-f]{16}\\.csv").contains("{learned: flats}");
        assertThat(visit.get("/history").body()).contains("Learned from 4 rows of records");
        // The placeholder of a learned value is 3 flats; these records teach something else.
        assertThat(visit.get("/machines/E1").body()).contains("records").doesNotContain("can&#39;t be read from here");
        assertThat(visit.page())
                .contains("The case uses these records as they stand.")
                .doesNotContain("accept-head");
        visit.post("/undo", Map.of("version", visit.version()));
        assertThat(visit.get("/download").body()).isEqualTo(before);
        assertThat(visit.page()).contains("accept-head");
    }

    @Test
    void copy_ofACase_bringsItsRecordsWithTheirMends() {
        visit.handOver("log.csv", LOG + "5/13/2026,E1,flat,1000,drive,,\nsoon,E1,flat,,drive,,\n");
        visit.post("/records/mend-plain", Map.of());
        visit.post("/records/mend", Map.of("row", visit.rowsToMend().get(0), "out", "true"));
        visit.post("/log/entry", Map.of("sentAs", "mark-copy", "machine", "E1", "hours", "1420", "event", "reading"));
        RecordsVisit copy = visit.copied();
        assertThat(copy.get("/records.csv").body())
                .isEqualTo(visit.get("/records.csv").body())
                .contains("2026-05-13,E1,flat", "E1,reading,1420");
        assertThat(copy.page()).contains("1 more left out by you");
        copy.handOver("more.csv", "date,machine,event,hours\n2026-10-30,E2,reading,700\n");
        assertThat(copy.get("/records.csv").body()).contains("E2,reading");
        assertThat(visit.get("/records.csv").body()).doesNotContain("E2,reading");
        assertThat(visit.rowsToMend()).isEmpty();
    }

    @Test
    void card_ofTheCase_isAPdfOfTheWantedPaper() {
        assertThat(visit.page()).contains("card.pdf?paper=letter", "card.pdf?paper=a4");
        HttpResponse<String> card = visit.get("/card.pdf?paper=a4");
        assertThat(card.body()).startsWith("%PDF");
        assertThat(card.headers().firstValue("Content-Disposition").orElse("")).contains("visor-card.pdf");
        assertThat(visit.get("/card.pdf?paper=tabloid").statusCode()).isEqualTo(400);
    }

    @Test
    void answer_withWhatWasLearned_saysHowMuchSurerItIs() {
        assertThat(visit.get("").body()).doesNotContain("class=\"narrowed\"");
        visit.handOver("log.csv", LOG);
        visit.post("/records/accept", Map.of("version", visit.version()));
        assertThat(visit.get("").body()).containsPattern("class=\"narrowed\">Your records (narrow it|don)");
        assertThat(visit.get("/machines/E1").body()).contains("flats a season (without them ");
    }

    @Test
    void accept_fromAnOldVersion_isRefusedAsOvertaken() {
        visit.handOver("log.csv", LOG);
        String version = visit.version();
        visit.post("/records/accept", Map.of("version", version));
        visit.post("/undo", Map.of("version", visit.version()));
        assertThat(visit.post("/records/accept", Map.of("version", version)).statusCode())
                .isEqualTo(409);
    }

    @Test
    void sheets_brokenInAnyWay_areKeptAndNeverBreakThePage() throws IOException {
        SplittableRandom random = new SplittableRandom(20_270_301L);
        byte[] good = LOG.getBytes(StandardCharsets.UTF_8);
        byte[] book = workbook();
        visit.handOver("zero.csv", new byte[] {0});
        visit.handOver("quote.csv", "date,event\n\"2026-04-01,begin\n");
        visit.handOver("../../etc/pass\nwd", "date,machine,event,hours\n<script>,=1+1,begin,1e400\n");
        for (int i = 0; i < 40; i++) {
            byte[] spoilt = (i % 2 == 0 ? good : book).clone();
            for (int n = 0; n < 1 + random.nextInt(12); n++) {
                spoilt[random.nextInt(spoilt.length)] = (byte) random.nextInt(256);
            }
            HttpResponse<String> response = visit.handOver("spoilt-" + i, spoilt);
            assertThat(response.statusCode()).as("sheet " + i).isEqualTo(302);
            HttpResponse<String> page = visit.get("/records");
            assertThat(page.statusCode()).as("page after sheet " + i).isEqualTo(200);
            assertThat(page.body()).contains("spoilt-" + i).doesNotContain("<script>", "Exception");
        }
        List<String> sheets = List.of(visit.page().split("/columns\"|/archive\""));
        assertThat(sheets).hasSizeGreaterThan(40);
        assertThat(visit.get("/records.csv").body()).startsWith("date,machine,event");
    }

    private static byte[] workbook() throws IOException {
        try (var book = new org.apache.poi.xssf.usermodel.XSSFWorkbook();
                ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            var sheet = book.createSheet();
            int at = 0;
            for (String line : LOG.lines().toList()) {
                var row = sheet.createRow(at++);
                String[] cells = line.split(",", -1);
                for (int c = 0; c < cells.length; c++) {
                    row.createCell(c).setCellValue(cells[c]);
                }
            }
            book.write(out);
            return out.toByteArray();
        }
    }
}
