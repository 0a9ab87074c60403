package footing.io.words;

import static org.assertj.core.api.Assertions.assertThat;

import footing.core.records.FixShare;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What the records say of a fix, and what they leave open. */
class LearnedWordsTest {
    private static String told(String name) {
        return FixShare.of(Map.of("plug", 0.9, "call-out", 0.1), Map.of("plug", 22)).stream()
                .filter(s -> s.name().equals(name))
                .map(s -> LearnedWords.fix(s, List.of()))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void fix_neverSeen_isNotToldAsNothing() {
        assertThat(told("call-out"))
                .startsWith("call-out: not once; that leaves room for up to 10 % of flats (one time in ten it is more)")
                .doesNotContain("0 % to 0 %");
    }

    @Test
    void fix_seen_tellsCountMeanAndLimits() {
        assertThat(told("plug")).startsWith("plug: 22 times, 100 % of flats, four in five that it is 99 % to 100 %");
    }
}
