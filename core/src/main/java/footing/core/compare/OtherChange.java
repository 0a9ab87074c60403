package footing.core.compare;

/**
 * A difference that is not a number: a machine more or less, another date, another list.
 *
 * @param path the place in the case file, such as {@code machines.E1.carries}
 * @param before as a case file would write it, shortened for what has many parts; empty if it was not there
 * @param after the same for the other version
 */
public record OtherChange(String path, String before, String after) {}
