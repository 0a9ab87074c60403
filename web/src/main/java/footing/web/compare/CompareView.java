package footing.web.compare;

import footing.core.compare.Difference;
import footing.core.compare.MachineDifference;
import footing.core.compare.Split;
import footing.io.figure.WhatDidIt;
import footing.io.words.ChangeWords;
import footing.io.words.ChoiceChange;
import footing.io.words.Figures;
import footing.io.words.Lists;
import footing.web.answer.FigureView;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A comparison as the page shows it.
 *
 * @param fleet null if only one machine is compared, or stopped before it was known
 * @param untouched the machines whose answer is the same; empty if there are none
 */
public record CompareView(
        String headline,
        List<ChangeWords.Line> inputs,
        List<String> others,
        @Nullable Effect fleet,
        List<Effect> machines,
        String untouched,
        String method,
        boolean complete) {
    /**
     * What the changes did to one saving.
     *
     * @param said sentences: what to do, how clear it is, what else is to be known
     * @param change null if stopped before it was known
     * @param figure null if nothing that differs moved it
     */
    public record Effect(
            String name,
            List<String> said,
            @Nullable Sum change,
            @Nullable FigureView figure) {}

    /** To the cent. */
    public record Sum(String before, String after, String change) {}

    static CompareView of(Difference d) {
        List<Effect> machines = new ArrayList<>();
        for (MachineDifference m : d.machines()) {
            if (!ChangeWords.isUntouched(m)) {
                machines.add(machine(d, m, machines.size()));
            }
        }
        Split all = d.recommended();
        boolean several = d.machines().size() > 1 && all != null && !machines.isEmpty();
        return new CompareView(
                ChangeWords.headline(d),
                ChangeWords.inputs(d),
                ChangeWords.others(d),
                several ? effect(d, "All machines", List.of(), all, "did-it-all") : null,
                machines,
                ChangeWords.untouched(d),
                ChangeWords.method(d),
                d.complete());
    }

    private static Effect machine(Difference d, MachineDifference m, int number) {
        List<String> said = new ArrayList<>();
        said.add(Lists.capital(ChoiceChange.of(d, m)) + ".");
        said.add(Lists.capital(ChoiceChange.verdict(m)) + ".");
        Split split = m.recommended();
        Split kept = m.asBefore();
        if (kept != null && split != null && kept.after() != split.after()) {
            said.add("What was recommended before would save " + Figures.money(kept.after()) + " now.");
        }
        return effect(d, m.id(), said, split, "did-it-" + number);
    }

    private static Effect effect(Difference d, String name, List<String> said, @Nullable Split split, String figureId) {
        if (split == null) {
            return new Effect(name, said, null, null);
        }
        Split printed = split.toTheCent();
        Sum sum = new Sum(
                Figures.rate(printed.before()), Figures.rate(printed.after()), ChangeWords.toTheCent(printed.change()));
        boolean moved = printed.parts().stream().anyMatch(p -> p.change() != 0);
        FigureView figure = moved
                ? WhatDidIt.of(d, split, figureId, name).map(FigureView::of).orElse(null)
                : null;
        return new Effect(name, said, sum, figure);
    }
}
