package footing.io.form;

/** A place of a file: the line, counted from 1, and the path of keys that leads there. */
public record At(int line, String path) {
    public static final At TOP = new At(1, "");

    public At key(int line, String name) {
        String clipped = Node.shown(name);
        return new At(line, path.isEmpty() ? clipped : path + "." + clipped);
    }

    public At item(int line, int index) {
        return new At(line, path + "[" + index + "]");
    }
}
