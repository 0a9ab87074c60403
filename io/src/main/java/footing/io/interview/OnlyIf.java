package footing.io.interview;

/**
 * When a field is worth asking: if another field has a value, or if it has any other.
 *
 * @param value as read; empty for 'nobody knows'
 */
public record OnlyIf(String field, String value, boolean holds) {
    static OnlyIf is(String field, String value) {
        return new OnlyIf(field, value, true);
    }

    static OnlyIf isNot(String field, String value) {
        return new OnlyIf(field, value, false);
    }

    static OnlyIf unknown(String field) {
        return new OnlyIf(field, "", true);
    }

    boolean holdsFor(Given given) {
        boolean same =
                value.isEmpty() ? !given.isYours(field) : given.text(field).equals(value);
        return same == holds;
    }
}
