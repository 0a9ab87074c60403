package footing.core.unmarked;

/** Its package has no package-info.java, on purpose. */
public final class Unmarked {}
