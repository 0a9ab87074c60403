package footing.core.answer;

import java.util.function.IntConsumer;

/** Who does many things at once. An answer is the same to the last bit however many there are. */
@FunctionalInterface
public interface Workers {
    /** Does tasks 0 to {@code tasks − 1}, in any order, and returns when all are done. */
    void all(int tasks, IntConsumer task);

    /** One after the other, on the calling thread. */
    static Workers one() {
        return (tasks, task) -> {
            for (int i = 0; i < tasks; i++) {
                task.accept(i);
            }
        };
    }
}
