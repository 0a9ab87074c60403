package footing.core.trial;

/** One of the two things compared. */
public enum Side {
    A,
    B;

    public Side other() {
        return this == A ? B : A;
    }
}
