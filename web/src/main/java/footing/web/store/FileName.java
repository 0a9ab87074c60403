package footing.web.store;

import java.text.Normalizer;
import java.util.Locale;

/** What a case is called as a file. */
public final class FileName {
    private static final int LONGEST = 60;

    private FileName() {}

    /** Letters, digits and hyphens of a name, for any file system. */
    public static String of(String name) {
        String plain = Normalizer.normalize(name, Normalizer.Form.NFD)
                .toLowerCase(Locale.ROOT)
                .replaceAll("\\p{M}+", "")
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-+|-+$", "");
        return plain.isEmpty() ? "case" : plain.substring(0, Math.min(plain.length(), LONGEST));
    }
}
