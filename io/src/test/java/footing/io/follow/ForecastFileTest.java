package footing.io.follow;

import static org.assertj.core.api.Assertions.assertThat;

import footing.core.answer.Answer;
import footing.core.answer.Assessment;
import footing.core.answer.Options;
import footing.core.answer.Watch;
import footing.core.answer.Workers;
import footing.core.fleet.Case;
import footing.core.follow.Band;
import footing.core.follow.FollowUp;
import footing.core.follow.Forecast;
import footing.core.follow.Forecaster;
import footing.core.follow.Warranties;
import footing.core.follow.Warranty;
import footing.core.future.Followed;
import footing.io.casefile.CaseFile;
import footing.io.records.Records;
import footing.io.records.RecordsFile;
import footing.io.words.FollowWords;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Forecasts written, read back and told. */
class ForecastFileTest {
    private static final Path CASES = Path.of("..", "cases");
    private static Case stated;
    private static Forecast forecast;

    @BeforeAll
    static void forecast() throws IOException {
        stated = CaseFile.read(CASES.resolve("one-machine.yaml")).found().orElseThrow();
        Answer answer =
                Assessment.answer(stated, Options.usual().quickly().withFutures(500), Workers.one(), Watch.NOBODY);
        forecast = Forecaster.of(answer, Map.of(), LocalDate.of(2027, 3, 16));
    }

    private static String written(List<Forecast> forecasts) {
        StringWriter text = new StringWriter();
        ForecastFile.write(forecasts, text);
        return text.toString();
    }

    @Test
    void read_whatWasWritten_isTheSameToAThousandth() {
        ForecastFile.Kept kept = ForecastFile.read(written(List.of(forecast)), "a.forecast.json");
        assertThat(kept.problems()).isEmpty();
        Forecast back = kept.forecasts().get(0);
        assertThat(back.made()).isEqualTo(forecast.made());
        assertThat(back.asOf()).isEqualTo(forecast.asOf());
        assertThat(back.seed()).isEqualTo(forecast.seed());
        assertThat(back.machines().get(0).plan())
                .isEqualTo(forecast.machines().get(0).plan());
        for (Followed what : Followed.values()) {
            List<Band> before = forecast.fleet().of(what);
            List<Band> after = back.fleet().of(what);
            for (int i = 0; i < before.size(); i++) {
                assertThat(Math.abs(after.get(i).high() - before.get(i).high())).isLessThanOrEqualTo(0.0005001);
                assertThat(Math.abs(after.get(i).mean() - before.get(i).mean())).isLessThanOrEqualTo(0.0005001);
            }
        }
        assertThat(written(kept.forecasts())).isEqualTo(written(List.of(forecast)));
    }

    @ParameterizedTest
    @CsvSource({
        "footing-forecast/1, footing-forecast/9, is not footing-forecast/1",
        "2027-03-16, soon, a date is due",
        "\"hoursNow\", \"hoursNo\", a number is due",
        "\"when\" : \"now\", \"when\" : \"then\", is neither now nor worn",
        "'\"mean\" : [', '\"mean\" : [ 0.0,', 'low, mean and high'",
        "\"seed\" : 1, \"seed\" : x, is no number"
    })
    void read_spoiledFile_saysWhereAndWhat(String what, String by, String message) {
        String whole = written(List.of(forecast));
        assertThat(whole).contains(what);
        ForecastFile.Kept kept = ForecastFile.read(whole.replace(what, by), "a.forecast.json");
        assertThat(kept.forecasts()).isEmpty();
        assertThat(kept.problems().get(0).toString())
                .startsWith("a.forecast.json:")
                .contains(message);
    }

    @Test
    void read_noFile_hasNoForecast(@TempDir Path folder) throws IOException {
        assertThat(ForecastFile.read(folder.resolve("none.json")).forecasts()).isEmpty();
        assertThat(ForecastFile.beside(Path.of("x", "mine.yaml"))).isEqualTo(Path.of("x", "mine.forecast.json"));
    }

    @Test
    void with_madeOnTheSameDay_takesItsPlace() {
        assertThat(ForecastFile.with(List.of(forecast), forecast)).hasSize(1);
        Forecast later = new Forecast(
                forecast.made().plusDays(1),
                forecast.asOf(),
                2,
                forecast.futures(),
                "USD",
                forecast.machines(),
                forecast.fleet());
        assertThat(ForecastFile.with(List.of(later), forecast)).containsExactly(forecast, later);
    }

    @Test
    void of_logOfTheMachine_tellsEveryFigureInWordsAndJson(@TempDir Path folder) throws IOException {
        String id = stated.machines().get(0).id();
        double now = forecast.machines().get(0).hoursNow();
        LocalDate asOf = forecast.asOf();
        Path log = folder.resolve("log.csv");
        Files.writeString(
                log,
                "date,machine,event,hours,position,assembly,minutes,cost\n"
                        + asOf + "," + id + ",begin," + now + ",,,,\n"
                        + asOf.plusDays(40) + "," + id + ",flat," + (now + 100) + ",drive,,45,12\n"
                        + asOf.plusDays(200) + "," + id + ",reading," + (now + 400) + ",,,,\n");
        Records records = RecordsFile.read(log, null);
        assertThat(records.refused()).isEmpty();
        FollowUp up = FollowUp.of(forecast, records.log());
        List<Warranty> none = Warranties.of(stated, records.log(), asOf.plusDays(200));
        assertThat(FollowWords.head(up.machines().get(0))).contains(id).contains("400 h run by");
        assertThat(FollowWords.line(up.machines().get(0).lines().get(0), "USD")).startsWith("1 flat; ");
        assertThat(FollowWords.line(up.machines().get(0).lines().get(2), "USD")).startsWith("Down 0.8 h; ");
        assertThat(FollowWords.summary(up)).startsWith("Flats: ");
        StringWriter json = new StringWriter();
        FollowJson.write(up, none, json);
        assertThat(json.toString())
                .contains("\"format\" : \"footing-follow/1\"")
                .contains("\"downHours\" : 0.75")
                .contains("\"standing\" : ");
    }
}
