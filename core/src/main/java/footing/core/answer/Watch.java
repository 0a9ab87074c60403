package footing.core.answer;

/** Told how far an answer has come; can ask it to stop with what is known so far. Called from any thread. */
public interface Watch {
    Watch NOBODY = new Watch() {
        @Override
        public void progress(String stage, double share) {}

        @Override
        public boolean stopped() {
            return false;
        }
    };

    /** How much of a stage is done, 0 to 1. */
    void progress(String stage, double share);

    boolean stopped();
}
