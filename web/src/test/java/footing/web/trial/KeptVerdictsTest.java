package footing.web.trial;

import static org.assertj.core.api.Assertions.assertThat;

import footing.web.serve.Served;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Verdicts of kept trials beside the money. */
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
}
