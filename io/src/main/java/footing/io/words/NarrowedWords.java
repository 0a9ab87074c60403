package footing.io.words;

import footing.core.answer.Answer;
import footing.core.answer.MachineAnswer;
import footing.core.answer.Narrowing;
import footing.core.chance.Metalog;
import footing.core.chance.Spread;
import footing.core.fleet.Case;
import footing.core.fleet.Key;
import footing.core.fleet.Numbers;
import footing.core.fleet.Origin;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How much surer records make an answer, in a sentence or two. */
public final class NarrowedWords {
    /** Ranges that differ by less are alike. */
    private static final double ALIKE = 0.03;

    private NarrowedWords() {}

    /**
     * The sentence: how often the machine goes flat on which most was learned, and what the choices save.
     *
     * @param unlearned the case of the answer had nothing been written down
     */
    public static String of(Answer answer, Case unlearned, Narrowing narrowing) {
        List<String> narrower = new ArrayList<>();
        flats(answer, unlearned).ifPresent(narrower::add);
        String saves = (answer.machines().size() == 1 ? "the change saves " : "the changes together save ")
                + ranges(
                        Figures.money(narrowing.with().p10()) + " to "
                                + Figures.money(narrowing.with().p90()),
                        Figures.money(narrowing.without().p10()) + " to "
                                + Figures.money(narrowing.without().p90()));
        boolean surer = narrowing.any() && narrowing.share() < 1 - ALIKE;
        if (surer) {
            narrower.add(saves);
        }
        String first = narrower.isEmpty()
                ? "Your records don’t make it surer yet."
                : "Your records narrow it: four times in five " + Lists.and(narrower) + ".";
        return narrowing.any() && !surer ? first + " They leave the money as unsure as it was: " + saves + "." : first;
    }

    private static String ranges(String with, String without) {
        return with + " (without them " + without + ")";
    }

    private static Optional<String> flats(Answer answer, Case unlearned) {
        String most = "";
        double least = 1 - ALIKE;
        for (MachineAnswer m : answer.machines()) {
            Case.Machine now = answer.of().machine(m.id());
            Key key = now.flatsKey();
            double share =
                    width(now.numbers(), key) / width(unlearned.machine(m.id()).numbers(), key);
            if (now.numbers().origin(key) == Origin.LEARNED && share < least) {
                most = m.id();
                least = share;
            }
        }
        if (most.isEmpty()) {
            return Optional.empty();
        }
        Key key = answer.of().machine(most).flatsKey();
        String unit = key == Key.FLATS_PER_SEASON ? " flats a season" : " flats in 1,000 h";
        return Optional.of(most + " has "
                + ranges(
                        range(answer.of().machine(most).numbers(), key) + unit,
                        range(unlearned.machine(most).numbers(), key)));
    }

    /** How many times as large the high end is, as a logarithm; not a number for one that is known. */
    private static double width(Numbers numbers, Key key) {
        return numbers.get(key).orElseThrow() instanceof Metalog m ? Math.log(m.high() / m.low()) : Double.NaN;
    }

    private static String range(Numbers numbers, Key key) {
        Spread spread = numbers.get(key).orElseThrow();
        return spread instanceof Metalog m
                ? Figures.count(m.low()) + " to " + Figures.count(m.high())
                : Figures.count(spread.likely());
    }
}
