package footing.io.words;

import java.util.List;

/** Things told one after the other. */
public final class Lists {
    private static final int MOST_NAMED = 5;

    private Lists() {}

    /** 'a', 'a and b', 'a, b and c'. */
    public static String and(List<String> things) {
        return joined(things, " and ");
    }

    /** 'a', 'a or b', 'a, b or c'. */
    static String or(List<String> things) {
        return joined(things, " or ");
    }

    private static String joined(List<String> things, String last) {
        int n = things.size();
        return n < 2 ? String.join("", things) : String.join(", ", things.subList(0, n - 1)) + last + things.get(n - 1);
    }

    /** All of a few machines by name; of many their number and the first ones. */
    static String machines(List<String> ids) {
        if (ids.size() <= MOST_NAMED) {
            return and(ids);
        }
        List<String> first = ids.subList(0, MOST_NAMED - 1);
        return Figures.word(ids.size()) + " machines (" + String.join(", ", first) + " and "
                + Figures.word(ids.size() - first.size()) + " more)";
    }

    /** The same at the start of a sentence, where a number is capitalized and an id keeps its case. */
    static String machinesFirst(List<String> ids) {
        return ids.size() <= MOST_NAMED ? and(ids) : capital(machines(ids));
    }

    /** A sentence's first letter. */
    public static String capital(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + text.substring(1);
    }
}
