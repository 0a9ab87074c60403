package footing.web.trial;

import static org.assertj.core.api.Assertions.assertThat;

import footing.web.serve.Served;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Verdicts of kept trials beside the money, and their prints in what is said of the ground. */
class KeptVerdictsTest extends Served {
    private static final Path PULL =
            Path.of("..", "cases", "trial-day", "pull.yaml").toAbsolutePath().normalize();

    private final TrialVisit visit = new TrialVisit(visitor());

    private String answer(String of) {
        return visitor().get("/cases/" + visit.id + of).body();
    }

    @Test
    void answer_caseWithATrial_quotesItBesideTheMoneyOfFleetAndMachine() throws IOException {
        assertThat(answer("")).doesNotContain("Tried side by side");

        visit.handOver("pull.yaml", Files.readString(PULL));
        String begun = visit.begin(TrialVisit.beginning());

        assertThat(answer(""))
                .containsSubsequence(
                        "id=\"sentence\"",
                        "Tried side by side",
                        "No money on this page rests on it",
                        "(24 runs, 2027-02-06): Airless is better",
                        "no slope is called safe",
                        "operator&#39;s manual");
        assertThat(answer("/machines/E1")).contains("(24 runs, 2027-02-06): Airless is better");
        assertThat(answer("")).doesNotContain("air against airless (");

        visit.writeAll(begun, Map.of("air", 410.0, "airless", 470.0));
        assertThat(answer("")).contains("air against airless (4 runs");
    }

    @Test
    void ground_caseWithPrints_restsOnThoseAtItsPressure() {
        String prints = """
                format: footing-trial/1
                kind: print
                title: Prints of two tires
                a: {name: drive20-air, pressure: 12 psi, atLoad: 415 lb, day: 2027-02-06}
                b: {name: drive24-air, pressure: 20 psi, atLoad: 500 lb}
                runs:
                  - {side: a, length: 5 in, width: 8 in, area: 37 in2}
                  - {side: b, length: 4 in, width: 9 in, area: 33 in2}
                """;
        assertThat(answer("/machines/S1/ground")).doesNotContain("Prints of two tires");

        visit.handOver("prints.yaml", prints);

        assertThat(answer("/machines/S1/ground"))
                .contains("The print of drive20-air was measured: one print on 2027-02-06", "Prints of two tires")
                .contains("of drive24-air in the trials changes nothing: taken at another pressure")
                .contains("<td>37 sq in");
    }
}
