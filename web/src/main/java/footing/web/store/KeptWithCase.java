package footing.web.store;

/** Something kept beside a case that goes with its copies, such as its records. */
public interface KeptWithCase {
    /** Copies what is kept of one case to another that has nothing of it yet; part of the transaction it is called in. */
    void copy(String fromCase, String toCase);
}
