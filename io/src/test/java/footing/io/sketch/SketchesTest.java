package footing.io.sketch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import footing.core.fitting.FitQuestion;
import footing.core.fitting.SetUp;
import footing.core.fleet.Case;
import footing.core.fleet.Position;
import footing.core.ground.MachineGround;
import footing.core.ground.PackageGround;
import footing.core.ground.Patch;
import footing.core.ground.SlopeLoads;
import footing.core.quantity.Length;
import footing.io.casefile.CaseFile;
import footing.io.words.Quantities;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class SketchesTest {
    private static final Case FLEET = read();

    private static Case read() {
        try {
            return CaseFile.read(Path.of("../cases/quillbrook.yaml")).found().orElseThrow();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Case.WheelPackage wheels(String id) {
        return FLEET.packages().stream()
                .filter(p -> p.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static PackageGround of(MachineGround ground, String id) {
        return ground.packages().stream()
                .filter(p -> p.wheels().id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static List<Sketch> all(boolean si) {
        Sketches sketches = new Sketches(si);
        List<Sketch> all = new ArrayList<>();
        for (Case.Machine m : FLEET.machines()) {
            MachineGround ground = MachineGround.of(FLEET, m.id());
            all.addAll(sketches.prints(ground));
            for (PackageGround p : ground.packages()) {
                Case.WheelPackage w = wheels(p.wheels().id());
                sketches.slope(ground, p).ifPresent(all::add);
                sketches.inflation(p).ifPresent(all::add);
                sketches.deck(SetUp.of(FLEET, m.id(), w, null)).ifPresent(all::add);
                sketches.bolts(FitQuestion.of(FLEET, m.id(), w)).ifPresent(all::add);
            }
        }
        return all;
    }

    private static Document parsed(String svg) {
        try {
            return DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new InputSource(new StringReader(svg)));
        } catch (Exception e) {
            throw new AssertionError(svg, e);
        }
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void sketches_wholeFleet_areSoundAndStayOnTheirSheet(boolean si) {
        List<Sketch> all = all(si);
        assertThat(all).hasSizeGreaterThan(80);
        for (Sketch s : all) {
            for (String svg : List.of(s.onPage(), s.onPaper(1))) {
                assertThat(parsed(svg).getDocumentElement().getTagName()).isEqualTo("svg");
                assertThat(svg).doesNotContain("NaN", "style=", "#0", "rgb(").doesNotContainPattern("(?i)\\bsafe");
            }
            assertThat(s.width()).isLessThanOrEqualTo(320);
            assertThat(s.told()).doesNotContain("null", "?");
            onSheet(s);
        }
    }

    private static void onSheet(Sketch s) {
        NodeList every = parsed(s.onPage()).getElementsByTagName("*");
        for (int i = 0; i < every.getLength(); i++) {
            Element e = (Element) every.item(i);
            for (String name : List.of("x", "x1", "x2", "cx")) {
                inside(e, name, s.width(), s);
            }
            for (String name : List.of("y", "y1", "y2", "cy")) {
                inside(e, name, s.height(), s);
            }
        }
    }

    private static void inside(Element e, String name, double most, Sketch s) {
        if (e.hasAttribute(name)) {
            assertThat(Double.parseDouble(e.getAttribute(name)))
                    .as(s.title() + ": " + name)
                    .isBetween(0.0, most);
        }
    }

    /** Nothing is told by a color: there is one. */
    @Test
    void sketches_colors_areThatOfTheTextAlone() {
        for (Sketch s : all(false)) {
            NodeList every = parsed(s.onPage()).getElementsByTagName("*");
            for (int i = 0; i < every.getLength(); i++) {
                Element e = (Element) every.item(i);
                assertThat(List.of(e.getAttribute("stroke"), e.getAttribute("fill")))
                        .allMatch(c -> c.isEmpty() || c.equals("none") || c.equals("currentColor"));
            }
        }
    }

    private record Box(double wide, double tall) {}

    private static List<Box> outlines(Sketch s) {
        List<Box> boxes = new ArrayList<>();
        NodeList paths = parsed(s.onPage()).getElementsByTagName("path");
        for (int i = 0; i < paths.getLength(); i++) {
            Element e = (Element) paths.item(i);
            if (e.getAttribute("d").endsWith("Z") && e.hasAttribute("fill-opacity")) {
                boxes.add(box(e.getAttribute("d")));
            }
        }
        return boxes;
    }

    private static Box box(String path) {
        double[] x = {Double.MAX_VALUE, -Double.MAX_VALUE};
        double[] y = {Double.MAX_VALUE, -Double.MAX_VALUE};
        for (String spot : path.replaceAll("[MZ]", "").split("L", -1)) {
            String[] xy = spot.strip().split(" ", -1);
            x[0] = Math.min(x[0], Double.parseDouble(xy[0]));
            x[1] = Math.max(x[1], Double.parseDouble(xy[0]));
            y[0] = Math.min(y[0], Double.parseDouble(xy[1]));
            y[1] = Math.max(y[1], Double.parseDouble(xy[1]));
        }
        return new Box(x[1] - x[0], y[1] - y[0]);
    }

    /** One unit of every drawing is the same length of ground. */
    @Test
    void prints_allPackages_areDrawnAtOneScale() {
        MachineGround ground = MachineGround.of(FLEET, "E1");
        List<Sketch> prints = new Sketches(false).prints(ground);
        assertThat(prints).hasSize(5);
        Double scale = null;
        for (int i = 0; i < prints.size(); i++) {
            List<Box> boxes = outlines(prints.get(i));
            assertThat(boxes).hasSize(2);
            for (Position position : Position.values()) {
                Patch patch = ground.packages().get(i).patch(position).value().orElseThrow();
                Box box = boxes.get(position == Position.DRIVE ? 0 : 1);
                double across = box.wide() / meters(patch.width());
                assertThat(box.tall() / meters(patch.length())).isCloseTo(across, within(0.01 * across));
                scale = scale == null ? across : scale;
                assertThat(across).isCloseTo(scale, within(0.01 * scale));
            }
        }
    }

    private static double meters(@org.jspecify.annotations.Nullable Length x) {
        return Objects.requireNonNull(x).meters();
    }

    @Test
    void slope_E1_isTiltedByItsCeilingAndNamesItsLoads() {
        MachineGround ground = MachineGround.of(FLEET, "E1");
        Sketch s = new Sketches(false).slope(ground, of(ground, "airless-24")).orElseThrow();
        Element slope =
                (Element) parsed(s.onPage()).getElementsByTagName("line").item(0);
        double dx = Double.parseDouble(slope.getAttribute("x2")) - Double.parseDouble(slope.getAttribute("x1"));
        double dy = Double.parseDouble(slope.getAttribute("y2")) - Double.parseDouble(slope.getAttribute("y1"));

        assertThat(Math.toDegrees(Math.atan2(dy, dx))).isCloseTo(15, within(0.1));
        String down = new Quantities(false)
                .mass(of(ground, "airless-24")
                        .stance()
                        .then(x -> SlopeLoads.across(x, ground.ceiling()))
                        .value()
                        .orElseThrow()
                        .lower());
        assertThat(s.told()).contains("downhill wheels would carry " + down);
        assertThat(s.marks()).contains(">" + down + "<");
    }

    @Test
    void sketches_nothingMeasured_areLeftOut() throws IOException {
        Case plain = CaseFile.read(Files.readString(Path.of("../cases/one-machine.yaml")), "case")
                .found()
                .orElseThrow();
        Sketches sketches = new Sketches(false);
        Case.Machine m = plain.machines().get(0);
        MachineGround ground = MachineGround.of(plain, m.id());

        assertThat(sketches.prints(ground)).isEmpty();
        assertThat(sketches.slope(ground, ground.carried())).isEmpty();
        assertThat(sketches.deck(SetUp.of(plain, m.id(), m.carries(), null))).isEmpty();
        assertThat(sketches.bolts(FitQuestion.of(plain, m.id(), m.carries()))).isEmpty();
        assertThat(sketches.inflation(ground.carried())).isEmpty();
    }
}
