package footing.io.interview;

import java.math.BigDecimal;

/**
 * A typed text as read.
 *
 * @param text the one way to write it: {@code 1450}, {@code 18 %}, {@code 04-05}
 * @param number the same as a number, in percent or minutes where it has a unit; zero if it is none
 * @param fault what is wrong and what would fit; empty if nothing is
 */
record Read(String text, BigDecimal number, String fault) {
    static Read fine(String text) {
        return new Read(text, BigDecimal.ZERO, "");
    }

    static Read fine(String text, BigDecimal number) {
        return new Read(text, number, "");
    }

    static Read wrong(String fault) {
        return new Read("", BigDecimal.ZERO, fault);
    }

    boolean isFine() {
        return fault.isEmpty();
    }
}
