package footing.core.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;

/** A fix that was never seen may still come. */
class FixShareTest {
    private static FixShare plug(Map<String, Integer> counts) {
        return FixShare.of(Map.of("plug", 0.02, "spare", 0.98), counts).stream()
                .filter(s -> s.name().equals("plug"))
                .findFirst()
                .orElseThrow();
    }

    /** 0.1^(1/22) by hand: exp(−2.302585/22) = 0.900628. */
    @Test
    void mostUnseen_noneInTwentyTwo_isTheExactLimit() {
        FixShare share = plug(Map.of("spare", 22));
        assertThat(share.mostUnseen()).isCloseTo(1 - 0.900628, within(1e-6));
        assertThat(Math.pow(1 - share.mostUnseen(), 22)).isCloseTo(0.1, within(1e-12));
    }

    @Test
    void mostUnseen_noFlats_leavesEverythingOpen() {
        assertThat(plug(Map.of()).mostUnseen()).isEqualTo(1);
    }
}
