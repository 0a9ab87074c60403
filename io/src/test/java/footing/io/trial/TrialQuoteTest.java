package footing.io.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class TrialQuoteTest {
    private static TrialQuote quote(String file) throws IOException {
        TrialReading reading = TrialFile.read(Path.of("../cases/trial-day", file));
        return TrialQuote.of(((TrialReading.Accepted) reading).stated());
    }

    @Test
    void of_pulls_saysRunsDayVerdictAndCautions() throws IOException {
        TrialQuote quote = quote("pull.yaml");

        assertThat(quote.title()).endsWith("(24 runs, 2027-02-06)");
        assertThat(quote.verdict()).startsWith("Airless is better: steady pull of 410 lbf against 365 lbf");
        assertThat(quote.limits()).first().asString().contains("no slope is called safe");
        assertThat(quote.limits()).anyMatch(l -> l.contains("operator's manual"));
    }

    @Test
    void of_opposedPulls_countsThemAsRuns() throws IOException {
        assertThat(quote("opposed.yaml").title()).contains("(5 runs, 2027-02-06)");
    }

    @Test
    void of_sheetWithoutADay_saysSoAndKeepsItsDoubts() throws IOException {
        TrialQuote quote = quote("pivot.csv");

        assertThat(quote.title()).isEqualTo("Trial sheet: pivot (8 runs, day not noted)");
        assertThat(quote.lines()).hasSizeGreaterThan(1).anyMatch(l -> l.startsWith("A skeptic would say: "));
    }

    @Test
    void of_runsOnTwoDays_saysBoth() {
        String text = """
                format: footing-trial/1
                kind: stop
                title: Stops
                a: {name: air}
                b: {name: foam}
                runs:
                  - {side: a, distance: 10 ft, day: 2027-03-02}
                  - {side: b, distance: 11 ft, day: 2027-03-01}
                """;
        TrialReading reading = TrialFile.read(text, "t.yaml");

        assertThat(TrialQuote.of(((TrialReading.Accepted) reading).stated()).title())
                .isEqualTo("Stops (2 runs, 2027-03-01 to 2027-03-02)");
    }
}
