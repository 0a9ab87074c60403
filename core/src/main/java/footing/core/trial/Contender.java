package footing.core.trial;

/**
 * One of the two things compared.
 *
 * @param name as the user calls it
 * @param usual conditions of all its runs, where a run notes none of its own
 */
public record Contender(String name, Conditions usual) {
    public Contender {
        if (name.isBlank()) {
            throw new IllegalArgumentException("a thing compared has a name");
        }
    }
}
