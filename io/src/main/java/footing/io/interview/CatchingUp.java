package footing.io.interview;

import java.util.List;

/**
 * How displaced work is made up: common practice, no source.
 *
 * @param today slack in a day, in hours
 * @param later percent made up another day: low, likely and high
 * @param premium percent on top of pay
 * @param words how it was said
 */
record CatchingUp(double today, List<Double> later, double premium, String words) {
    static CatchingUp of(Given given) {
        boolean owner = given.is("who", "owner");
        return switch (given.text("makeUp")) {
            case "slack" -> new CatchingUp(1, List.of(50.0, 75.0, 90.0), 0, "in slack");
            case "late" -> new CatchingUp(1.5, List.of(40.0, 60.0, 80.0), owner ? 0 : 50, "by working late");
            case "saturday" -> new CatchingUp(0, List.of(60.0, 80.0, 92.0), owner ? 0 : 50, "on Saturday");
            case "skipped" -> new CatchingUp(0, List.of(3.0, 10.0, 30.0), owner ? 0 : 50, "hardly ever");
            default -> new CatchingUp(0.5, List.of(50.0), owner ? 0 : 50, "some of each");
        };
    }

    CatchingUp {
        later = List.copyOf(later);
    }

    double likely() {
        return later.get(later.size() / 2);
    }

    String laterText() {
        return later.size() == 1
                ? share(later.get(0))
                : Plain.three(share(later.get(0)), share(later.get(1)), share(later.get(2)));
    }

    private static String share(double percent) {
        return Plain.number(percent) + " %";
    }
}
