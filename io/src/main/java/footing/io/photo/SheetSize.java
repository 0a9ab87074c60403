package footing.io.photo;

import footing.core.quantity.Length;
import footing.io.form.Quantity;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The two sides of a sheet, card or frame, as one writes them: '11x8.5in', '60 x 60 cm', or the name of a paper. */
public record SheetSize(Length width, Length height) {
    /** A length as one writes it, without its unit. */
    public static final String NUMBER = "(\\d{1,4}(?:\\.\\d{1,4})?)";

    private static final Pattern SIZE = Pattern.compile(NUMBER + " ?[x×] ?" + NUMBER + " ?([a-z]{1,2})");
    private static final Map<String, String> PAPERS =
            Map.of("letter", "11x8.5in", "tabloid", "17x11in", "a4", "297x210mm", "a3", "420x297mm");

    /** Empty if it is no size; one that is may still be too small or too large for {@link Card#isUsable}. */
    public static Optional<SheetSize> read(String text) {
        String size = text.strip();
        Matcher m = SIZE.matcher(PAPERS.getOrDefault(size, size));
        return m.matches()
                ? Quantity.LENGTH
                        .unit(m.group(3))
                        .map(u -> new SheetSize(
                                new Length(u.toOwn(Double.parseDouble(m.group(1)))),
                                new Length(u.toOwn(Double.parseDouble(m.group(2))))))
                : Optional.empty();
    }
}
