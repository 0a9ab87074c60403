package footing.io.figure;

import static org.assertj.core.api.Assertions.assertThat;

import footing.core.trial.TrialResult;
import footing.io.trial.StatedTrial;
import footing.io.trial.TrialFile;
import footing.io.trial.TrialReading;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PairLinesTest {
    private static final String HEAD =
            "format: footing-trial/1\nkind: pull\ntitle: t\na: {name: air}\nb: {name: airless}\nruns:\n";

    private static Optional<Figure> figure(String runs) {
        StatedTrial stated = ((TrialReading.Accepted) TrialFile.read(HEAD + runs, "t.yaml")).stated();
        return PairLines.of(TrialResult.of(stated.trial()), stated.measure().shown(stated.metric()));
    }

    @Test
    void of_pairsOnTwoSurfaces_hasARowForEachPairInItsUnit() {
        Figure figure = figure("""
                - {side: a, steady: 417 lbf, surface: dry}
                - {side: b, steady: 462 lbf, surface: dry}
                - {side: b, steady: 360 lbf, surface: wet}
                - {side: a, steady: 316 lbf, surface: wet}
                """).orElseThrow();
        FigureTable table = FigureTable.of(figure);
        assertThat(table.heads()).containsExactly("pair", "air", "airless");
        assertThat(table.rows())
                .containsExactly(
                        new FigureTable.Row("pair 1, dry", java.util.List.of("417", "462")),
                        new FigureTable.Row("pair 2, wet", java.util.List.of("316", "360")));
        assertThat(figure.values().title()).isEqualTo("Steady pull, lbf");
        assertThat(FigureJson.write(figure)).contains("\"PAIRS\"", "\"MEASURED\"");
    }

    @Test
    void of_oneRunOrOpposedPulls_isNoFigure() {
        assertThat(figure("- {side: a, steady: 417 lbf}\n")).isEmpty();
        assertThat(figure("- {winner: a}\n- {winner: b}\n")).isEmpty();
    }
}
