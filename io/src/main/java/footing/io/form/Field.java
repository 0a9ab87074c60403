package footing.io.form;

/** A key of a group and what stands at it. */
public record Field(String name, Form form, boolean required) {
    public static Field must(String name, Form form) {
        return new Field(name, form, true);
    }

    public static Field may(String name, Form form) {
        return new Field(name, form, false);
    }
}
