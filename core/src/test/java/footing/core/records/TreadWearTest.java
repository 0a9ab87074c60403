package footing.core.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class TreadWearTest {
    private static TreadWear.Readings set(String id) {
        String[] row = DataSet.row("lines.tsv", id);
        return set(id, DataSet.numbers(row[1]), DataSet.numbers(row[2]));
    }

    private static TreadWear.Readings set(String id, double[] hours, double[] depths) {
        return new TreadWear.Readings(
                id,
                Arrays.stream(hours).boxed().toList(),
                Arrays.stream(depths).boxed().toList());
    }

    private static double width(TreadWear.HoursLeft left) {
        return left.limits().high() - left.limits().low();
    }

    /** The constructed case of line.tsv: 561.356 h, 95 % from 552.088 to 571.059, last reading at 410 h (derived). */
    @Test
    void left_singleSet_givesFiellersLimits() {
        TreadWear.Readings tread = set("tread");
        TreadWear.HoursLeft left =
                new TreadWear(List.of(tread)).left(tread, 3, 0.95).orElseThrow();
        assertThat(left.left()).isCloseTo(561.356421356 - 410, within(1e-6));
        assertThat(left.limits().low()).isCloseTo(552.088450906 - 410, within(1e-6));
        assertThat(left.limits().high()).isCloseTo(571.059386374 - 410, within(1e-6));
        assertThat(left.wear()).isCloseTo(0.0142716236722, within(1e-12));
    }

    @Test
    void left_noSlopeToBeTold_isRefused() {
        TreadWear.Readings flat = set("flat");
        assertThat(new TreadWear(List.of(flat)).left(flat, 3, 0.8)).isEmpty();
    }

    @Test
    void left_oneReadingAlone_isRefusedButLeansOnOtherSets() {
        TreadWear.Readings one = set("one", new double[] {100}, new double[] {9.5});
        assertThat(new TreadWear(List.of(one)).left(one, 3, 0.8)).isEmpty();
        TreadWear.Readings like = set("like", new double[] {0, 100, 200, 300}, new double[] {11, 9.6, 8.1, 6.8});
        TreadWear.HoursLeft left = new TreadWear(List.of(set("tread"), like, one))
                .left(one, 3, 0.8)
                .orElseThrow();
        assertThat(left.left()).isBetween(350.0, 600.0);
        assertThat(width(left))
                .isGreaterThan(width(new TreadWear(List.of(set("tread"), like))
                        .left(set("tread"), 3, 0.8)
                        .orElseThrow()));
    }

    /** Sets that wear at different speeds: a new set's answer must be as wide as their differences, not as one line. */
    @Test
    void left_setsThatDiffer_isWiderThanSetsAlike() {
        TreadWear.Readings one = set("one", new double[] {100}, new double[] {9.5});
        double alike = width(new TreadWear(List.of(worn("a", 0.014), worn("b", 0.0141), worn("c", 0.0139), one))
                .left(one, 3, 0.8)
                .orElseThrow());
        double differ = width(new TreadWear(List.of(worn("a", 0.0115), worn("b", 0.014), worn("c", 0.0165), one))
                .left(one, 3, 0.8)
                .orElseThrow());
        assertThat(differ).isGreaterThan(2 * alike);
    }

    private static TreadWear.Readings worn(String id, double perHour) {
        double[] hours = {0, 80, 160, 240, 320};
        double[] off = {0.05, -0.04, 0.02, -0.06, 0.03};
        double[] depths = new double[5];
        for (int i = 0; i < 5; i++) {
            depths[i] = 11 - perHour * hours[i] + off[i];
        }
        return set(id, hours, depths);
    }

    @Test
    void left_alreadyBelowTheLimit_isNothingLeft() {
        TreadWear.Readings tread = set("tread");
        Optional<TreadWear.HoursLeft> left = new TreadWear(List.of(tread)).left(tread, 6, 0.8);
        assertThat(left.orElseThrow().left()).isNegative();
    }
}
