package footing.web.records;

import static org.assertj.core.api.Assertions.assertThat;

import footing.web.serve.Served;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** A forecast kept on the page, and an invented log held against it. */
class FollowTest extends Served {
    private static final String HEADS = "date,machine,event,hours,position,minutes,cost\n";
    private static final List<String> MACHINES = List.of("E1", "E2", "E3", "S1", "S2", "S3", "S4", "C1", "C2");

    private final RecordsVisit visit = new RecordsVisit(visitor());

    private void keep() {
        assertThat(visit.post("/follow/keep", Map.of()).headers().firstValue("Location"))
                .get()
                .asString()
                .endsWith("/follow?kept=true");
    }

    /** The page with line breaks and markup taken out. */
    private String said(String query) {
        var page = visit.get("/follow" + query);
        assertThat(page.statusCode()).isEqualTo(200);
        return page.body().replaceAll("(?s)<[^>]*>", "").replace("&#39;", "'").replaceAll("\\s+", " ");
    }

    /** So many flats of a machine in its first 200 hours. */
    private static String season(String machine, int flats) {
        StringBuilder log = new StringBuilder("2027-02-15,%s,begin,4000,,,\n".formatted(machine));
        for (int i = 1; i <= flats; i++) {
            log.append("2027-05-%02d,%s,flat,%d,drive,30,6\n".formatted(i, machine, 4000 + 4 * i));
        }
        return log + "2027-06-30,%s,reading,4200,,,\n".formatted(machine);
    }

    @Test
    void page_noForecastKept_saysHowToBegin() {
        assertThat(said(""))
                .contains("No forecast is kept yet.", "Keep this forecast", "No set on a machine has a warranty");
    }

    @Test
    void page_forecastKeptAndNothingSince_drawsWhatIsDue() {
        keep();
        assertThat(said("?kept=true"))
                .contains("The forecast is kept", "Nothing has been written down since.", "from 2027-02-15 on")
                .contains("All machines: flats", "S4, C1 and C2")
                .doesNotContain("E1: flats");
    }

    @Test
    void page_manyFlatsOnOneMachine_saysMoreThanExpectedThereAlone() {
        keep();
        visit.handOver("log.csv", HEADS + season("E1", 25));
        String said = said("");
        assertThat(said)
                .contains("Flats: more than expected on E1; nothing written down since for")
                .contains("E1: flats", "200 h run by 2027-06-30", "25 flats;", "more than expected.")
                .contains("What came is drawn here once something is written down of every machine.");
        assertThat(visit.get("/follow").body()).contains("class=\"strays\">25 flats");
    }

    @Test
    void page_everyMachineWrittenDown_tellsTheFleetToo() {
        keep();
        StringBuilder log = new StringBuilder(HEADS);
        MACHINES.forEach(m -> log.append(season(m, 2)));
        visit.handOver("log.csv", log.toString());
        assertThat(said("")).contains("All machines: 1,800 h run.", "18 flats;");
        assertThat(said("?of=downHours")).contains("All machines: hours down", "E1: hours down", "Down 9.0 h;");
        assertThat(said("?of=paid")).contains("paid for flats, USD", "Paid 108 USD for flats;");
        assertThat(said("?machine=E2")).contains("E2: flats").doesNotContain("E1: flats", "All machines: flats");
        assertThat(said("?of=nonsense")).contains("E1: flats");
    }

    @Test
    void keep_twiceOnADay_keepsTheLastWithItsSeed() {
        keep();
        keep();
        assertThat(visit.get("/follow").body()).doesNotContain("Held against the forecast of");
        assertThat(visit.get("/follow?forecast=999999").statusCode()).isEqualTo(404);
    }

    @Test
    void keep_caseOfAnotherDay_isKeptBesideAndEitherCanBeChosen() {
        keep();
        String text = visit.get("/download").body().replace("asOf: 2027-02-15", "asOf: 2027-04-01");
        visit.post("/file", Map.of("version", visit.version(), "text", text));
        keep();
        String page = visit.get("/follow").body();
        assertThat(page).contains("Held against the forecast of", "from 2027-04-01 on");
        Matcher option = Pattern.compile("<option value=\"(\\d+)\">[^<]*from 2027-02-15 on")
                .matcher(page);
        assertThat(option.find()).isTrue();
        assertThat(said("?forecast=" + option.group(1))).contains("Forecast of", "from 2027-02-15 on. 'Due'");
        RecordsVisit copy = visit.copied();
        assertThat(copy.get("/follow").body()).contains("Held against the forecast of");
    }

    @Test
    void page_setWithAWarranty_tellsHowFarItHasRun() {
        String text = visit.get("/download").body();
        String stated = text.replaceFirst("(kind: air, position: drive,)", "$1 warranty: {hours: 1000},");
        visit.post("/file", Map.of("version", visit.version(), "text", stated));
        visit.handOver("log.csv", HEADS + season("E2", 1));
        assertThat(said("")).contains("of 1,000 h run").doesNotContain("No set on a machine");
    }
}
