package footing.io.words;

import footing.core.ground.PrintOutline;
import footing.io.form.Quantity;
import footing.io.photo.Doubt;
import footing.io.photo.PrintSeen;
import footing.io.photo.TurfSeen;

/** What was read off a photo, in words. */
public final class PhotoWords {
    /** Stands beside everything read off a photo. */
    public static final String TRIED =
            "Tried on drawn pictures only, not yet on photos of traced prints or counted turf: look at the overlay.";

    private final boolean metric;

    public PhotoWords(boolean metric) {
        this.metric = metric;
    }

    /** The measures of a print in a sentence. */
    public String measures(PrintOutline print) {
        return "Print area " + area(print.area()) + ": " + length(print.length()) + " long by " + length(print.width())
                + " wide, shape exponent " + Figures.decimals(print.shape(), 1) + ".";
    }

    /** How the print is written in a case, where it overrides what tires of its sort usually do. */
    public String inCase(PrintOutline print, String load, String pressure) {
        return "print: {length: " + length(print.length()) + ", width: " + length(print.width()) + ", shape: "
                + Figures.decimals(print.shape(), 1) + ", atLoad: " + load + ", atPressure: " + pressure + "}";
    }

    /** The verdict on a print. */
    public String sureness(PrintSeen seen) {
        return seen.isSure() ? "Nothing about the photo looks doubtful." : "Unsure:";
    }

    /** Torn turf in a sentence. */
    public String shares(TurfSeen seen) {
        Double before = seen.before();
        Double after = seen.after();
        Double torn = seen.torn();
        if (after == null) {
            return "No share of bare soil was read.";
        }
        if (before == null || torn == null) {
            return "Bare soil: " + Figures.percent(after) + " of the ground looked at. What was bare before the turn"
                    + " counts with it: a photo from before takes that off.";
        }
        return "Torn: " + Figures.percent(torn) + " of the ground looked at; bare soil was " + Figures.percent(before)
                + " before and " + Figures.percent(after) + " after.";
    }

    /** What parted soil from turf. */
    public static String level(double green) {
        return "Soil is what has an excess green below " + Figures.decimals(green, 3)
                + "; if the overlay tints turf or leaves soil out, set another level.";
    }

    public String sureness(TurfSeen seen) {
        return seen.isSure() ? "Nothing about the photos looks doubtful." : "Unsure:";
    }

    /** How many photos a trial rests on. */
    public static String counted(int photos) {
        return Figures.counted(photos, "photo") + " measured. " + TRIED;
    }

    /** A doubt, and what to do about it. */
    public static String of(Doubt doubt) {
        return switch (doubt) {
            case NO_CARD ->
                "The corners of the sheet, card or frame were not found. Point at them by hand, or take it again with all"
                        + " four in the picture, on ground of another color and in even light.";
            case NO_PRINT -> "No print was found. Draw its border by hand, or ink it more strongly.";
            case BENT ->
                "The edges of the sheet, card or frame are bent. Lay it flat, and take the photo from farther away"
                        + " without the wide lens.";
            case SCALE ->
                "The scale is uncertain where the print lies. Take it from straighter above and nearer, with a larger"
                        + " sheet or card.";
            case SIDES ->
                "Which side of the sheet is the longer one is hard to see; the area holds, length and width may be"
                        + " exchanged. Take it from straighter above.";
            case FAINT -> "The print hardly stands out from what it is on. Use more ink and even light.";
            case UNCLEAR -> "Much of the print's border is not clear. Draw it by hand, or take it in even light.";
            case ODD -> "The border found has no shape of a print. Draw it by hand.";
            case SEVERAL -> "There is another patch nearly as large. Cover it, or draw the border by hand.";
            case SMALL -> "The print is small in the picture. Go nearer.";
            case BLEND ->
                "Turf and soil are hard to tell apart in this light. Take it in daylight without deep shadow.";
            case UNLIKE -> "The photos before and after differ in more than the turn: other light, or another place.";
        };
    }

    private String area(double squareMeters) {
        String unit = metric ? "cm2" : "in2";
        return Shown.digits(Quantity.AREA.unit(unit).orElseThrow().fromOwn(squareMeters)) + " " + unit;
    }

    private String length(double meters) {
        String unit = metric ? "mm" : "in";
        return Shown.digits(Quantity.LENGTH.unit(unit).orElseThrow().fromOwn(meters)) + " " + unit;
    }
}
