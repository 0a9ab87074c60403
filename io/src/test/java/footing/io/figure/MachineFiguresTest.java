package footing.io.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import footing.core.answer.Answer;
import footing.core.answer.Assessment;
import footing.core.answer.EntryAnswer;
import footing.core.answer.MachineAnswer;
import footing.core.answer.Options;
import footing.core.answer.Watch;
import footing.core.answer.Workers;
import footing.core.fleet.Case;
import footing.core.future.Parts;
import footing.io.casefile.CaseFile;
import footing.io.words.Advice;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class MachineFiguresTest {
    private static final double MONEY = 1e-6;

    private static Answer answer;
    private static Advice advice;
    private static MachineFigures figures;

    @BeforeAll
    static void answerTheExample() throws IOException {
        Case stated = CaseFile.read(Path.of("../cases/quillbrook.yaml")).found().orElseThrow();
        Options options = new Options(OptionalInt.of(600), 1, 0.8, false, Optional.of("E1"));
        answer = Assessment.answer(stated, options, Workers.one(), Watch.NOBODY);
        advice = Advice.all(answer).get(0);
        figures = new MachineFigures(answer, advice);
    }

    private static MachineAnswer machine() {
        return advice.machine();
    }

    private static EntryAnswer about() {
        return Objects.requireNonNull(advice.about());
    }

    private static Series series(Figure figure, int i) {
        return figure.series().get(i);
    }

    private static double last(Series s) {
        return s.points().get(s.points().size() - 1).value();
    }

    private static List<Figure> all() {
        return Stream.of(
                        figures.flatByTheClock(),
                        figures.pricesOfAnHour(),
                        Optional.of(figures.overHours()),
                        Optional.of(figures.whereItGoes()),
                        figures.howSure(),
                        figures.whatMovesIt(),
                        figures.byYear(),
                        Optional.of(FleetFigure.of(answer)))
                .map(Optional::orElseThrow)
                .toList();
    }

    @Test
    void overHours_everyEntry_startsAtItsPurchaseAndEndsAtItsMeanCost() {
        List<Series> lines = shaped(figures.overHours(), Shape.LINE);
        assertThat(lines).hasSameSizeAs(machine().entries());
        assertThat(lines.get(0).points().get(0).value())
                .isEqualTo(machine().carried().parts().purchase());
        assertThat(last(lines.get(0))).isCloseTo(machine().carried().cost().mean(), within(MONEY));
        assertThat(lines.get(1).points().get(0).value())
                .isEqualTo(about().parts().purchase());
        assertThat(last(lines.get(1))).isCloseTo(about().cost().mean(), within(MONEY));
    }

    private static List<Series> shaped(Figure figure, Shape shape) {
        return figure.series().stream().filter(s -> s.shape() == shape).toList();
    }

    @Test
    void overHours_bands_surroundWhatItHasAndTheChangeAndEndAtTheirPercentiles() {
        List<Series> lines = shaped(figures.overHours(), Shape.LINE);
        List<Series> bands = shaped(figures.overHours(), Shape.BAND);
        assertThat(bands).hasSize(2);
        for (int b = 0; b < bands.size(); b++) {
            EntryAnswer entry = b == 0 ? machine().carried() : about();
            List<Point> points = bands.get(b).points();
            assertThat(bands.get(b).name()).isEqualTo(lines.get(b).name());
            assertThat(points).hasSameSizeAs(lines.get(b).points());
            for (int i = 0; i < points.size(); i++) {
                Point.Span edges = Objects.requireNonNull(points.get(i).span());
                assertThat(edges.from()).isLessThanOrEqualTo(edges.to());
                assertThat(points.get(i).at())
                        .isEqualTo(lines.get(b).points().get(i).at());
                assertThat(points.get(i).value())
                        .isCloseTo(lines.get(b).points().get(i).value(), within(MONEY));
            }
            Point.Span last =
                    Objects.requireNonNull(points.get(points.size() - 1).span());
            assertThat(last.from()).isCloseTo(entry.cost().p10(), within(MONEY));
            assertThat(last.to()).isCloseTo(entry.cost().p90(), within(MONEY));
        }
    }

    @Test
    void overHours_quickAnswer_hasNoBandsAndSaysWhereToLook() {
        Options quick = new Options(OptionalInt.of(50), 1, 0.8, true, Optional.of("E1"));
        Answer rough = Assessment.answer(answer.of(), quick, Workers.one(), Watch.NOBODY);
        Figure figure = new MachineFigures(rough, Advice.all(rough).get(0)).overHours();

        assertThat(shaped(figure, Shape.BAND)).isEmpty();
        assertThat(figure.caption()).contains("Lines are averages alone");
        assertThat(figures.overHours().caption()).contains("eight in ten").contains("first 600");
    }

    @Test
    void overHours_carriedEntry_aloneIsDashed() {
        List<Series> lines = shaped(figures.overHours(), Shape.LINE);
        assertThat(lines.get(0).stroke()).isEqualTo(Stroke.DASHED);
        assertThat(lines.get(0).tone()).isEqualTo(Tone.CARRIED);
        assertThat(lines.subList(1, lines.size())).extracting(Series::stroke).doesNotContain(Stroke.DASHED);
    }

    @Test
    void whereItGoes_partsOfEachEntry_addUpToItsCost() {
        Figure figure = figures.whereItGoes();
        List<Double> costs =
                machine().entries().stream().map(e -> e.cost().mean()).sorted().toList();
        for (int at = 0; at < costs.size(); at++) {
            int place = at;
            double sum = figure.series().stream()
                    .mapToDouble(s -> s.points().get(place).value())
                    .sum();
            assertThat(sum).isCloseTo(costs.get(at), within(MONEY));
        }
    }

    @Test
    void howSure_shares_agreeWithTheChanceAndLeaveOutTheOutermost() {
        Figure figure = figures.howSure().orElseThrow();
        double gain =
                series(figure, 1).points().stream().mapToDouble(Point::value).sum();
        double loss =
                series(figure, 0).points().stream().mapToDouble(Point::value).sum();
        assertThat(gain + loss).isBetween(0.985, 1.0);
        assertThat(gain).isCloseTo(about().saving().chance(), within(0.011));
        assertThat(series(figure, 0).points())
                .allSatisfy(
                        p -> assertThat(Objects.requireNonNull(p.span()).to()).isLessThanOrEqualTo(0));
        assertThat(figure.marks().get(1).value()).isEqualTo(about().saving().mean());
    }

    @Test
    void whatMovesIt_bars_runFromTheSavingAtLowToThatAtHigh() {
        Figure figure = figures.whatMovesIt().orElseThrow();
        List<MachineAnswer.Driver> drivers = Objects.requireNonNull(machine().drivers());
        MachineAnswer.Driver most = drivers.stream()
                .max(java.util.Comparator.comparingDouble(MachineAnswer.Driver::swing))
                .orElseThrow();
        Point.Span span =
                Objects.requireNonNull(series(figure, 0).points().get(0).span());
        assertThat(span.from()).isEqualTo(most.savingAtLow());
        assertThat(span.to()).isEqualTo(most.savingAtHigh());
    }

    @Test
    void pricesOfAnHour_levels_areThoseOfTheAnswer() {
        Figure figure = figures.pricesOfAnHour().orElseThrow();
        List<Double> drawn = figure.series().stream()
                .flatMap(s -> s.points().stream())
                .sorted(java.util.Comparator.comparingDouble(Point::at))
                .map(Point::value)
                .toList();
        assertThat(drawn)
                .isEqualTo(
                        about().levels().stream().map(EntryAnswer.Level::mean).toList());
    }

    @Test
    void byYear_differences_areAddedUpByTheLine() {
        Figure figure = figures.byYear().orElseThrow();
        double asItIs = sum(machine().carried());
        double changed = sum(about());
        assertThat(last(series(figure, 2))).isCloseTo(asItIs - changed, within(MONEY));
    }

    private static double sum(EntryAnswer entry) {
        return entry.yearly().values().stream().mapToDouble(Parts::cost).sum();
    }

    @Test
    void fleet_row_isTheRangeOfTheSaving() {
        Point row = series(FleetFigure.of(answer), 0).points().get(0);
        assertThat(row.value()).isEqualTo(about().saving().mean());
        assertThat(row.span())
                .isEqualTo(
                        new Point.Span(about().saving().p10(), about().saving().p90(), "", ""));
    }

    @Test
    void flatByTheClock_minutes_addUpAndFollowFromTheMoney() {
        var crew = machine().machine().crew();
        Objects.requireNonNull(machine().costPerFlat()).fixes().forEach(fix -> {
            FlatByTheClock flat = FlatByTheClock.of(crew, fix);
            assertThat(flat.madeUp() + flat.lost()).isCloseTo(flat.pushedBack(), within(1e-9));
            assertThat(flat.lost() / 60 * crew.billing() * (1 - crew.variableCost()))
                    .isCloseTo(fix.lost(), within(MONEY));
            double hour = crew.hourlyCost() * (1 + crew.overtimePremium());
            assertThat((flat.madeUp() * crew.people() + flat.after()) / 60 * hour)
                    .isCloseTo(fix.paid(), within(MONEY));
        });
    }

    @Test
    void table_everyFigure_hasARowForEachPlaceAndACellForEachColumn() {
        for (Figure figure : all()) {
            FigureTable table = FigureTable.of(figure);
            assertThat(table.rows()).as(figure.id()).isNotEmpty();
            assertThat(table.rows())
                    .as(figure.id())
                    .allSatisfy(r -> assertThat(r.cells()).hasSize(table.heads().size() - 1));
            List<String> cells =
                    table.rows().stream().flatMap(r -> r.cells().stream()).toList();
            figure.series()
                    .forEach(s -> s.points()
                            .forEach(p -> assertThat(cells)
                                    .as(figure.id())
                                    .anySatisfy(c -> assertThat(c).contains(written(figure, p)))));
        }
    }

    private static String written(Figure figure, Point p) {
        Point.Span span = p.span();
        double value = figure.kind() == Kind.TIMELINE && span != null ? span.to() : p.value();
        return figure.values().write(value);
    }

    @Test
    void json_everyFigure_hasItsValues() {
        for (Figure figure : all()) {
            JsonNode json = JsonMapper.shared().readTree(FigureJson.write(figure));
            assertThat(json.at("/id").asString()).isEqualTo(figure.id());
            assertThat(json.at("/series/0/points/0/value").asDouble())
                    .isEqualTo(figure.series().get(0).points().get(0).value());
        }
    }
}
