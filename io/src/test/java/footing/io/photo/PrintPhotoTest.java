package footing.io.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import footing.core.ground.PrintOutline;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PrintPhotoTest {
    private static final double LIMIT = 0.03;

    private static PrintSeen read(Shots.Shot shot) {
        return (PrintSeen) PrintPhoto.read(Shots.jpeg(shot.image(), 0.9f), PrintAsked.of(shot.card()));
    }

    private static double off(PrintSeen seen, Shots.Shot shot) {
        PrintOutline print = seen.print();
        return print == null ? Double.NaN : Math.abs(print.area() / shot.print().area() - 1);
    }

    /** Counts those that are sure and right; collects those that are sure and wrong. */
    private static int right(int shots, Function<Random, Shots.Shot> drawn, List<String> wrong) {
        int right = 0;
        for (int i = 0; i < shots; i++) {
            Shots.Shot shot = drawn.apply(new Random(i * 7919L * 104_729L));
            PrintSeen seen = read(shot);
            double off = off(seen, shot);
            if (seen.isSure() && off <= LIMIT) {
                right++;
            } else if (seen.isSure()) {
                wrong.add("shot " + i + " is off by " + off);
            }
        }
        return right;
    }

    @Test
    void read_twoHundredSheets_areaWithinThreePercentOrUnsure() {
        List<String> wrong = new ArrayList<>();

        int right = right(200, Shots::onSheet, wrong);

        assertThat(wrong).isEmpty();
        assertThat(right).isGreaterThanOrEqualTo(190);
    }

    @Test
    void read_besideACard_areaWithinThreePercentOrUnsure() {
        List<String> wrong = new ArrayList<>();

        int right = right(40, Shots::besideCard, wrong);

        assertThat(wrong).isEmpty();
        assertThat(right).isGreaterThanOrEqualTo(28);
    }

    @Test
    void read_plainSheet_measuresAndPlacesTheBorder() {
        Shots.Shot shot = Shots.plain(0);

        PrintSeen seen = read(shot);

        assertThat(seen.isSure()).isTrue();
        PrintOutline print = Objects.requireNonNull(seen.print());
        assertThat(print.length()).isCloseTo(0.12, within(0.0012));
        assertThat(print.width()).isCloseTo(0.18, within(0.0018));
        assertThat(print.shape()).isCloseTo(3, within(0.3));
        assertThat(seen.corners())
                .allSatisfy(c -> assertThat(Shots.corners(shot).stream()
                                .mapToDouble(t -> t.to(c))
                                .min()
                                .orElseThrow())
                        .isLessThan(1));
        Spot middle = shot.camera().seen(shot.print().print[0], shot.print().print[1]);
        assertThat(seen.border().stream().mapToDouble(Spot::x).average().orElseThrow())
                .isCloseTo(middle.x(), within(3.0));
        assertThat(seen.overlay().png()).startsWith(0x89, 'P', 'N', 'G');
    }

    @ParameterizedTest
    @EnumSource(Orientation.class)
    void read_anyOrientation_measuresTheUprightPicture(Orientation orientation) {
        Shots.Shot shot = Shots.plain(10);
        byte[] file = Shots.stored(shot.image(), orientation);

        PrintSeen seen = (PrintSeen) PrintPhoto.read(file, PrintAsked.of(shot.card()));

        assertThat(off(seen, shot)).isLessThan(0.01);
        Spot middle = shot.camera().seen(shot.print().print[0], shot.print().print[1]);
        assertThat(seen.border().stream().mapToDouble(Spot::x).average().orElseThrow())
                .isCloseTo(middle.x(), within(4.0));
    }

    @Test
    void read_cornersAndBorderByHand_measuresWhatIsPointedAt() {
        Shots.Shot shot = Shots.plain(15);
        List<Spot> border = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            double t = 2 * Math.PI * i / 60;
            border.add(shot.camera().seen(0.14 + 0.05 * Math.cos(t), 0.11 + 0.05 * Math.sin(t)));
        }

        PrintSeen seen = (PrintSeen) PrintPhoto.read(
                Shots.jpeg(shot.image(), 0.9f),
                new PrintAsked(shot.card(), PrintAsked.Rolling.SHORT_SIDE, Shots.corners(shot), border));

        PrintOutline print = Objects.requireNonNull(seen.print());
        assertThat(print.area()).isCloseTo(Math.PI * 0.05 * 0.05, within(0.0001));
        assertThat(print.shape()).isCloseTo(2, within(0.2));
    }

    @Test
    void read_noCard_saysSoAndShowsThePicture() {
        Shots.Shot shot = Shots.plain(0);
        shot.print().paper = shot.print().floor;

        PrintSeen seen = read(shot.again());

        assertThat(seen.doubts()).containsExactly(Doubt.NO_CARD);
        assertThat(seen.overlay().png()).isNotEmpty();
    }

    @Test
    void read_emptySheet_isNotSure() {
        Shots.Shot shot = Shots.plain(0);
        shot.print().ink = shot.print().paper;

        assertThat(read(shot.again()).isSure()).isFalse();
    }

    @Test
    void read_fisheye_isNotSure() {
        Shots.Shot shot = Shots.plain(0);
        shot.camera().bend = 0.6;

        assertThat(read(shot.again()).isSure()).isFalse();
    }

    @Test
    void read_printTouchingTheRim_isNotSure() {
        Shots.Shot shot = Shots.plain(0);
        shot.print().print[0] = 0.04;

        assertThat(read(shot.again()).isSure()).isFalse();
    }
}
