package footing.io.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import footing.core.ground.PrintOutline;
import footing.core.quantity.Length;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** The pictures that come with the example, against what they were drawn with. */
class TrialDayPhotosTest {
    private static final Path PHOTOS = Path.of("../cases/trial-day/photos");

    private static byte[] photo(String name) throws IOException {
        return Files.readAllBytes(PHOTOS.resolve(name));
    }

    @Test
    void read_print_givesTheAreaItWasDrawnWith() throws IOException {
        Card sheet = new Card(new Length(DrawnDay.SHEET[0]), new Length(DrawnDay.SHEET[1]), Card.Place.UNDER);
        PrintSeen seen = (PrintSeen) PrintPhoto.read(photo("print.jpg"), PrintAsked.of(sheet));

        assertThat(seen.doubts()).isEmpty();
        PrintOutline print = Objects.requireNonNull(seen.print());
        double area = DrawnDay.print().area();
        assertThat(print.area()).isCloseTo(area, within(0.03 * area));
    }

    @Test
    void read_turn_givesTheShareItWasDrawnWith() throws IOException {
        TurfSeen seen = (TurfSeen) TurfPhoto.read(
                photo("turn-before.jpg"),
                photo("turn-after.jpg"),
                new TurfAsked(
                        new Card(new Length(DrawnDay.FRAME), new Length(DrawnDay.FRAME), Card.Place.UNDER),
                        new TurfAsked.Ring(new Length(DrawnDay.RING[0]), new Length(DrawnDay.RING[1])),
                        TurfAsked.ByHand.NOTHING,
                        TurfAsked.ByHand.NOTHING));

        assertThat(seen.doubts()).isEmpty();
        assertThat(seen.torn()).isCloseTo(DrawnDay.BARE_AFTER - DrawnDay.BARE_BEFORE, within(0.05));
    }

    @Test
    void pictures_drawnAgain_areThoseThatComeWithTheExample() throws IOException {
        assertAlike(DrawnDay.printTaken(), "print.jpg");
        assertAlike(DrawnDay.turnTaken(false), "turn-before.jpg");
        assertAlike(DrawnDay.turnTaken(true), "turn-after.jpg");
    }

    /** To what JPEG takes away. */
    private static void assertAlike(BufferedImage drawn, String name) throws IOException {
        BufferedImage kept = ImageIO.read(PHOTOS.resolve(name).toFile());
        assertThat(kept.getWidth()).isEqualTo(drawn.getWidth());
        assertThat(kept.getHeight()).isEqualTo(drawn.getHeight());
        double off = 0;
        int n = 0;
        for (int y = 0; y < kept.getHeight(); y += 7) {
            for (int x = 0; x < kept.getWidth(); x += 7) {
                off += Math.abs((kept.getRGB(x, y) >> 8 & 0xFF) - (drawn.getRGB(x, y) >> 8 & 0xFF));
                n++;
            }
        }
        assertThat(off / n).isLessThan(8);
    }
}
