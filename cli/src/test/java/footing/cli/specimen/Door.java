package footing.cli.specimen;

/** Ends the program. */
public final class Door {
    void slam() {
        System.exit(1);
    }
}
