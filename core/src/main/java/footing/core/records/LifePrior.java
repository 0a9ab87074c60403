package footing.core.records;

/**
 * What is held of an assembly's lives before its records: the median life's logarithm is normal about that of {@code
 * hours}, the Weibull shape's logarithm about that of {@code shape}.
 *
 * @param unsure standard deviation of the logarithm of the median life
 * @param shapeUnsure standard deviation of the logarithm of the shape
 */
public record LifePrior(double hours, double unsure, double shape, double shapeUnsure) {
    /** From a caster on gravel to a drive that outlives its machine; common practice, no source. */
    public static final LifePrior COMMON = new LifePrior(800, 0.7, 3.5, 0.4);

    public LifePrior {
        if (!(hours > 0 && unsure > 0 && shape > 0 && shapeUnsure > 0)) {
            throw new IllegalArgumentException("every part of a prior must be above 0: " + hours + ", " + unsure + ", "
                    + shape + ", " + shapeUnsure);
        }
    }

    double log(double lnMedian, double lnShape) {
        double center = (lnMedian - Math.log(hours)) / unsure;
        double form = (lnShape - Math.log(shape)) / shapeUnsure;
        return -(center * center + form * form) / 2;
    }

    Grid.Box box() {
        double shapes = Math.log(shape);
        double medians = Math.log(hours);
        return new Grid.Box(
                medians - 6 * unsure, medians + 6 * unsure, shapes - 6 * shapeUnsure, shapes + 6 * shapeUnsure);
    }
}
