package footing.io.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import footing.core.ground.TakenPrint;
import footing.core.quantity.Pressure;
import footing.core.trial.TrialResult;
import footing.io.form.Problem;
import footing.io.photo.Doubt;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.json.JsonMapper;

/** Runs that name photos: those of the example, whose print is 120 by 180 mm and whose turn tore 30 % of the ring. */
class PhotographedTrialsTest {
    private static final String PRINTS = """
            format: footing-trial/1
            kind: print
            title: Prints
            sheet: {width: 11 in, height: 8.5 in}
            a: {name: air, assembly: drive, pressure: 12 psi, atLoad: 400 lb, day: 2027-02-06}
            b: {name: foam, atLoad: 410 lb}
            runs:
              - {side: a, photo: print.jpg}
              - {side: b, area: 30 in2}
            """;

    @TempDir
    Path folder;

    @BeforeEach
    void copy() throws IOException {
        for (String name : List.of("print.jpg", "turn-before.jpg", "turn-after.jpg")) {
            Files.copy(TrialFileTest.DAY.resolve("photos").resolve(name), folder.resolve(name));
        }
    }

    private TrialReading read(String text) throws IOException {
        return TrialFile.read(Files.writeString(folder.resolve("trial.yaml"), text));
    }

    private StatedTrial accepted(String text) throws IOException {
        TrialReading reading = read(text);
        assertThat(reading).as(reading.toString()).isInstanceOf(TrialReading.Accepted.class);
        return ((TrialReading.Accepted) reading).stated();
    }

    private List<Problem> refused(String text) throws IOException {
        TrialReading reading = read(text);
        assertThat(reading).isInstanceOf(TrialReading.Refused.class);
        return ((TrialReading.Refused) reading).problems();
    }

    @Test
    void read_runThatNamesAPhoto_isMeasuredOnReading() throws IOException {
        StatedTrial stated = accepted(PRINTS);

        double area = footing.core.ground.SuperEllipse.area(0.12, 0.18, 3);
        assertThat(stated.trial().runs().get(0).value()).isCloseTo(area, within(0.03 * area));
        assertThat(stated.evidence().photos()).isEqualTo(1);
        assertThat(stated.evidence().doubts()).isEmpty();
        TakenPrint print = stated.evidence().prints().get(0);
        assertThat(stated.evidence().prints()).hasSize(1);
        assertThat(print.assembly()).isEqualTo("drive");
        assertThat(print.outline().length().meters()).isCloseTo(0.12, within(0.003));
        assertThat(print.outline().width().meters()).isCloseTo(0.18, within(0.003));
        assertThat(print.inflation()).isEqualTo(Pressure.ofPsi(12));
        assertThat(print.taken()).isEqualTo(new TakenPrint.Taken("Prints", "2027-02-06"));
        String json = TrialJson.of(stated, TrialResult.of(stated.trial()), List.of());
        assertThat(JsonMapper.shared().readTree(json).at("/photos/tried").asString())
                .contains("drawn pictures only");
    }

    @ParameterizedTest
    @CsvSource({"length, 0.12, 0.003", "width, 0.18, 0.003", "exponent, 3, 0.4"})
    void read_otherMeasureJudged_isTakenOffThePhoto(String judge, double value, double within) throws IOException {
        String text = PRINTS.replace("area: 30 in2", "length: 4 in, width: 7 in, exponent: 3")
                .replace("title: Prints", "title: Prints\njudge: " + judge);

        assertThat(accepted(text).trial().runs().get(0).value()).isCloseTo(value, within(within));
    }

    @Test
    void read_valueWrittenBesideAPhoto_countsBeforeIt() throws IOException {
        StatedTrial stated =
                accepted(PRINTS.replace("photo: print.jpg", "photo: print.jpg, length: 5 in, area: 31 in2"));

        assertThat(stated.trial().runs().get(0).value()).isCloseTo(31 * 0.0254 * 0.0254, within(1e-9));
        assertThat(stated.evidence().prints().get(0).outline().length().inches())
                .isCloseTo(5, within(1e-9));
    }

    /** A print off an unsure photo is judged, with its doubt told, but never stands in a case. */
    @Test
    void read_unsurePhoto_tellsItsDoubtAndFeedsNoCase() throws IOException {
        StatedTrial stated = accepted(PRINTS.replace(
                "photo: print.jpg",
                "photo: print.jpg, border: \"500,400 510,400 520,400 530,400 530,410 530,420 530,430 520,430 510,430"
                        + " 500,430 500,420 500,410\""));

        assertThat(stated.evidence().doubts()).contains(new StatedTrial.PhotoNote(1, "print.jpg", Doubt.SMALL));
        assertThat(stated.evidence().prints()).isEmpty();
    }

    @Test
    void read_turnsThatNamePhotos_giveTheTornShare() throws IOException {
        StatedTrial stated = accepted("""
                format: footing-trial/1
                kind: pivot
                title: Turns
                frame: {width: 600 mm, height: 600 mm}
                ring: {inner: 60 mm, outer: 220 mm}
                a: {name: air}
                b: {name: foam}
                runs:
                  - {side: a, photo: turn-after.jpg, photoBefore: turn-before.jpg}
                  - {side: b, torn: 40 %}
                """);

        assertThat(stated.trial().runs().get(0).value()).isCloseTo(0.30, within(0.05));
        assertThat(stated.evidence().photos()).isEqualTo(2);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "photo: print.jpg|photo: none.jpg|there is no such file beside the trial file",
                "photo: print.jpg|photo: ../print.jpg|there is no such file beside the trial file",
                "photo: print.jpg|photo: notes.jpg|no picture of the kinds JPEG and PNG",
                "photo: print.jpg|photo: gray.png|nothing was measured on it",
                "photo: print.jpg|photo: print.jpg, corners: \"1,2 3,4\"|four corners",
                "photo: print.jpg|photo: print.jpg, border: here|a border of at least 12 places",
                "width: 11 in, height: 8.5 in|width: 11 in, height: 90 m|sides from 2 cm to 5 m",
                "sheet:|frame:|no such key",
                "photo: print.jpg|phot: print.jpg|did you mean",
                "atLoad: 400 lb|atLoad: 400 psi|mass"
            })
    void read_whatIsWrongAboutPhotos_isToldWithItsPlace(String was, String is, String told) throws IOException {
        Files.writeString(folder.resolve("notes.jpg"), "not a picture");
        BufferedImage gray = new BufferedImage(300, 200, BufferedImage.TYPE_INT_RGB);
        ImageIO.write(gray, "png", folder.resolve("gray.png").toFile());

        List<Problem> problems = refused(PRINTS.replace(was, is));

        assertThat(problems).anySatisfy(p -> {
            assertThat(p.toString()).contains(told);
            assertThat(p.line()).isPositive();
        });
    }

    @Test
    void read_photosWithoutASize_isToldOnceForAll() throws IOException {
        String text = PRINTS.replace("sheet: {width: 11 in, height: 8.5 in}\n", "")
                .replace("area: 30 in2", "photo: print.jpg");

        assertThat(refused(text))
                .singleElement()
                .satisfies(p -> assertThat(p.toString()).contains("need the size of their sheet"));
    }
}
