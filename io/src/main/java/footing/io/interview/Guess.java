package footing.io.interview;

import java.util.function.Function;

/**
 * What stands for 'don't know'.
 *
 * @param rule the value, as it could be typed; may look at other answers
 * @param from where it comes from
 * @param ask how to find out, as a request
 */
public record Guess(Function<Given, String> rule, String from, String ask) {
    static final String PRACTICE = "common practice, no source";

    static Guess practice(String value, String ask) {
        return new Guess(given -> value, PRACTICE, ask);
    }

    static Guess practice(Function<Given, String> rule, String ask) {
        return new Guess(rule, PRACTICE, ask);
    }

    /** 'common practice, no source; ask the crew leader'. */
    public String told() {
        return ask.isEmpty() ? from : from + "; " + ask;
    }
}
