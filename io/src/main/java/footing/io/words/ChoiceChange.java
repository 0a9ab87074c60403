package footing.io.words;

import footing.core.answer.Verdict;
import footing.core.compare.Difference;
import footing.core.compare.MachineDifference;
import footing.core.fleet.Case;
import footing.core.fleet.ResolvedMachine;
import footing.core.fleet.Resolver;
import footing.core.fleet.When;
import org.jspecify.annotations.Nullable;

/** What is recommended for a machine in one version and in the other, and how clearly. */
public final class ChoiceChange {
    private ChoiceChange() {}

    /** 'order with airless drives and solid casters, as before'. */
    public static String of(Difference d, MachineDifference m) {
        MachineDifference.Standing was = m.before();
        MachineDifference.Standing is = m.after();
        if (is == null) {
            return "no longer there";
        }
        String now = does(d.after(), m.id(), is);
        if (was == null) {
            return now + "; not there before";
        }
        if (isSame(m)) {
            return now + ", as before";
        }
        String before = does(d.before(), m.id(), was);
        return now.equals(before)
                ? now + " (" + is.entry().id() + "); before: " + before + " ("
                        + was.entry().id() + ")"
                : now + "; before: " + before;
    }

    private static String does(Case of, String id, MachineDifference.Standing s) {
        ResolvedMachine machine = Resolver.resolve(of, of.machine(id));
        if (s.carried()) {
            return machine.isNew() ? "order as it comes" : "keep what it has";
        }
        String pieces = Pieces.changed(machine, s.entry());
        String verb = machine.isNew() && s.entry().when() == When.NOW
                ? "order with "
                : s.entry().when() == When.WORN ? "swap when worn to " : "swap now to ";
        return (leans(s) ? "leans to: " : "") + verb + pieces;
    }

    /** How clear that is: 'too close to call, as before', 'the change clearly pays; before: too close to call'. */
    public static String verdict(MachineDifference m) {
        MachineDifference.Standing was = m.before();
        MachineDifference.Standing is = m.after();
        if (is == null) {
            return was == null ? "" : "before: " + clear(was.verdict());
        }
        if (was == null) {
            return clear(is.verdict());
        }
        return clear(is.verdict())
                + (was.verdict() == is.verdict() ? ", as before" : "; before: " + clear(was.verdict()));
    }

    private static String clear(Verdict verdict) {
        return switch (verdict) {
            case PAYS -> "the change clearly pays";
            case KEEP -> "clearly best left as it is";
            case CLOSE -> "too close to call";
        };
    }

    /** True for a change that is only leaned to. */
    static boolean leans(MachineDifference.@Nullable Standing s) {
        return s != null && s.verdict() == Verdict.CLOSE && !s.carried();
    }

    static boolean isSame(MachineDifference m) {
        MachineDifference.Standing was = m.before();
        MachineDifference.Standing is = m.after();
        return was != null
                && is != null
                && was.carried() == is.carried()
                && was.entry().id().equals(is.entry().id())
                && was.entry().when() == is.entry().when();
    }
}
