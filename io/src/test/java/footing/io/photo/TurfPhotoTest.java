package footing.io.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import footing.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class TurfPhotoTest {
    private static final Card FRAME = new Card(new Length(0.6), new Length(0.6), Card.Place.UNDER);
    private static final int LAWNS = 100;
    private static final double[] RING = {0.06, 0.22};
    private static final TurfAsked ASKED = new TurfAsked(
            FRAME,
            new TurfAsked.Ring(new Length(RING[0]), new Length(RING[1])),
            TurfAsked.ByHand.NOTHING,
            TurfAsked.ByHand.NOTHING);

    private static byte[] photo(Random random, long lawn, double bare) {
        double[] angles = {25 * random.nextDouble(), 360 * random.nextDouble(), 20 * random.nextDouble()};
        DrawnCamera camera = new DrawnCamera(900, 700, random, new double[] {0.3, 0.3}, 1.1, angles);
        camera.noise = 1 + 5 * random.nextDouble();
        if (random.nextBoolean()) {
            camera.shadow = new double[] {1, 0.3, 0.6 * random.nextDouble(), 0.4 + 0.4 * random.nextDouble()};
        }
        return Shots.jpeg(camera.take(new DrawnTurf(new Random(lawn), 0.6, RING, bare)), 0.9f);
    }

    @Test
    void read_drawnLawns_shareWithinFivePointsOrUnsure() {
        List<String> wrong = new ArrayList<>();
        int right = 0;
        for (int i = 0; i < LAWNS; i++) {
            Random random = new Random(i * 7919L * 104_729L);
            double was = 0.1 * random.nextDouble();
            double is = was + 0.7 * random.nextDouble();
            TurfSeen seen = (TurfSeen) TurfPhoto.read(photo(random, i, was), photo(random, i, is), ASKED);
            Double torn = seen.torn();
            if (seen.isSure() && torn != null && Math.abs(torn - (is - was)) > 0.05) {
                wrong.add("lawn " + i + ": " + torn + " for " + (is - was));
            } else if (seen.isSure()) {
                right++;
            }
        }

        assertThat(wrong).isEmpty();
        assertThat(right).isGreaterThanOrEqualTo(LAWNS * 95 / 100);
    }

    /** Where bare soil was found the overlay is far redder than the photo. */
    @Test
    void read_bareRing_overlayTintsIt() throws java.io.IOException {
        byte[] photo = photo(new Random(2), 5, 1);
        TurfSeen seen = (TurfSeen) TurfPhoto.read(null, photo, ASKED);

        var before = javax.imageio.ImageIO.read(new java.io.ByteArrayInputStream(photo));
        var after = javax.imageio.ImageIO.read(
                new java.io.ByteArrayInputStream(seen.overlayAfter().png()));
        long tinted = 0;
        for (int y = 0; y < after.getHeight(); y++) {
            for (int x = 0; x < after.getWidth(); x++) {
                int redder = (after.getRGB(x, y) >> 16 & 0xFF) - (before.getRGB(x, y) >> 16 & 0xFF);
                tinted += redder > 60 ? 1 : 0;
            }
        }
        assertThat(tinted).isGreaterThan(20_000);
    }

    @Test
    void read_photoOfAfterAlone_givesTheShareOfBareSoil() {
        TurfSeen seen = (TurfSeen) TurfPhoto.read(null, photo(new Random(2), 5, 0.4), ASKED);

        assertThat(seen.after()).isCloseTo(0.4, within(0.05));
        assertThat(seen.torn()).isNull();
        assertThat(seen.overlayBefore()).isNull();
    }

    @Test
    void read_borderByHand_judgesWhatLiesInside() {
        byte[] photo = photo(new Random(2), 5, 1);
        TurfSeen ring = (TurfSeen) TurfPhoto.read(null, photo, ASKED);
        TurfAsked.ByHand corner = new TurfAsked.ByHand(
                List.of(), List.of(new Spot(430, 330), new Spot(470, 330), new Spot(470, 370), new Spot(430, 370)));
        TurfSeen grass =
                (TurfSeen) TurfPhoto.read(null, photo, new TurfAsked(FRAME, null, TurfAsked.ByHand.NOTHING, corner));

        assertThat(ring.after()).isGreaterThan(0.95);
        assertThat(grass.after()).isLessThan(0.05);
    }

    /** The level that was found, told, gives the same share when it is set by hand; a little more tells more soil. */
    @Test
    void read_levelByHand_partsSoilFromTurf() {
        byte[] photo = photo(new Random(2), 5, 0.4);
        TurfSeen found = (TurfSeen) TurfPhoto.read(null, photo, ASKED);
        double level = java.util.Objects.requireNonNull(found.level());

        assertThat(at(photo, level).after()).isEqualTo(found.after());
        assertThat(at(photo, level + 0.3).after()).isGreaterThan(java.util.Objects.requireNonNull(found.after()) + 0.3);
        assertThat(found.second().corners()).hasSize(4);
        assertThat(found.first()).isNull();
    }

    private static TurfSeen at(byte[] photo, double level) {
        TurfAsked asked = new TurfAsked(FRAME, ASKED.ring(), TurfAsked.ByHand.NOTHING, TurfAsked.ByHand.NOTHING, level);
        return (TurfSeen) TurfPhoto.read(null, photo, asked);
    }

    @Test
    void read_anotherPlaceThatIsBarerBefore_isNotSure() {
        TurfSeen seen = (TurfSeen) TurfPhoto.read(photo(new Random(3), 1, 0.5), photo(new Random(4), 1, 0.1), ASKED);

        assertThat(seen.doubts()).contains(Doubt.UNLIKE);
    }

    @Test
    void read_noFrame_saysSo() {
        Shots.Shot shot = Shots.plain(0);
        shot.print().paper = shot.print().floor;
        TurfSeen seen = (TurfSeen) TurfPhoto.read(null, Shots.jpeg(shot.again().image(), 0.9f), ASKED);

        assertThat(seen.doubts()).containsExactly(Doubt.NO_CARD);
        assertThat(seen.after()).isNull();
    }
}
