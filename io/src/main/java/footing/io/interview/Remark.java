package footing.io.interview;

/** What stands behind a value of the case file: whose it is. */
final class Remark {
    static final String YOURS = "yours";
    static final String PRACTICE = "guess: " + Guess.PRACTICE;

    private Remark() {}

    static String of(Given given, String field) {
        return given.isYours(field)
                ? YOURS
                : "guess: " + given.field(field).guess().told();
    }

    /** With what the value means or how it was reckoned: 'yours: 55 a man-hour'. */
    static String of(Given given, String field, String meaning) {
        return given.isYours(field) ? YOURS + ": " + meaning : meaning + "; " + of(given, field);
    }
}
