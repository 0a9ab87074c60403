package footing.core.future;

/**
 * The mean flat of one fix on the carried package, in today's money before tax.
 *
 * @param flats of this fix, over the hours left
 * @param delay hours until the machine cuts again
 * @param displaced crew-hours pushed out of their place
 */
public record FixOutcome(
        String name, double flats, double cash, double paid, double lost, double delay, double displaced) {}
