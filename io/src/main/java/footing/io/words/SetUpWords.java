package footing.io.words;

import footing.core.fitting.Measured;
import footing.core.fitting.SetUp;
import footing.core.fleet.Position;
import footing.core.ground.Change;
import footing.core.ground.Judged;
import footing.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * What other wheels change on a machine, line by line, and what restores it.
 *
 * @param lacking takes note of what is not told because it was not measured
 */
public record SetUpWords(boolean si, Lacking lacking) {
    /** A label and what it says. */
    public record Line(String label, String words) {}

    /** What changes. */
    public List<Line> changes(SetUp s) {
        List<Line> lines = new ArrayList<>();
        Quantities q = new Quantities(si);
        add(lines, "drive axle", s.rise(Position.DRIVE).map(this::rise));
        add(lines, "caster axle", s.rise(Position.CASTER).map(this::rise));
        add(lines, "deck, left alone", s.untouched().map(this::untouched));
        add(lines, "height and rake", s.deck().map(this::deck));
        add(lines, "height lever", s.untouched().map(u -> gauge(u.middle())));
        add(lines, "ground speed", s.speed().map(SetUpWords::speed));
        add(lines, "track", s.track().map(t -> still(t) ? "as now" : q.shift(t) + " wider (drives)"));
        add(lines, "over the tires", s.width().map(w -> change(q.length(w.before()), q.length(w.after()))));
        add(lines, "each drive", s.mass(Position.DRIVE).map(m -> heavier(q.mass(m), m.kilograms())));
        add(lines, "each caster", s.mass(Position.CASTER).map(m -> heavier(q.mass(m), m.kilograms())));
        add(
                lines,
                "would tip sideways",
                s.tip()
                        .map(t -> "at " + change(Quantities.angle(t.before()), Quantities.angle(t.after()))
                                + ", standing still"));
        return lines;
    }

    private void add(List<Line> lines, String label, Judged<String> words) {
        lacking.note(words).value().ifPresent(w -> lines.add(new Line(label, w)));
    }

    private static boolean still(Length x) {
        return Math.abs(x.millimeters()) < 0.05;
    }

    private String rise(Change.Rise rise) {
        String marked = rise.fromSizes() ? ", from the sizes: measure the loaded radius" : "";
        Quantities q = new Quantities(si);
        return (still(rise.by()) ? "as now" : "rises " + q.shift(rise.by())) + marked;
    }

    private String untouched(SetUp.Untouched u) {
        Quantities q = new Quantities(si);
        return "rear tips " + q.shift(u.rearTip()) + ", front tips " + q.shift(u.frontTip())
                + "; its anti-scalp wheels with it";
    }

    private String deck(SetUp.Deck d) {
        Quantities q = new Quantities(si);
        String reversed = d.rakeAfter().meters() < 0 ? " (the rear would cut lower)" : "";
        return "cut " + change(q.length(d.heightBefore()), q.length(d.heightAfter())) + ", front lower by "
                + change(q.length(d.rakeBefore()), q.length(d.rakeAfter())) + reversed;
    }

    private String gauge(Length off) {
        return still(off)
                ? "reads as before"
                : "cuts " + new Quantities(si).shift(off) + " from what its marks say, until the deck is reset";
    }

    private static String speed(Change.Speed speed) {
        double percent = 100 * (speed.ratio() - 1);
        if (Math.abs(percent) < 0.05) {
            return "as now, and pull as well";
        }
        return (percent > 0 ? "+" : "") + Figures.decimals(percent, 1) + " %, pull "
                + (percent > 0 ? "" : "+") + Figures.decimals(100 / speed.ratio() - 100, 1) + " %"
                + (speed.fromSizes() ? ", from the diameters" : "");
    }

    private static String heavier(String mass, double kilograms) {
        return Math.abs(kilograms) < 0.05
                ? "as heavy as now"
                : kilograms > 0 ? mass + " heavier" : mass.substring(1) + " lighter";
    }

    private static String change(String was, String is) {
        return was.equals(is) ? is + " as now" : was + " -> " + is;
    }

    /** The hanger turns, in a sentence for each pair. */
    public List<Line> turns(SetUp s) {
        List<Line> lines = new ArrayList<>();
        Judged<SetUp.Hangers> turns = lacking.note(s.turns());
        turns.value().ifPresent(t -> {
            lines.add(new Line("rear hangers", turned(t.rear())));
            lines.add(new Line("front hangers", turned(t.front())));
        });
        return lines;
    }

    private static String turned(double turns) {
        String count = Figures.decimals(Math.abs(turns), 2);
        if (count.equals("0")) {
            return "leave them";
        }
        return count
                + (count.equals("1") ? " turn" : " turns")
                + (turns > 0 ? ", longer (lowers the deck)" : ", shorter (raises the deck)");
    }

    /** One judgment of what was measured. */
    public Line judged(Measured.Judgment j) {
        Quantities q = new Quantities(si);
        String range = q.shift(j.least()) + " to " + q.shift(j.most());
        return new Line(
                what(j.what()), shown(j) + ", due " + range + ": " + (j.reached() ? "reached" : "set it again"));
    }

    private String shown(Measured.Judgment j) {
        Quantities q = new Quantities(si);
        boolean moved = j.what() == Measured.What.REAR_HANGERS || j.what() == Measured.What.FRONT_HANGERS;
        return moved ? q.shift(j.value()) : q.length(j.value());
    }

    private static String what(Measured.What what) {
        return switch (what) {
            case REAR_SIDES -> "rear, left less right";
            case FRONT_SIDES -> "front, left less right";
            case RAKE -> "rake";
            case HEIGHT -> "height of cut";
            case REAR_HANGERS -> "rear hangers lowered";
            case FRONT_HANGERS -> "front hangers lowered";
        };
    }
}
