package footing.io.words;

import footing.core.answer.Answer;
import footing.core.answer.EntryAnswer;
import footing.core.answer.MachineAnswer;
import footing.core.answer.Verdict;
import footing.core.fleet.ResolvedMachine;
import footing.core.fleet.When;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What to do about one machine, taken from its verdict, so that headline, row and reason can't contradict each other.
 *
 * @param about the entry its row speaks of: what is recommended or, where that is to keep what it has, the best change;
 *     null if there is nothing to change to
 * @param rival in a toss-up the entry it can't be told from
 */
public record Advice(
        MachineAnswer machine,
        Verb verb,
        @Nullable EntryAnswer about,
        @Nullable EntryAnswer rival) {

    /** The advice that follows from a verdict; {@code threshold} is the chance from which a saving was called sure. */
    public static Advice of(MachineAnswer m, double threshold) {
        EntryAnswer about = m.bestChange();
        if (about == null || m.verdict() == Verdict.KEEP || clearlyWorse(m, about)) {
            return new Advice(m, m.machine().isNew() ? Verb.ORDER_AS_IT_COMES : Verb.KEEP, about, null);
        }
        return m.verdict() == Verdict.PAYS
                ? new Advice(m, change(m.machine(), about.entry()), about, null)
                : new Advice(m, Verb.TOSS_UP, about, rival(m, about, threshold));
    }

    /**
     * True if what it has is cheapest and the best change that can happen at all is clearly worse. The verdict may
     * still be 'close' then, because of an entry whose sets would never be fitted before the trade.
     */
    private static boolean clearlyWorse(MachineAnswer m, EntryAnswer about) {
        return m.recommended() == 0 && about.saving().mean() <= -noticeable(m, about);
    }

    private static double noticeable(MachineAnswer m, EntryAnswer entry) {
        return Math.max(
                2 * entry.saving().standardError(),
                0.01 * Math.abs(m.carried().cost().mean()));
    }

    /** One for each machine of an answer. */
    public static List<Advice> all(Answer answer) {
        return answer.machines().stream().map(m -> of(m, answer.threshold())).toList();
    }

    private static Verb change(ResolvedMachine machine, ResolvedMachine.Entry entry) {
        if (entry.when() == When.WORN) {
            return Verb.SWAP_WHEN_WORN;
        }
        return machine.isNew() ? Verb.ORDER_WITH : Verb.SWAP_NOW;
    }

    /** Where a change is clear and only which one is not, the rival is the other change. */
    private static EntryAnswer rival(MachineAnswer m, EntryAnswer about, double threshold) {
        EntryAnswer.OverNext next = about.overNext();
        double clear = noticeable(m, about);
        boolean beatsCarried = about.saving().mean() > clear && about.saving().chance() >= threshold;
        if (m.recommended() == 0 || !beatsCarried || next == null) {
            return m.carried();
        }
        return m.entries().stream()
                .filter(e -> e.entry().equals(next.entry()))
                .findFirst()
                .orElse(m.carried());
    }

    public String id() {
        return machine.id();
    }

    /** True if it was not too close to call, or leans to other wheels. */
    public boolean leansToChange() {
        return machine.recommended() != 0;
    }

    /** True in a toss-up between two changes, either of which beats what the machine has. */
    public boolean isBetweenChanges() {
        return rival != null && !rival.entry().equals(machine.carried().entry());
    }

    /** What the change consists of; empty if there is nothing to change to. */
    public String pieces() {
        return about == null ? "" : Pieces.changed(machine.machine(), about.entry());
    }

    /** The same with its time where it waits for worn sets. */
    public String piecesWhen() {
        return about == null ? "" : Pieces.changedWhen(machine.machine(), about.entry());
    }

    /** What it has, as one of two things to toss for. */
    public String asItIs() {
        return machine.machine().isNew() ? "as it comes" : "as it is";
    }

    /** What to do, for the row of a table. */
    public String row() {
        return switch (verb) {
            case ORDER_WITH -> "order with " + pieces();
            case ORDER_AS_IT_COMES -> "order as it comes";
            case SWAP_NOW -> "swap now to " + pieces();
            case SWAP_WHEN_WORN -> "swap when worn to " + pieces();
            case KEEP -> "keep what it has";
            case TOSS_UP -> "toss-up: " + piecesWhen() + (isBetweenChanges() ? ", or " + rivalWords() : "");
        };
    }

    /** The other side of a toss-up. */
    String rivalWords() {
        return rival == null || !isBetweenChanges() ? asItIs() : Pieces.changedWhen(machine.machine(), rival.entry());
    }

    /** Operating hours to the trade over hours a year: how many seasons the machine still runs. */
    public double seasons() {
        return machine.machine().hoursLeft() / machine.machine().hoursPerYear();
    }

    /** False where a figure a season would be more than all there is. */
    boolean hasASeason() {
        return seasons() >= 1;
    }
}
