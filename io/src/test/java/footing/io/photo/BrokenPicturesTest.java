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

    /** Cut off, single bytes changed, runs of bytes moved: the many ways in which files break. */
    private static byte[] broken(byte[] file, Random random) {
        byte[] bad = file.clone();
        switch (random.nextInt(4)) {
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
            default -> {
                int run = 1 + random.nextInt(bad.length / 4);
                int from = random.nextInt(bad.length - run);
                System.arraycopy(file, random.nextInt(bad.length - run), bad, from, run);
            }
        }
        return bad;
    }

    @Test
    void decode_twoThousandFiveHundredBrokenFiles_openOrSayWhatIsWrong() throws IOException {
        byte[][] files = files();
        int refused = 0;
        for (int i = 0; i < 2500; i++) {
            Decoded decoded = PictureFile.decode(broken(files[i % files.length], new Random(i)));
            if (decoded instanceof Decoded.Unreadable u) {
                assertThat(u.what()).isNotBlank().doesNotContain("null", "Exception");
                assertThat(u.advice()).isNotBlank();
                refused++;
            }
        }
        assertThat(refused).isBetween(800, 2500);
    }

    @Test
    void read_brokenPicturesThatOpen_endInWhatWasSeen() throws IOException {
        byte[][] files = files();
        for (int i = 0; i < 150; i++) {
            assertThat(PrintPhoto.read(broken(files[i % files.length], new Random(i)), ASKED))
                    .isNotNull();
        }
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
        png[16] = 0;
        png[17] = 0;
        png[18] = 0x70;
        png[20] = 0;
        png[21] = 0;
        png[22] = 0x70;
        java.util.zip.CRC32 sum = new java.util.zip.CRC32();
        sum.update(png, 12, 17);
        for (int i = 0; i < 4; i++) {
            png[29 + i] = (byte) (sum.getValue() >> (24 - 8 * i));
        }

        assertThat(refused(png).what()).contains("28", "pixels");
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
