package footing.web.records;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Names a row of a case's records in a form.
 *
 * @param sheet its sheet; 0 for a row written on the page
 * @param line in the sheet; of a row written on the page its number
 */
record RowKey(long sheet, int line) {
    private static final Pattern TEXT = Pattern.compile("([0-9]{1,9})-([0-9]{1,9})");

    static Optional<RowKey> of(String text) {
        Matcher m = TEXT.matcher(text);
        return m.matches()
                ? Optional.of(new RowKey(Long.parseLong(m.group(1)), Integer.parseInt(m.group(2))))
                : Optional.empty();
    }

    boolean isEntry() {
        return sheet == 0;
    }

    @Override
    public String toString() {
        return sheet + "-" + line;
    }
}
