package footing.io.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import footing.core.records.Background;
import footing.core.records.Learned;
import footing.core.records.Learner;
import footing.io.records.Ledger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Figures of what records teach, of an invented log. */
class LearnedFiguresTest {
    private final List<Ledger.Row> rows = new ArrayList<>();

    private void row(String date, String machine, String event, String hours, Map<String, String> more) {
        Map<String, String> cells = new java.util.HashMap<>(more);
        cells.putAll(Map.of("date", date, "machine", machine, "event", event, "hours", hours));
        rows.add(new Ledger.Row("log.csv", rows.size() + 2, cells));
    }

    private Learned learned() {
        Ledger ledger = Ledger.of(rows);
        assertThat(ledger.refused()).isEmpty();
        return Learner.learn(ledger.log(), Background.NONE, 1.6);
    }

    private Learned twoSetsWornOneRunning() {
        Map<String, String> set = Map.of("position", "drive", "assembly", "air-24");
        row("2025-04-01", "A", "begin", "100", Map.of());
        row("2025-04-01", "A", "fit", "100", set);
        row("2025-05-01", "A", "flat", "200", Map.of("position", "drive"));
        row("2025-09-01", "A", "off", "600", Map.of("position", "drive", "assembly", "air-24", "reason", "worn"));
        row("2025-09-01", "A", "fit", "600", set);
        row("2026-06-01", "A", "off", "1400", Map.of("position", "drive", "assembly", "air-24", "reason", "worn"));
        row("2026-06-01", "A", "fit", "1400", set);
        row("2026-09-01", "A", "reading", "1700", Map.of());
        return learned();
    }

    @Test
    void life_twoWornOneRunning_stairsFallWhereSetsWoreOut() {
        Figure figure =
                LivesOfSets.of(twoSetsWornOneRunning().lives().get(0), 1).orElseThrow();
        Series stairs = figure.series().get(1);
        // At 500 h two sets were still under watch, the third had run only 300 h.
        assertThat(stairs.points()).extracting(Point::at).contains(500.0, 800.0);
        Point last = stairs.points().get(stairs.points().size() - 1);
        assertThat(last.at()).isEqualTo(800);
        assertThat(last.value()).isEqualTo(0);
        assertThat(stairs.points().get(2).value()).isCloseTo(0.5, within(1e-12));
    }

    @Test
    void life_curve_fallsFromAllToFewAndHalfWayAtTheMedian() {
        Learned.SetLife life = twoSetsWornOneRunning().lives().get(0);
        List<Point> curve =
                LivesOfSets.of(life, 1).orElseThrow().series().get(0).points();
        assertThat(curve.get(0).value()).isEqualTo(1);
        for (int i = 1; i < curve.size(); i++) {
            assertThat(curve.get(i).value()).isLessThan(curve.get(i - 1).value());
        }
        double median = life.posterior().median().median();
        assertThat(curve).allSatisfy(p -> assertThat(p.value() > 0.5).isEqualTo(p.at() < median));
    }

    @Test
    void life_noSetOfKnownAge_hasNoFigure() {
        row("2025-04-01", "A", "begin", "100", Map.of());
        row("2025-09-01", "A", "off", "600", Map.of("position", "drive", "assembly", "air-24", "reason", "worn"));
        row("2026-09-01", "A", "reading", "1700", Map.of());
        assertThat(learned().lives().stream().flatMap(l -> LivesOfSets.of(l, 1).stream()))
                .isEmpty();
    }

    @Test
    void flats_twoMachines_areDrawnTowardEachOther() {
        row("2025-04-01", "A", "begin", "0", Map.of());
        for (int i = 0; i < 8; i++) {
            row("2025-05-0" + (i + 1), "A", "flat", String.valueOf(50 + i), Map.of());
        }
        row("2025-09-01", "A", "reading", "500", Map.of());
        row("2025-04-01", "B", "begin", "0", Map.of());
        row("2025-09-01", "B", "reading", "500", Map.of());
        Figure figure = FlatsByMachine.of(learned().flats()).orElseThrow();
        List<String> names = figure.places().names();
        assertThat(names).contains("A", "A, its own count alone", "B");
        double shared = figure.series().get(0).points().get(0).value();
        double alone = figure.series().get(1).points().get(0).value();
        assertThat(alone).isCloseTo(16, within(1e-9));
        assertThat(shared).isLessThan(alone);
        assertThat(FigureTable.of(figure).rows()).hasSize(names.size());
    }
}
