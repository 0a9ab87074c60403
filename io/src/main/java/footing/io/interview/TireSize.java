package footing.io.interview;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A tire's size as the sidewall has it: overall diameter, width and rim, in inches. */
record TireSize(double diameter, double width, double rim) {
    private static final String INCHES = "(\\d{1,2}(?:\\.\\d{1,2})?)";
    private static final Pattern WRITTEN = Pattern.compile(INCHES + " ?[xX\u00D7] ?" + INCHES + " ?[-–] ?" + INCHES);

    static Optional<TireSize> of(String text) {
        Matcher m = WRITTEN.matcher(text.strip());
        if (!m.matches()) {
            return Optional.empty();
        }
        TireSize size = new TireSize(
                Double.parseDouble(m.group(1)), Double.parseDouble(m.group(2)), Double.parseDouble(m.group(3)));
        boolean possible = size.rim > 0 && size.width > 0 && size.diameter > size.rim;
        return possible ? Optional.of(size) : Optional.empty();
    }

    /** How unlike two sizes are: inches of diameter and width, and a little for the rim. */
    double distance(TireSize other) {
        return Math.abs(diameter - other.diameter) + Math.abs(width - other.width) + Math.abs(rim - other.rim) / 10;
    }
}
