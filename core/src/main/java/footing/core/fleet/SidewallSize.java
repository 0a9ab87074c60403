package footing.core.fleet;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a size on a sidewall says, in meters: {@code 24x12.00-12} is diameter, width and rim in inches; {@code
 * 4.10/3.50-4} is width, section height and rim, so that the diameter is twice the height plus the rim. {@code 24x12
 * N12} is read as the first form.
 *
 * <p>Nominal: tires of one size differ by half an inch and more between makers (one public sheet: 23 in measures 22.4).
 * Source: as explained in operator manuals and by two tire dealers (read).
 */
public record SidewallSize(double diameter, double width, double rim) {
    private static final double INCH = 0.0254;
    private static final String NUMBER = "(\\d{1,3}(?:\\.\\d{1,3})?)";
    private static final Pattern BY_DIAMETER =
            Pattern.compile(NUMBER + "\\s?[xX\u00d7]\\s?" + NUMBER + "(?:\\s?-\\s?|\\s?N\\s?)" + NUMBER);
    private static final Pattern BY_HEIGHT = Pattern.compile(NUMBER + "/" + NUMBER + "\\s?-\\s?" + NUMBER);

    public SidewallSize {
        if (!(width > 0 && rim > 0 && rim < diameter && diameter < 3 && width < diameter)) {
            throw new IllegalArgumentException("no size: " + diameter + " x " + width + " - " + rim + " m");
        }
    }

    /** The size in a text; empty if it says none, or an impossible one. */
    public static Optional<SidewallSize> of(String text) {
        Matcher m = BY_DIAMETER.matcher(text.strip());
        if (m.matches()) {
            return checked(inches(m, 1), inches(m, 2), inches(m, 3));
        }
        m = BY_HEIGHT.matcher(text.strip());
        return m.matches() ? checked(2 * inches(m, 2) + inches(m, 3), inches(m, 1), inches(m, 3)) : Optional.empty();
    }

    private static Optional<SidewallSize> checked(double diameter, double width, double rim) {
        boolean sound = width > 0 && rim > 0 && rim < diameter && diameter < 3 && width < diameter;
        return sound ? Optional.of(new SidewallSize(diameter, width, rim)) : Optional.empty();
    }

    private static double inches(Matcher m, int group) {
        return Double.parseDouble(m.group(group)) * INCH;
    }
}
