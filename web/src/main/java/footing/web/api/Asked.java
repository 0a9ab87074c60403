package footing.web.api;

import footing.core.answer.Options;
import footing.io.form.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;

/**
 * What a request asks for besides its case.
 *
 * @param options how to answer
 * @param problems what is wrong with the query; empty if nothing is
 */
record Asked(Options options, List<Problem> problems) {
    static final int LEAST_FUTURES = 2;
    static final int MOST_FUTURES = 100_000;
    static final String QUERY = "query";

    static Asked of(@Nullable String futures, @Nullable String seed, @Nullable String quick) {
        List<Problem> problems = new ArrayList<>();
        Options options = new Options(
                futures(futures, problems),
                seed(seed, problems),
                Options.USUAL_THRESHOLD,
                isQuick(quick, problems),
                Optional.empty());
        return new Asked(options, List.copyOf(problems));
    }

    private static OptionalInt futures(@Nullable String text, List<Problem> problems) {
        if (text == null) {
            return OptionalInt.empty();
        }
        if (text.matches("\\d{1,7}")) {
            int n = Integer.parseInt(text);
            if (n >= LEAST_FUTURES && n <= MOST_FUTURES) {
                return OptionalInt.of(n);
            }
        }
        String advice = "a whole number between " + LEAST_FUTURES + " and " + MOST_FUTURES + " would fit";
        problems.add(problem("futures", text, "not a number of futures", advice));
        return OptionalInt.empty();
    }

    private static long seed(@Nullable String text, List<Problem> problems) {
        if (text == null) {
            return Options.USUAL_SEED;
        }
        try {
            return Long.parseLong(text);
        } catch (NumberFormatException e) {
            problems.add(problem("seed", text, "not a seed", "a whole number of 64 bits would fit, such as 1"));
            return Options.USUAL_SEED;
        }
    }

    private static boolean isQuick(@Nullable String text, List<Problem> problems) {
        if (text != null && !text.equals("true") && !text.equals("false")) {
            problems.add(problem("quick", text, "neither yes nor no", "true or false would fit"));
        }
        return "true".equals(text);
    }

    private static Problem problem(String name, String read, String message, String advice) {
        String shown = read.length() <= 60 ? read : read.substring(0, 60) + "…";
        return new Problem(QUERY, 1, name, shown, message, advice);
    }
}
