package footing.io.interview;

import java.util.List;

/**
 * What may be typed into a field.
 *
 * @param unit shown behind the value; empty if it has none
 * @param least least number that fits, in the kind's own unit: percent for shares, minutes for durations
 * @param most most that fits; the greatest length for texts
 * @param whole true if only whole numbers fit
 * @param choices empty unless the kind is CHOICE
 */
public record Shape(FieldKind kind, String unit, double least, double most, boolean whole, List<Choice> choices) {
    private static final int LONGEST_TEXT = 200;

    public Shape {
        if (!(least <= most)) {
            throw new IllegalArgumentException("nothing fits between " + least + " and " + most);
        }
        choices = List.copyOf(choices);
    }

    static Shape text() {
        return plain(FieldKind.TEXT, "", 1, LONGEST_TEXT);
    }

    static Shape whole(double least, double most) {
        return new Shape(FieldKind.NUMBER, "", least, most, true, List.of());
    }

    static Shape number(double least, double most) {
        return plain(FieldKind.NUMBER, "", least, most);
    }

    static Shape money() {
        return plain(FieldKind.MONEY, "", 0, 1e6);
    }

    static Shape hours(double least, double most) {
        return plain(FieldKind.HOURS, "h", least, most);
    }

    static Shape share(double most) {
        return plain(FieldKind.SHARE, "%", 0, most);
    }

    static Shape duration() {
        return plain(FieldKind.DURATION, "min or h", 1, 6000);
    }

    static Shape date() {
        return plain(FieldKind.DATE, "month-day", 0, 0);
    }

    static Shape size() {
        return plain(FieldKind.SIZE, "", 0, 0);
    }

    static Shape currency() {
        return plain(FieldKind.CURRENCY, "", 0, 0);
    }

    static Shape choice(Choice... choices) {
        return new Shape(FieldKind.CHOICE, "", 0, 0, false, List.of(choices));
    }

    private static Shape plain(FieldKind kind, String unit, double least, double most) {
        return new Shape(kind, unit, least, most, false, List.of());
    }
}
