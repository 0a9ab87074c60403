package footing.io.words;

import footing.core.compare.Changed;
import footing.core.compare.Difference;
import footing.core.compare.MachineDifference;
import footing.core.compare.MeasureChange;
import footing.core.compare.OtherChange;
import footing.core.compare.Part;
import footing.core.compare.Split;
import footing.core.fleet.Called;
import footing.core.fleet.Case;
import footing.core.fleet.InForce;
import footing.core.fleet.Input;
import footing.core.fleet.Key;
import footing.core.fleet.Origin;
import footing.core.fleet.Place;
import footing.core.fleet.Values;
import footing.io.form.Written;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What a comparison of two versions of a case says, in words. */
public final class ChangeWords {
    private static final String THERE = "there";
    private static final Map<String, String> PLACES = Map.of(
            "machines", "machine", "crews", "crew", "assemblies", "assembly", "packages", "package", "money", "the");
    private static final Map<String, String> NAMES = Map.ofEntries(
            Map.entry("asOf", "the date of the case"),
            Map.entry("season", "the season"),
            Map.entry("for", "what the loan pays for"),
            Map.entry("schedule", "the tax schedule"),
            Map.entry("fullWeeks", "its full weeks"),
            Map.entry("fixes", "its ways to fix a flat"),
            Map.entry("replaces", "what a fix replaces"),
            Map.entry("sealable", "whether sealant would have spared it"),
            Map.entry("kind", "what keeps it up"),
            Map.entry("position", "where it goes"),
            Map.entry("treats", "what it is made from in place"),
            Map.entry("drive", "its drive assembly"),
            Map.entry("caster", "its caster assembly"),
            Map.entry("crew", "its crew"),
            Map.entry("new", "whether it is yet to be bought"),
            Map.entry("carries", "what it carries now"),
            Map.entry("consider", "what is considered for it"),
            Map.entry("when", "when it may change over"),
            Map.entry("seat", "how the lug nuts seat"),
            Map.entry("wheels", "what was on it when it was measured"));

    private ChangeWords() {}

    /** The comparison in one or two sentences. */
    public static String headline(Difference d) {
        Split all = d.recommended();
        if (all == null) {
            return "Stopped before the changes were split; the two answers are below.";
        }
        if (d.isNothing() && all.change() == 0) {
            return "Both say the same; nothing an answer rests on differs.";
        }
        String first = "What is recommended saved " + Figures.money(all.before()) + " before and saves "
                + Figures.money(all.after()) + " now"
                + (leans(d) ? ", counting for a toss-up the change it leans to: " : ": ")
                + more(all.change()) + ".";
        Split kept = d.asBefore();
        boolean other = d.machines().stream().anyMatch(m -> m.isCommon() && !ChoiceChange.isSame(m));
        return kept == null || !other
                ? first
                : first + " What was recommended before would save " + Figures.money(kept.after())
                        + " now, on the machines of both.";
    }

    private static boolean leans(Difference d) {
        return d.machines().stream().anyMatch(m -> ChoiceChange.leans(m.before()) || ChoiceChange.leans(m.after()));
    }

    private static String more(double change) {
        return !Figures.shows(change) ? "no change" : Figures.size(change) + (change > 0 ? " more" : " less");
    }

    /** A change with its sign; 0 for what doesn't show in whole units. */
    public static String signed(double change) {
        return !Figures.shows(change) ? "0" : (change > 0 ? "+" : "-") + Figures.size(change);
    }

    /** A change with its sign, to the cent. */
    public static String toTheCent(double change) {
        String size = Figures.rate(Math.abs(change));
        return size.equals("0.00") ? size : (change > 0 ? "+" : "−") + size;
    }

    /** An input that differs: what it is called, and its value before and after. */
    public record Line(String name, String before, String after) {}

    /** The inputs that differ and were stated in one of the versions. */
    public static List<Line> inputs(Difference d) {
        List<Line> lines = new ArrayList<>();
        for (Changed c : d.inputs()) {
            if (!c.follows()) {
                boolean alike = value(c.before(), false).equals(value(c.after(), false));
                lines.add(new Line(name(d, c.input()), value(c.before(), alike), value(c.after(), alike)));
            }
        }
        return lines;
    }

    /** Two values that look the same when rounded are told to all their digits. */
    private static String value(@Nullable InForce number, boolean exactly) {
        if (number == null) {
            return "not stated";
        }
        String value =
                exactly ? Written.spread(number.input().key().dimension(), number.value()) : Naming.value(number);
        String whose = number.origin().isGuess() ? " (a guess)" : "";
        return value + (number.origin() == Origin.TYPICAL ? " (typical)" : whose);
    }

    private static String name(Difference d, Input input) {
        return Naming.of(d.before(), input);
    }

    /** What differs beside numbers, a sentence each. */
    public static List<String> others(Difference d) {
        List<String> all =
                new ArrayList<>(d.others().stream().map(c -> told(d, c)).toList());
        d.measures().forEach(m -> all.add(measured(m, d.after())));
        return all;
    }

    private static String measured(MeasureChange c, Case after) {
        boolean si = after.heading().si();
        String owner = c.measure().place() == Place.MACHINE
                ? "Machine " + c.owner()
                : Lists.capital(Called.in(after).assembly(c.owner()));
        String was = value(c, c.before(), si);
        String is = value(c, c.after(), si);
        return owner + ": " + c.measure().label() + " was " + was + " and is " + is + ".";
    }

    private static String value(MeasureChange c, OptionalDouble x, boolean si) {
        return x.isEmpty() ? "not stated" : new Quantities(si).value(c.measure().physical(), x.getAsDouble());
    }

    private static String told(Difference d, OtherChange c) {
        int first = c.path().indexOf('.');
        String room = first < 0 ? "" : c.path().substring(0, first);
        String place = PLACES.getOrDefault(room, "");
        String rest = c.path().substring(first + 1);
        Case has = c.after().isEmpty() ? d.before() : d.after();
        if (c.before().equals(THERE) || c.after().equals(THERE)) {
            boolean isNew = c.before().isEmpty();
            return room.equals("assemblies")
                    ? Lists.capital(Called.in(has).assembly(rest)) + (isNew ? " are new." : " are no longer there.")
                    : Lists.capital(place + " " + rest + (isNew ? " is new." : " is no longer there."));
        }
        int last = rest.lastIndexOf('.');
        String owner =
                rest.substring(0, Math.max(0, last)).replaceFirst("\\.?(fixes\\[\\d+\\]|hub\\.drive|fitted)$", "");
        String who = room.equals("assemblies") ? Called.in(has).assembly(owner) : place + " " + owner;
        String subject = place.isEmpty() || place.equals("the") ? "" : who + ": ";
        String name = rest.substring(last + 1);
        return Lists.capital(subject + NAMES.getOrDefault(name, name)) + " was "
                + shown(on(d.before(), room, owner), name, c.before()) + " and is "
                + shown(on(d.after(), room, owner), name, c.after()) + ".";
    }

    /** Wheels of a machine are told apart from its others only. */
    private static Called on(Case of, String room, String owner) {
        return room.equals("machines")
                ? Called.among(of, new Values(of, of.machine(owner)).assembliesInPlay())
                : Called.in(of);
    }

    private static String shown(Called wheels, String name, String value) {
        String list = value.startsWith("[") ? value.substring(1, value.length() - 1) : value;
        return switch (list) {
            case "" -> "not stated";
            case "true" -> "yes";
            case "false" -> "no";
            default -> called(wheels, name, list);
        };
    }

    /** Ids of wheels by what they are. */
    private static String called(Called called, String name, String value) {
        return switch (name) {
            case "drive", "caster", "treats" -> called.assembly(value);
            case "carries", "wheels" -> called.wheels(value);
            case "consider" ->
                Lists.and(Stream.of(value.split(", ")).map(called::wheels).toList());
            default -> value;
        };
    }

    /** How the parts were found. */
    public static String method(Difference d) {
        String orders = d.overAllOrders() ? "all orders" : "two orders, the listed one and its reverse,";
        String same = d.futuresBefore() == d.futuresAfter()
                ? "All on the same " + Figures.money(d.futures()) + " ways it could go"
                : "Each version on as many ways as its answer by itself (" + Figures.money(d.futuresBefore())
                        + " before, " + Figures.money(d.futuresAfter()) + " now)";
        return same + ". A part is what its input changes when it is replaced, on the average over " + orders
                + " in which they can be; the parts add up to the change before rounding.";
    }

    /** Which machines the changes don't touch; empty if they touch all. */
    public static String untouched(Difference d) {
        List<MachineDifference> same =
                d.machines().stream().filter(ChangeWords::isUntouched).toList();
        if (same.isEmpty()) {
            return "";
        }
        boolean toTheBit = same.stream()
                .allMatch(m -> Objects.requireNonNull(m.recommended()).change() == 0);
        return "No change at all for "
                + Lists.and(same.stream().map(MachineDifference::id).toList())
                + (toTheBit ? "." : ", but for chance.");
    }

    /** True for a machine whose answer is the same in every respect, but for chance. */
    public static boolean isUntouched(MachineDifference m) {
        Split split = m.recommended();
        return split != null
                && ChoiceChange.isSame(m)
                && split.parts().stream().allMatch(p -> p.kind() == Part.Kind.FUTURES || p.change() == 0);
    }

    /** What a part of a change is due to. */
    public static String cause(Difference d, Part part) {
        return switch (part.kind()) {
            case INPUTS -> cause(d, part.inputs());
            case OTHER -> "dates, lists and packages";
            case ADDED -> "machine " + part.machine() + ", not there before";
            case REMOVED -> "machine " + part.machine() + ", no longer there";
            case FUTURES ->
                "chance: " + Figures.money(d.futuresBefore()) + " ways were run before, "
                        + Figures.money(d.futuresAfter()) + " now";
        };
    }

    private static String cause(Difference d, List<Input> inputs) {
        Input first = inputs.get(0);
        if (inputs.size() == 1) {
            return name(d, first);
        }
        return first.key() == Key.FIX_SHARE
                ? "shares of the ways to fix a flat (crew " + first.owner() + ")"
                : Lists.and(inputs.stream().map(i -> name(d, i)).toList());
    }
}
