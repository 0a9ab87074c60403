package footing.core.fleet;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a size on a sidewall says, in inches as it is written there: {@code 24x12.00-12} is diameter, width and rim in inches; {@code
 * 4.10/3.50-4} is width, section height and rim, so that the diameter is twice the height plus the rim. {@code 24x12
 * N12} is read as the first form.
 *
 * <p>Nominal: tires of one size differ by half an inch and more between makers (one public sheet: 23 in measures 22.4).
 * Source: as explained in operator manuals and by two tire dealers (read).
 */
public record SidewallSize(double diameterInches, double widthInches, double rimInches) {
    private static final double INCH = 0.0254;
    private static final double MOST = 118;
    private static final String DASH = "\\s?[-\u2013]\\s?";
    private static final String NUMBER = "(\\d{1,3}(?:\\.\\d{1,3})?)";
    private static final Pattern BY_DIAMETER =
            Pattern.compile(NUMBER + "\\s?[xX\u00d7]\\s?" + NUMBER + "(?:" + DASH + "|\\s?N\\s?)" + NUMBER);
    private static final Pattern BY_HEIGHT = Pattern.compile(NUMBER + "/" + NUMBER + DASH + NUMBER);

    public SidewallSize {
        if (!isPossible(diameterInches, widthInches, rimInches)) {
            throw new IllegalArgumentException(
                    "no size: " + diameterInches + " x " + widthInches + " - " + rimInches + " in");
        }
    }

    private static boolean isPossible(double diameter, double width, double rim) {
        return width > 0 && rim > 0 && rim < diameter && diameter < MOST && width < diameter;
    }

    /** Outside diameter in meters. */
    public double diameter() {
        return diameterInches * INCH;
    }

    /** Width in meters. */
    public double width() {
        return widthInches * INCH;
    }

    /** Diameter of the rim in meters. */
    public double rim() {
        return rimInches * INCH;
    }

    /** How unlike two sizes are: inches of diameter and width, and a little for the rim. */
    public double distance(SidewallSize other) {
        return Math.abs(diameterInches - other.diameterInches)
                + Math.abs(widthInches - other.widthInches)
                + Math.abs(rimInches - other.rimInches) / 10;
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
        return isPossible(diameter, width, rim)
                ? Optional.of(new SidewallSize(diameter, width, rim))
                : Optional.empty();
    }

    private static double inches(Matcher m, int group) {
        return Double.parseDouble(m.group(group));
    }
}
