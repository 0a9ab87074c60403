package footing.io.edit;

import footing.core.chance.Spread;
import footing.core.fleet.Dimension;
import footing.core.fleet.Input;
import footing.core.fleet.Key;
import footing.io.casefile.CaseFile;
import footing.io.casefile.Reading;
import footing.io.form.At;
import footing.io.form.FileText;
import footing.io.form.GuessMarks;
import footing.io.form.Node;
import footing.io.form.NumberForm;
import footing.io.form.Problems;
import footing.io.form.Written;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Changes the text of a case file, YAML or JSON, one value at a time. Comments, order, quotes, line breaks and all else
 * stay as they were, byte for byte, but for two things: the comment that marks a value as a guess says that it is yours
 * now, and a line that stands there switched off is switched on. What comes out is read as a case, and if anything is
 * wrong with it the problems are returned and the text stays.
 *
 * <p><b>Paths</b> are those of {@link Input#path}, such as {@code crews.north.fixes[1].delay} or {@code
 * machines.E2.worn.drive}. A key that isn't there goes behind the keys that usually stand before it; groups and lists
 * on the way to it are made, in brackets. An index just behind the last item of a list adds one. Beside numbers, any
 * other key can be set, such as {@code money.tax.schedule}.
 *
 * <p><b>Values</b> are as a person types them: {@code 21.40}, {@code 35 min}, {@code 14 %}; a three-point as in the
 * file or as {@code 3 / 6 / 11}, where a unit behind the last value is that of all three. A missing unit is filled in
 * only where it can't be misread: if just one of percent and fraction, or of minutes and hours, lies within the values
 * the key takes. So 14 is 14 % for a share of at most 100 %, but 0.14 is refused, and so is 2 for a share that may be
 * 200 %.
 *
 * <p>Which end goes flat is one number stated at either end: setting {@code flatsAt.drive} of a machine that states
 * {@code flatsAt.caster} changes that as well, to the rest.
 */
public final class CaseEdit {
    private static final String FILE = "case";
    private static final Set<String> OWNERS = Set.of("crews", "assemblies", "machines");

    private final Problems problems = new Problems(FILE);

    private CaseEdit() {}

    /** Sets one value. */
    public static Edited set(String text, String path, String typed) {
        return set(text, Map.of(path, typed));
    }

    /** Sets the value of an input. */
    public static Edited set(String text, Input input, String typed) {
        return set(text, input.path(), typed);
    }

    /**
     * Sets several values at once, for what is only right together, such as the rate and the months of a loan.
     *
     * @param typedByPath in the order they are to be set
     */
    public static Edited set(String text, Map<String, String> typedByPath) {
        CaseEdit edit = new CaseEdit();
        return edit.edit(text, body -> {
            String changed = body;
            for (Map.Entry<String, String> value : typedByPath.entrySet()) {
                changed = changed == null ? null : edit.put(changed, value.getKey(), value.getValue());
            }
            return changed;
        });
    }

    /**
     * Takes out what is stated at a path, so that the default is in force again; a group or list left empty by it goes
     * as well. The path may also name a group or an item of a list, such as {@code money.loan}.
     */
    public static Edited remove(String text, String path) {
        CaseEdit edit = new CaseEdit();
        return edit.edit(text, body -> edit.takeOut(body, path));
    }

    private Edited edit(String text, Function<String, @Nullable String> change) {
        String mark = text.startsWith("\uFEFF") ? "\uFEFF" : "";
        String changed = change.apply(text.substring(mark.length()));
        if (changed == null || problems.hasErrors()) {
            return new Edited.Refused(text, problems.errors());
        }
        Reading reading = CaseFile.read(mark + changed, FILE);
        return reading.found()
                .<Edited>map(c -> new Edited.Changed(mark + changed, c, reading.warnings()))
                .orElseGet(() -> new Edited.Refused(text, reading.problems()));
    }

    private @Nullable String put(String text, String path, String typed) {
        Node root = FileText.tree(text, problems);
        Route route = root == null ? null : Route.of(path, root);
        if (root == null || route == null || !leadsSomewhere(route, root)) {
            return null;
        }
        String on = switchedOn(text, route, root);
        if (!on.equals(text)) {
            return put(on, path, typed);
        }
        At at = at(route, root);
        Key key = route.key();
        Typed value = key == null ? Typed.other(typed, at, problems) : Typed.number(key, typed, at, problems);
        if (value == null) {
            return null;
        }
        Key end = key == Key.FLATS_AT_DRIVE
                ? Key.FLATS_AT_CASTER
                : key == Key.FLATS_AT_CASTER ? Key.FLATS_AT_DRIVE : null;
        return end != null && route.sibling(end).find(root) != null
                ? bothEnds(text, root, route, value, end)
                : spliced(text, root, route, value);
    }

    /** A key that stands there switched off is switched on before it is set, so that its line and remark serve again. */
    private static String switchedOn(String text, Route route, Node root) {
        Node here = root;
        for (int depth = 0; depth < route.steps().size(); depth++) {
            Step step = route.steps().get(depth);
            int i = step.in(here);
            if (i < 0) {
                return here instanceof Node.Mapping group && step instanceof Step.Name name
                        ? switchedOn(text, root, route.steps().subList(0, depth + 1), group, name)
                        : text;
            }
            here = Step.child(here, i);
        }
        return text;
    }

    private static String switchedOn(String text, Node root, List<Step> way, Node.Mapping group, Step.Name name) {
        String on = GuessMarks.switchedOn(text, group, name.name());
        Node then = on.equals(text) ? null : FileText.tree(on, new Problems(FILE));
        // Only what was asked for may have come in.
        return then != null && Tree.alike(Tree.with(then, way, null), root) ? on : text;
    }

    /** Sets the share of flats at one end where it is stated, and the rest at the other. */
    private @Nullable String bothEnds(String text, Node root, Route route, Typed value, Key end) {
        Spread share = new NumberForm(end).read(value.node(), At.TOP, problems);
        String first = route.find(root) == null ? text : spliced(text, root, route, value);
        Node then = first == null ? null : FileText.tree(first, problems);
        if (share == null || first == null || then == null) {
            return null;
        }
        Node rest = new Node.Scalar(1, Written.value(Dimension.SHARE, 1 - share.likely()), true);
        return spliced(first, then, route.sibling(end), new Typed(rest, ""));
    }

    private @Nullable String spliced(String text, Node root, Route route, Typed value) {
        String changed = new Splice(text, root).set(route.steps(), value).orElse(null);
        if (changed == null) {
            problems.error(at(route, root), "", "there is no such place in this file", "check the ids and indices");
            return null;
        }
        String ours = GuessMarks.unmarked(changed, lineOf(root, route.steps()));
        return asDue(ours, Tree.with(root, route.steps(), value.node()), at(route, root));
    }

    /** The line of the key a way leads to; 0 if there is none. */
    private static int lineOf(Node root, List<Step> steps) {
        Node here = root;
        int line = 0;
        for (Step step : steps) {
            int i = step.in(here);
            if (i < 0) {
                return 0;
            }
            line = here instanceof Node.Mapping m ? m.entries().get(i).key().line() : line;
            here = Step.child(here, i);
        }
        return line;
    }

    private @Nullable String takeOut(String text, String path) {
        Node root = FileText.tree(text, problems);
        if (root == null) {
            return null;
        }
        Route route = Route.of(path, root);
        if (route.steps().isEmpty() || route.find(root) == null) {
            problems.error(new At(1, path), "", "nothing is stated here", "leave it as it is");
            return null;
        }
        return asDue(
                new Splice(text, root).remove(route.steps()), Tree.with(root, route.steps(), null), at(route, root));
    }

    /** The changed text if it says what it should and nothing else; null, and reported, if it doesn't. */
    private @Nullable String asDue(String changed, @Nullable Node due, At at) {
        if (Tree.alike(FileText.tree(changed, new Problems(FILE)), due)) {
            return changed;
        }
        problems.error(at, "", "this can't be changed without touching what stands around it", "edit the file itself");
        return null;
    }

    /** Crews, assemblies and machines aren't made by setting one of their numbers. */
    private boolean leadsSomewhere(Route route, Node root) {
        if (route.steps().isEmpty()) {
            problems.error(At.TOP, route.path(), "not a place in a case file", "try: machines.E1.keepUntil");
            return false;
        }
        if (!(route.steps().get(0) instanceof Step.Name top)
                || !OWNERS.contains(top.name())
                || route.steps().size() < 3) {
            return true;
        }
        List<Step> way = route.steps().subList(0, 2);
        if (new Route(route.path(), way, null).find(root) != null) {
            return true;
        }
        String advice = top.name().equals("assemblies")
                ? "an assembly of a catalog can be changed once it is stated in this file"
                : "state it first";
        problems.error(new At(1, route.path()), "", "nothing of this id stands in this file", advice);
        return false;
    }

    private static At at(Route route, Node root) {
        Node there = route.find(root);
        return new At(there == null ? 1 : there.line(), route.path());
    }
}
