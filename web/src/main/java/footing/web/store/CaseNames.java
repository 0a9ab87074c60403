package footing.web.store;

/** What a case may be called, and its id. */
final class CaseNames {
    static final int LONGEST = 200;
    private static final String LETTERS = "abcdefghjkmnpqrstuvwxyz23456789";
    private static final int ID_LENGTH = 12;

    private CaseNames() {}

    /** One line without control characters, cut to {@value #LONGEST} characters. */
    static String clean(String name) {
        String line = name.replaceAll("\\p{Cntrl}+", " ").strip();
        if (line.isEmpty()) {
            return "Untitled case";
        }
        int end = Math.min(line.length(), LONGEST);
        boolean splitsPair = end < line.length() && Character.isHighSurrogate(line.charAt(end - 1));
        return line.substring(0, splitsPair ? end - 1 : end);
    }

    /** Twelve letters and digits, none of which is easily mistaken for another. */
    static String newId(java.util.random.RandomGenerator random) {
        StringBuilder id = new StringBuilder();
        for (int i = 0; i < ID_LENGTH; i++) {
            id.append(LETTERS.charAt(random.nextInt(LETTERS.length())));
        }
        return id.toString();
    }
}
