package footing.io.photo;

/** A photograph that can't be used; says why, and on a second line what to try. */
public final class PhotoTrouble extends Exception {
    private static final long serialVersionUID = 1L;

    PhotoTrouble(String message, String advice) {
        super(message + "\n   " + advice);
    }
}
