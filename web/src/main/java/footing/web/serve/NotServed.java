package footing.web.serve;

/** The page can't be served; the message says why and what would fit. */
public final class NotServed extends Exception {
    private static final long serialVersionUID = 1L;

    NotServed(String message) {
        super(message);
    }
}
