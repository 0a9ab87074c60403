package footing.io.interview;

/** A value to choose and what it says to a reader. */
public record Choice(String value, String words) {}
