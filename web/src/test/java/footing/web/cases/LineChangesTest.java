package footing.web.cases;

import static org.assertj.core.api.Assertions.assertThat;

import footing.web.cases.LineChanges.Fate;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class LineChangesTest {
    private static List<String> shown(String before, String after) {
        return LineChanges.between(before, after).stream()
                .map(l -> l.sign() + l.text())
                .toList();
    }

    @Test
    void between_aLineChanged_showsItWithItsNeighbors() {
        assertThat(shown("a\nb\nc\nd\ne", "a\nb\nX\nd\ne")).containsExactly(" b", "−c", "+X", " d");
        assertThat(shown("a\nb\nc\nd\ne", "X\nb\nc\nd\nY")).containsExactly("−a", "+X", " b", "⋯", " d", "−e", "+Y");
    }

    @Test
    void between_theSame_isEmpty() {
        assertThat(shown("a\nb", "a\nb")).isEmpty();
        assertThat(LineChanges.count(LineChanges.between("a\nb", "a\nb"))).isZero();
    }

    @Test
    void between_linesPutInAndTakenAway_findsTheFewest() {
        assertThat(shown("a\nb\nc", "b\nc\nd")).containsExactly("−a", " b", " c", "+d");
        assertThat(LineChanges.count(LineChanges.between("a\nb", "a\nb\nc\nd"))).isEqualTo(2);
    }

    @Test
    void between_hugeTexts_callsTheWholeMiddleChanged() {
        String before = "x\n".repeat(5_000);
        String after = "y\n".repeat(5_000);
        assertThat(LineChanges.count(LineChanges.between(before, after))).isEqualTo(5_000);
    }

    @Test
    void between_randomTexts_leadsFromOneToTheOther() {
        SplittableRandom random = new SplittableRandom(7);
        for (int i = 0; i < 300; i++) {
            List<String> a = lines(random);
            List<String> b = lines(random);
            var all = LineChanges.all(String.join("\n", a), String.join("\n", b));
            assertThat(texts(all, Fate.GONE)).isEqualTo(a);
            assertThat(texts(all, Fate.NEW)).isEqualTo(b);
        }
    }

    private static List<String> lines(SplittableRandom random) {
        return random.ints(random.nextInt(1, 9), 0, 4)
                .mapToObj(Integer::toString)
                .toList();
    }

    private static List<String> texts(List<LineChanges.Line> lines, Fate fate) {
        return lines.stream()
                .filter(l -> l.fate() == fate || l.fate() == Fate.SAME)
                .map(LineChanges.Line::text)
                .collect(Collectors.toList());
    }

    @Test
    void time_byDistance_isSaidAsPeopleDo() {
        Instant now = Instant.parse("2027-03-04T14:05:00Z");
        assertThat(Spoken.time(now.minusSeconds(20), now, ZoneOffset.UTC)).isEqualTo("just now");
        assertThat(Spoken.time(now.minusSeconds(3600), now, ZoneOffset.UTC)).isEqualTo("today at 1:05 PM");
        assertThat(Spoken.time(now.minusSeconds(86_400), now, ZoneOffset.UTC)).isEqualTo("Mar 3 at 2:05 PM");
        assertThat(Spoken.time(now.minusSeconds(86_400L * 400), now, ZoneOffset.UTC))
                .isEqualTo("Jan 28, 2026");
        assertThat(Spoken.time(now.plusSeconds(90), now, ZoneOffset.UTC)).isEqualTo("today at 2:06 PM");
    }
}
