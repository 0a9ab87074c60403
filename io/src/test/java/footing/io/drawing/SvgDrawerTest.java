package footing.io.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import footing.core.answer.Answer;
import footing.core.answer.Assessment;
import footing.core.answer.Options;
import footing.core.answer.Watch;
import footing.core.answer.Workers;
import footing.core.fleet.Case;
import footing.core.trial.TrialResult;
import footing.io.casefile.CaseFile;
import footing.io.figure.Figure;
import footing.io.figure.FleetFigure;
import footing.io.figure.Kind;
import footing.io.figure.MachineFigures;
import footing.io.figure.PairLines;
import footing.io.trial.StatedTrial;
import footing.io.trial.TrialFile;
import footing.io.trial.TrialReading;
import footing.io.words.Advice;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class SvgDrawerTest {
    private static final int WIDTH = 640;
    private static final SvgDrawer DRAWER = new SvgDrawer();

    private static List<Figure> figures = List.of();

    @BeforeAll
    static void answerTheExample() throws Exception {
        Case stated = CaseFile.read(Path.of("../cases/quillbrook.yaml")).found().orElseThrow();
        Options options = new Options(OptionalInt.of(400), 1, 0.8, false, Optional.of("E1"));
        Answer answer = Assessment.answer(stated, options, Workers.one(), Watch.NOBODY);
        MachineFigures machine = new MachineFigures(answer, Advice.all(answer).get(0));
        StatedTrial trial = ((TrialReading.Accepted) TrialFile.read(Path.of("../cases/trial-day/pull.yaml"))).stated();
        figures = Stream.of(
                        machine.flatByTheClock(),
                        machine.pricesOfAnHour(),
                        Optional.of(machine.overHours()),
                        Optional.of(machine.whereItGoes()),
                        machine.howSure(),
                        machine.whatMovesIt(),
                        machine.byYear(),
                        Optional.of(FleetFigure.of(answer)),
                        PairLines.of(
                                TrialResult.of(trial.trial()), trial.measure().shown(trial.metric())))
                .map(Optional::orElseThrow)
                .toList();
    }

    private static Document parsed(Figure figure) throws Exception {
        byte[] svg = DRAWER.draw(figure, WIDTH).svg().getBytes(StandardCharsets.UTF_8);
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new ByteArrayInputStream(svg));
    }

    private static List<Element> all(Document svg, String name) {
        NodeList found = svg.getElementsByTagName(name);
        return Stream.iterate(0, i -> i < found.getLength(), i -> i + 1)
                .map(i -> (Element) found.item(i))
                .toList();
    }

    @Test
    void figures_drawn_areOfEveryKind() {
        Set<Kind> kinds = figures.stream().map(Figure::kind).collect(Collectors.toSet());
        assertThat(kinds).isEqualTo(EnumSet.allOf(Kind.class));
    }

    @Test
    void draw_anyFigure_isWellFormedAndNamesItsValueAxis() throws Exception {
        for (Figure figure : figures) {
            Document svg = parsed(figure);
            Set<String> texts =
                    all(svg, "text").stream().map(Element::getTextContent).collect(Collectors.toSet());
            assertThat(texts).as(figure.id()).contains(named(figure));
            assertThat(all(svg, "path").size()).as(figure.id()).isGreaterThan(2);
        }
    }

    private static String named(Figure figure) {
        return Set.of(Kind.LINES, Kind.BARS, Kind.PAIRS).contains(figure.kind())
                ? figure.series().get(0).name()
                : figure.places().names().get(0);
    }

    @Test
    void draw_text_isSetByItsBaselineWithoutHalo() throws Exception {
        for (Figure figure : figures) {
            for (Element text : all(parsed(figure), "text")) {
                assertThat(text.getAttribute("dominant-baseline")).isEmpty();
                assertThat(text.getAttribute("stroke")).isEmpty();
                assertThat(Double.parseDouble(text.getAttribute("dy"))).isPositive();
            }
        }
    }

    @Test
    void draw_partsOfACost_areToldApartByPatterns() throws Exception {
        Figure parts = figures.stream()
                .filter(f -> f.id().equals("where-it-goes"))
                .findFirst()
                .orElseThrow();
        assertThat(all(parsed(parts), "pattern").size()).isGreaterThanOrEqualTo(6);
    }

    @Test
    void draw_again_isTheSame() {
        Figure figure = figures.get(0);
        assertThat(DRAWER.draw(figure, WIDTH).svg())
                .isEqualTo(DRAWER.draw(figure, WIDTH).svg());
    }

    @Test
    void ink_gainAndLoss_differInGray() {
        assertThat(gray(Ink.of("--tone-loss")) - gray(Ink.of("--tone-gain"))).isGreaterThan(0.25);
        assertThatThrownBy(() -> Ink.of("--mauve")).hasMessageContaining("--mauve");
    }

    /** Luma after ITU-R BT.601, 0 to 1. */
    private static double gray(String color) {
        int rgb = Integer.parseInt(color.substring(1), 16);
        return (0.299 * (rgb >> 16) + 0.587 * (rgb >> 8 & 255) + 0.114 * (rgb & 255)) / 255;
    }
}
