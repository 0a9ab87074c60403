package footing.io.photo;

import static org.assertj.core.api.Assertions.assertThat;

import footing.core.quantity.Length;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Random;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

class BrokenPicturesTest {
    private static final PrintAsked ASKED = PrintAsked.of(new Card(new Length(0.3), new Length(0.2), Card.Place.UNDER));

    /** Several times what is kept of a picture of 12 megapixels. */
    private static final long MOST_MEMORY = 200_000_000;

    private static BufferedImage small() {
        DrawnPrint drawn =
                new DrawnPrint(new Random(1), new double[] {0.3, 0.2}, new double[] {0.15, 0.1, 0, 0.05, 0.08}, 3);
        return new DrawnCamera(140, 105, new Random(1), new double[] {0.15, 0.1}, 0.5, new double[] {5, 0, 0})
                .take(drawn);
    }

    private static byte[] png() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(small(), "png", out);
        return out.toByteArray();
    }

    private static Seen.Refused refused(byte[] file) {
        Seen seen = PrintPhoto.read(file, ASKED);
        assertThat(seen).isInstanceOf(Seen.Refused.class);
        return (Seen.Refused) seen;
    }

    /** Cut off, bytes changed or moved, another size or turn in the header, no picture at all: the ways files break. */
    private static byte[] broken(byte[] file, Random random) {
        byte[] bad = file.clone();
        switch (random.nextInt(7)) {
            case 0 -> bad = Arrays.copyOf(bad, random.nextInt(bad.length));
            case 1 -> {
                for (int i = 0; i <= random.nextInt(6); i++) {
                    bad[random.nextInt(Math.min(700, bad.length))] = (byte) random.nextInt();
                }
            }
            case 2 -> {
                for (int i = 0; i <= random.nextInt(20); i++) {
                    bad[random.nextInt(bad.length)] ^= (byte) (1 << random.nextInt(8));
                }
            }
            case 3 -> {
                int run = 1 + random.nextInt(bad.length / 4);
                int from = random.nextInt(bad.length - run);
                System.arraycopy(file, random.nextInt(bad.length - run), bad, from, run);
            }
            case 4 -> BadHeaders.resized(bad, random.nextInt(70_000), random.nextInt(70_000));
            case 5 -> BadHeaders.turned(bad, random.nextInt(256));
            default -> bad = BadHeaders.foreign(file, random);
        }
        return bad;
    }

    /**
     * Each is opened and, where that works, measured: every one as turf, whose cost goes with the picture's, and one in
     * twenty as a print. None takes more memory than a large picture does.
     */
    @Test
    void read_fiveThousandBrokenFiles_endInWhatWasSeenOrInWhatIsWrong() throws IOException {
        byte[][] files = files();
        TurfAsked turf = TurfAsked.of(new Card(new Length(0.3), new Length(0.2), Card.Place.UNDER));
        int refused = 0;
        for (int i = 0; i < 5000; i++) {
            byte[] file = broken(files[i % files.length], new Random(i));
            long before = BadHeaders.allocated();
            Seen seen = i % 20 == 0 ? PrintPhoto.read(file, ASKED) : TurfPhoto.read(null, file, turf);
            assertThat(BadHeaders.allocated() - before).as("file %s", i).isLessThan(MOST_MEMORY);
            if (seen instanceof Seen.Refused r) {
                assertThat(r.what()).isNotBlank().doesNotContain("null", "Exception");
                assertThat(r.advice()).isNotBlank();
                refused++;
            }
        }
        assertThat(refused).isBetween(1500, 4500);
    }

    private static byte[][] files() throws IOException {
        return new byte[][] {Shots.jpeg(small(), 0.8f), png(), Shots.stored(small(), Orientation.TRANSVERSE)};
    }

    @Test
    void read_pictureCutOff_saysSo() throws IOException {
        byte[] jpeg = Shots.jpeg(small(), 0.9f);
        byte[] png = png();

        for (double share : new double[] {0.4, 0.7, 0.95}) {
            assertThat(refused(Arrays.copyOf(jpeg, (int) (share * jpeg.length))).what())
                    .contains("damaged");
            assertThat(refused(Arrays.copyOf(png, (int) (share * png.length))).what())
                    .contains("damaged");
        }
    }

    /** The header alone says how large it is; what would follow is never asked for. */
    @Test
    void read_enormousByItsHeader_isRefusedBeforeItIsDecoded() throws IOException {
        byte[] png = png();
        byte[] jpeg = Shots.jpeg(small(), 0.8f);
        BadHeaders.resized(png, 0x7000, 0x7000);
        BadHeaders.resized(jpeg, 65_000, 60_000);
        long before = BadHeaders.allocated();

        assertThat(refused(jpeg).what()).contains("65000 by 60000", "pixels");
        assertThat(refused(png).what()).contains("28", "pixels");
        assertThat(BadHeaders.allocated() - before).isLessThan(10_000_000);
        assertThat(refused(new byte[PictureFile.MOST_BYTES + 1]).what()).contains("60 MB");
    }

    @Test
    void read_otherThanPictures_saysWhatItTakes() {
        assertThat(refused(new byte[0]).what()).contains("JPEG and PNG");
        assertThat(refused("kind: pull".getBytes(StandardCharsets.UTF_8)).what())
                .contains("JPEG and PNG");
        byte[] heic = "....ftypheic....".getBytes(StandardCharsets.ISO_8859_1);
        assertThat(refused(heic).what()).contains("HEIC");
        assertThat(refused(Shots.jpeg(new BufferedImage(60, 60, BufferedImage.TYPE_INT_RGB), 0.9f))
                        .what())
                .contains("60 by 60");
    }
}
