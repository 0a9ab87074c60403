package footing.cli;

/** The command line or a file is not usable; the message says all that is wrong. Ends the program with code 2. */
final class BadInput extends Exception {
    private static final long serialVersionUID = 1L;

    BadInput(String message) {
        super(message);
    }
}
