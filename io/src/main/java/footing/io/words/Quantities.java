package footing.io.words;

import footing.core.fleet.Physical;
import footing.core.quantity.Angle;
import footing.core.quantity.Area;
import footing.core.quantity.Length;
import footing.core.quantity.Mass;
import footing.core.quantity.Pressure;

/**
 * Physical quantities for a reader, in US customary units or SI as the case wants them shown. 'deg' stands for degrees,
 * which every terminal can show.
 *
 * @param si true for millimeters, kilograms and kilopascals
 */
public record Quantities(boolean si) {
    private static final double MPH = 0.44704;
    private static final double LB_PER_INCH = 4.4482216152605 / 0.0254;

    public String length(Length x) {
        return si ? Figures.decimals(x.millimeters(), 0) + " mm" : Figures.decimals(x.inches(), 2) + " in";
    }

    /** Over ground, in whole feet or meters. */
    public String distance(Length x) {
        return si ? Figures.decimals(x.meters(), 0) + " m" : Figures.decimals(x.inches() / 12, 0) + " ft";
    }

    /** With its sign, also above zero. */
    public String shift(Length x) {
        String text = length(x);
        return x.meters() > 0 && !text.startsWith("0 ")
                ? "+" + text
                : text.startsWith("-0 ") ? text.substring(1) : text;
    }

    public String mass(Mass x) {
        return si ? Figures.decimals(x.kilograms(), 0) + " kg" : Figures.decimals(x.pounds(), 0) + " lb";
    }

    public String pressure(Pressure x) {
        return si ? Figures.decimals(x.kilopascals(), 0) + " kPa" : Figures.decimals(x.psi(), 1) + " psi";
    }

    public String area(Area x) {
        return si
                ? Figures.decimals(x.squareCentimeters(), 0) + " cm2"
                : Figures.decimals(x.squareInches(), 1) + " sq in";
    }

    /** To half a degree's worth: one decimal. */
    public static String angle(Angle x) {
        return Figures.decimals(x.degrees(), 1) + " deg";
    }

    public String speed(double metersPerSecond) {
        return si
                ? Figures.decimals(metersPerSecond * 3.6, 1) + " km/h"
                : Figures.decimals(metersPerSecond / MPH, 1) + " mph";
    }

    /** A value of a measure, in SI units, by what it counts. */
    public String value(Physical physical, double x) {
        return switch (physical) {
            case LENGTH, SHIFT -> length(new Length(x));
            case MASS -> mass(new Mass(x));
            case PRESSURE -> pressure(new Pressure(x));
            case SPEED -> speed(x);
            case STIFFNESS ->
                si ? Figures.decimals(x / 1000, 0) + " kN/m" : Figures.decimals(x / LB_PER_INCH, 0) + " lb/in";
            case NUMBER -> Figures.decimals(x, 2);
            case SHARE -> Figures.percent(x);
        };
    }
}
