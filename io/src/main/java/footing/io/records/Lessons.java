package footing.io.records;

import footing.core.records.Background;
import footing.core.records.Learned;
import footing.core.records.Learner;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.Iterator;
import java.util.List;
import java.util.Map;

/**
 * What files of records taught, so that a case read again and again while somebody changes its prices doesn't learn each
 * time. A file counts by its name and contents, a case by what it says to the questions learning asks, so nothing stale
 * is ever found. The last few are kept, long files not at all.
 */
public final class Lessons {
    private static final int KEPT = 4;
    private static final int MOST_ROWS = 20_000;
    private static final List<Lesson> LESSONS = new ArrayList<>();

    /** One lesson; its background holds on to the case it was asked of. */
    private record Lesson(String file, double wearLimit, Records records, Asked asked, Learned learned) {}

    private Lessons() {}

    /** What a file holds and, unless it can't be read at all, what its rows teach. */
    public record Taught(Records records, Learned learned) {}

    /**
     * Reads a file and learns from it, unless that was done before.
     *
     * @param wearLimit tread depth in millimeters at which a set is worn out
     * @throws IOException if the file can't be opened or read
     */
    public static Taught of(Path file, Background background, double wearLimit) throws IOException {
        byte[] bytes;
        try (InputStream in = Files.newInputStream(file)) {
            bytes = in.readNBytes(RecordsFile.MOST_BYTES + 1);
        }
        String name = RecordsFile.name(file);
        String known = name + ' ' + digest(bytes);
        synchronized (LESSONS) {
            for (Iterator<Lesson> all = LESSONS.iterator(); all.hasNext(); ) {
                Lesson l = all.next();
                if (l.file.equals(known) && l.wearLimit == wearLimit && l.asked.holdsFor(background)) {
                    all.remove();
                    LESSONS.add(0, l);
                    return new Taught(l.records, l.learned);
                }
            }
        }
        Records records = RecordsFile.read(name, bytes, Map.of());
        Asked asked = new Asked(background);
        Learned learned = Learner.learn(records.log(), asked, wearLimit);
        if (records.rows() <= MOST_ROWS) {
            keep(new Lesson(known, wearLimit, records, asked, learned));
        }
        return new Taught(records, learned);
    }

    private static void keep(Lesson lesson) {
        synchronized (LESSONS) {
            LESSONS.add(0, lesson);
            if (LESSONS.size() > KEPT) {
                LESSONS.remove(KEPT);
            }
        }
    }

    private static String digest(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
