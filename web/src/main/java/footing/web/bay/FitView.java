package footing.web.bay;

import footing.core.fitting.Fit;
import footing.core.fitting.FitQuestion;
import footing.core.fitting.Measured;
import footing.core.fitting.SetUp;
import footing.core.ground.MachineGround;
import footing.io.sketch.Sketch;
import footing.io.sketch.Sketches;
import footing.io.words.Cautions;
import footing.io.words.FitWords;
import footing.io.words.GroundTables;
import footing.io.words.Lacking;
import footing.io.words.SetUpWords;
import footing.io.words.SlopeCaution;
import java.util.ArrayList;
import java.util.List;

/** Whether wheels fit a machine, what they change on it, and what was measured after fitting. */
record FitView(
        String verdict,
        List<GroundTables.Row> tests,
        List<ToMeasure> open,
        List<SetUpWords.Line> changes,
        List<SetUpWords.Line> turns,
        List<SetUpWords.Line> judged,
        List<Sketch> sketches,
        List<ToMeasure> lacking,
        List<String> cautions,
        String slopeCaution) {
    static FitView of(Bench bench, MeasurePanel panel) {
        String id = bench.machine().id();
        FitQuestion question = FitQuestion.of(bench.stated(), id, bench.wheels());
        Fit fit = Fit.of(question);
        SetUp setUp = SetUp.of(bench.stated(), id, bench.wheels(), null);
        Lacking lacking = new Lacking();
        SetUpWords say = new SetUpWords(bench.si(), lacking);
        List<SetUpWords.Line> changes = say.changes(setUp);
        List<SetUpWords.Line> turns = say.turns(setUp);
        return new FitView(
                FitWords.verdict(fit.verdict()),
                tests(fit, bench.si()),
                ToMeasure.of(fit, panel),
                changes,
                turns,
                Measured.kept(bench.machine(), setUp).stream().map(say::judged).toList(),
                sketches(question, setUp, bench.si()),
                ToMeasure.of(lacking, panel, bench.stated()),
                Cautions.AT_WORK,
                SlopeCaution.of(MachineGround.of(bench.stated(), id)));
    }

    private static List<GroundTables.Row> tests(Fit fit, boolean si) {
        FitWords say = new FitWords(si);
        return fit.findings().stream()
                .map(f -> new GroundTables.Row(
                        FitWords.subject(f), List.of(say.numbers(f), say.margin(f), FitWords.verdict(f.verdict()))))
                .toList();
    }

    private static List<Sketch> sketches(FitQuestion question, SetUp setUp, boolean si) {
        Sketches draw = new Sketches(si);
        List<Sketch> all = new ArrayList<>();
        draw.bolts(question).ifPresent(all::add);
        draw.deck(setUp).ifPresent(all::add);
        return all;
    }
}
