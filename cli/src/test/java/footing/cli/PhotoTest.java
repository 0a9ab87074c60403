package footing.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import footing.cli.text.Letters;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class PhotoTest {
    @TempDir
    Path folder;

    /** Straight from above, 100 pixels to the inch: a letter sheet with an ellipse 8 by 5 in; a frame with half its lawn bare. */
    @BeforeEach
    void draw() throws IOException {
        picture("print.png", pen -> {
            pen.setColor(Color.WHITE);
            pen.fillRect(100, 100, 1100, 850);
            pen.setColor(Color.BLACK);
            pen.fillOval(250, 275, 800, 500);
        });
        picture("before.png", pen -> lawn(pen, 0));
        picture("after.png", pen -> lawn(pen, 450));
    }

    private static void lawn(Graphics2D pen, int bare) {
        pen.setColor(Color.WHITE);
        pen.fillRect(150, 75, 900, 900);
        pen.setColor(new Color(70, 130, 40));
        pen.fillRect(180, 105, 840, 840);
        pen.setColor(new Color(110, 85, 60));
        pen.fillRect(180, 105, Math.max(0, bare - 30), 840);
    }

    private void picture(String name, java.util.function.Consumer<Graphics2D> draw) throws IOException {
        BufferedImage image = new BufferedImage(1300, 1050, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        pen.setColor(new Color(110, 105, 100));
        pen.fillRect(0, 0, 1300, 1050);
        draw.accept(pen);
        pen.dispose();
        ImageIO.write(image, "png", folder.resolve(name).toFile());
    }

    private Run run(String... args) {
        return Run.in(folder, "", Letters.ASCII, args);
    }

    @Test
    void print_onASheet_saysItsMeasuresAndWritesTheOverlay() {
        Run run = run("photo", "print", "print.png", "--sheet", "letter");

        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("5 in long by 8 in wide, shape exponent 2.", "print-overlay.png", "drawn");
        assertThat(run.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80));
        assertThat(folder.resolve("print-overlay.png")).exists();
    }

    @Test
    void print_asJson_isOneDocument() {
        Run run = run("photo", "print", "print.png", "--sheet", "8.5x11in", "--rolled", "long", "--json");
        JsonNode json = JsonMapper.shared().readTree(run.out());

        assertThat(json.get("format").asString()).isEqualTo("footing-photo/1");
        assertThat(json.get("sure").asBoolean()).isTrue();
        // An ellipse of 8 by 5 in, to the half pixel of its edges.
        assertThat(json.get("print").get("area").asDouble())
                .isCloseTo(Math.PI / 4 * 40 * 0.0254 * 0.0254, within(0.0001));
        assertThat(json.get("print").get("length").asDouble()).isCloseTo(8 * 0.0254, within(0.001));
        assertThat(json.get("print").get("width").asDouble()).isCloseTo(5 * 0.0254, within(0.001));
        assertThat(json.get("corners").size()).isEqualTo(4);
        assertThat(json.get("tried").asString()).contains("drawn pictures only");
    }

    /** The case's own print of 'air' gives way to the one measured; its mean pressure is the load over its area. */
    @Test
    void print_writtenIntoACase_isWhatTheGroundRestsOn() throws IOException {
        Run run = run(
                "photo", "print", "print.png", "--sheet", "letter", "--at-load", "500 lb", "--at-pressure", "12 psi");
        String said = run.out().replaceAll("\\s+", " ");
        String line = said.substring(said.indexOf("print: {"), said.indexOf('}') + 1);
        String text = Files.readString(Path.of(Run.NINE_MACHINES))
                .replace("print: {length: 4.05 in, width: 9.5 in, shape: 4, atLoad: 500 lb, atPressure: 12 psi}", line);
        assertThat(text).contains("atLoad: 500 lb, atPressure: 12 psi}").contains(line);
        String changed = Files.writeString(folder.resolve("case.yaml"), text).toString();

        JsonNode ground = JsonMapper.shared()
                .readTree(run("ground", changed, "E1", "--json").out())
                .at("/packages/0/drive");
        double kilopascals = 500 * 0.45359237 * 9.80665 / (Math.PI / 4 * 40 * 0.0254 * 0.0254) / 1000;
        assertThat(ground.get("meanKilopascals").asDouble()).isCloseTo(kilopascals, within(0.02 * kilopascals));
        assertThat(run("ground", changed, "E1").out().replaceAll("\\s+", " "))
                .contains("Drives of air-24", "measured, by its print");
    }

    @Test
    void print_cornersAndBorderByHand_measuresThem() {
        Run run = run(
                "photo",
                "print",
                "print.png",
                "--sheet",
                "letter",
                "--overlay",
                "mine.png",
                "--corners",
                "100,100 1200,100 1200,950 100,950",
                "--border",
                "300,300 400,300 500,300 600,300 600,400 600,500 600,600 500,600 400,600 300,600 300,500 300,400");

        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("Print area 9 in2", "mine.png");
        assertThat(folder.resolve("mine.png")).exists();
    }

    @Test
    void turf_beforeAndAfter_saysTheTornShare() {
        Run run = run("photo", "turf", "after.png", "--before", "before.png", "--frame", "24x24in");

        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("Torn: 50 %", "0 % before and 50 % after");
        assertThat(folder.resolve("after-overlay.png")).exists();
        assertThat(folder.resolve("before-overlay.png")).exists();
    }

    @Test
    void turf_overlayInAFolder_keepsThePhotosNames() throws IOException {
        Files.createDirectory(folder.resolve("seen"));
        Run run =
                run("photo", "turf", "after.png", "--before", "before.png", "--frame", "24x24in", "--overlay", "seen");

        assertThat(run.code()).isZero();
        assertThat(folder.resolve("seen")).isDirectoryContaining("glob:**/after-overlay.png");
        assertThat(folder.resolve("seen")).isDirectoryContaining("glob:**/before-overlay.png");
        assertThat(folder.resolve("after-overlay.png")).doesNotExist();
    }

    @Test
    void turf_overlayOfOneName_marksThatOfBefore() {
        Run run = run(
                "photo", "turf", "after.png", "--before", "before.png", "--frame", "24x24in", "--overlay", "mine.png");

        assertThat(run.out()).contains("mine-before.png and mine.png");
        assertThat(folder.resolve("mine.png")).exists();
        assertThat(folder.resolve("mine-before.png")).exists();
    }

    /** The lawn's excess green is 0.625, its soil's 0; a level above both takes all for soil. */
    @ParameterizedTest
    @CsvSource({"0.3, 0.5", "0.9, 1", "-0.4, 0"})
    void turf_levelByHand_partsSoilFromTurf(double level, double share) {
        Run run = run("photo", "turf", "after.png", "--frame", "24x24in", "--level", "" + level, "--json");
        JsonNode json = JsonMapper.shared().readTree(run.out());

        assertThat(json.get("level").asDouble()).isEqualTo(level);
        assertThat(json.get("after").asDouble()).isCloseTo(share, within(0.01));
        assertThat(json.get("cornersAfter").size()).isEqualTo(4);
        assertThat(json.get("cornersAfter").get(0).get("x").asDouble()).isCloseTo(150, within(2.0));
    }

    @Test
    void turf_cornersByHand_findsTheFrameThatIsPointedAt() {
        Run run =
                run("photo", "turf", "after.png", "--frame", "24x24in", "--corners", "150,75 1050,75 1050,975 150,975");

        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("Bare soil: 50 %");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "photo print none.png --sheet letter|there is no file none.png",
                "photo print . --sheet letter|it is a folder",
                "photo print print.png|--sheet",
                "photo print print.png --sheet huge|11x8.5in",
                "photo print print.png --sheet 900x900ft|from 2 cm to 5 m",
                "photo print print.png --sheet letter --rolled round|long or short",
                "photo print print.png --sheet letter --corners 1,2|four corners",
                "photo print print.png --sheet letter --corners 1,2,3|pixels",
                "photo print print.png --sheet letter --border 1,2|at least 12",
                "photo print print.png --sheet letter --overlay print.png|over the photo",
                "photo print print.png --sheet letter --overlay no/where.png|in a folder that is there",
                "photo print print.png --sheet letter --at-load heavy|900 lb",
                "photo turf after.png --frame 24x24in --ring wide|two radii",
                "photo turf after.png --frame 24x24in --level 7|from -0.5 to 1",
                "photo turf after.png --frame 24x24in --overlay after.png|over the photo",
                "photo turf after.png|--frame",
                "photo|print or turf"
            })
    void photo_whatCantBeUsed_saysWhatWouldFit(String line, String advice) {
        Run run = run(line.split(" "));

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains(advice);
    }

    @Test
    void print_notAPicture_saysWhatItTakes() throws IOException {
        Files.writeString(folder.resolve("notes.jpg"), "not a picture");
        Run run = run("photo", "print", "notes.jpg", "--sheet", "letter");

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("notes.jpg", "no picture of the kinds JPEG and PNG");
    }
}
