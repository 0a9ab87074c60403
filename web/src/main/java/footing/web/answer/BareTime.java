package footing.web.answer;

import footing.core.chance.Metalog;
import footing.core.fleet.Dimension;
import footing.core.fleet.InForce;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Times typed without their unit: they are taken in the unit the box shows, where they can hardly be meant in the other
 * one. What may be either stays as it is typed, and is refused with both readings named.
 */
final class BareTime {
    private static final double LEAST_MINUTES = 5;
    private static final double MOST_HOURS = 24;

    private BareTime() {}

    /** What was typed for a number, with the unit where one was left out. */
    static Map<String, String> completed(InForce number, Map<String, String> typed) {
        if (number.input().key().dimension() != Dimension.TIME
                || typed.values().stream().anyMatch(t -> !t.isEmpty() && !isBare(t))) {
            return typed;
        }
        boolean minutes = number.value() instanceof Metalog m
                ? FieldView.inMinutes(Dimension.TIME, m.low(), m.likely(), m.high())
                : FieldView.inMinutes(Dimension.TIME, number.value().likely());
        boolean sure = typed.values().stream()
                .filter(t -> !t.isEmpty())
                .mapToDouble(Double::parseDouble)
                .allMatch(x -> minutes ? x >= LEAST_MINUTES : x <= MOST_HOURS);
        if (!sure) {
            return typed;
        }
        Map<String, String> whole = new LinkedHashMap<>();
        typed.forEach((box, t) -> whole.put(box, t.isEmpty() ? t : t + (minutes ? " min" : " h")));
        return whole;
    }

    private static boolean isBare(String text) {
        return text.matches("\\d{1,6}(\\.\\d{1,6})?");
    }
}
