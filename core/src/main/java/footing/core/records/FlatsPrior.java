package footing.core.records;

/**
 * What is held of a crew's flats before its records: the crew's mean is near {@code likely} flats per 1,000 hours on
 * air tires, its logarithm normal; its machines differ by a gamma factor whose shape's logarithm is normal too.
 *
 * @param likely median of the crew's mean, flats per 1,000 operating hours
 * @param unsure standard deviation of its logarithm
 * @param alike median of the shape of the factor between machines: 1/shape is the square of its spread
 * @param alikeUnsure standard deviation of that shape's logarithm
 */
public record FlatsPrior(double likely, double unsure, double alike, double alikeUnsure) implements CrewRates.Prior {
    /** From an established lawn (about 1) to thorn country (above 20); common practice, no source. */
    public static final FlatsPrior COMMON = new FlatsPrior(5, 1.08, 3, 0.7);

    public FlatsPrior {
        if (!(likely > 0 && unsure > 0 && alike > 0 && alikeUnsure > 0)) {
            throw new IllegalArgumentException("every part of a prior must be above 0: " + likely + ", " + unsure + ", "
                    + alike + ", " + alikeUnsure);
        }
    }

    @Override
    public double log(double shape, double rate) {
        double mean = (Math.log(1000 * shape / rate) - Math.log(likely)) / unsure;
        double spread = (Math.log(shape) - Math.log(alike)) / alikeUnsure;
        return -(mean * mean + spread * spread) / 2;
    }
}
