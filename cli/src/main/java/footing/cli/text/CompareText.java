package footing.cli.text;

import footing.core.compare.Difference;
import footing.core.compare.MachineDifference;
import footing.core.compare.Part;
import footing.core.compare.Split;
import footing.core.fleet.Case;
import footing.io.words.ChangeWords;
import footing.io.words.ChoiceChange;
import footing.io.words.Figures;
import java.util.List;

/** A comparison of two versions of a case as a page: what changed, what the answer was and is, and what did it. */
public final class CompareText {
    private static final int NUMBER = 9;
    private static final int LABEL = Lines.WIDTH - 3 * (NUMBER + 1);
    private static final int VALUES = 56;

    private final Difference difference;
    private final Lines lines;

    private CompareText(Difference difference, Letters letters) {
        this.difference = difference;
        lines = new Lines(letters);
    }

    public static String of(Difference difference, Letters letters) {
        return new CompareText(difference, letters).page();
    }

    private String page() {
        lines.hanging("before: ", heading(difference.before()));
        lines.hanging("now:    ", heading(difference.after()));
        lines.blank().paragraph(ChangeWords.headline(difference));
        changes();
        if (!difference.isNothing()) {
            effects();
        }
        lines.blank().paragraph(ChangeWords.method(difference));
        return lines.toString();
    }

    private void effects() {
        lines.head("What it did to the saving, largest part first").blank();
        row("", "before", "now", "change");
        Split all = difference.recommended();
        if (all != null) {
            split("all machines", all);
        }
        difference.machines().stream().filter(m -> !ChangeWords.isUntouched(m)).forEach(this::machine);
        String untouched = ChangeWords.untouched(difference);
        if (!untouched.isEmpty()) {
            lines.blank().paragraph(untouched);
        }
    }

    private static String heading(Case c) {
        return c.heading().title() + ", as of " + c.heading().asOf();
    }

    private void changes() {
        List<ChangeWords.Line> inputs = ChangeWords.inputs(difference);
        List<String> others = ChangeWords.others(difference);
        if (inputs.isEmpty() && others.isEmpty()) {
            return;
        }
        lines.head("What changed");
        for (ChangeWords.Line line : inputs) {
            String values = line.before() + " -> " + line.after();
            int room = Lines.WIDTH - 2 - values.length() - 2;
            if (line.name().length() <= room && room > Lines.WIDTH - VALUES) {
                lines.line("  " + Lines.left(line.name(), room) + "  " + values);
            } else {
                lines.item(line.name());
                lines.hanging("      ", values);
            }
        }
        others.forEach(lines::item);
    }

    private void machine(MachineDifference m) {
        lines.blank();
        Split split = m.recommended();
        if (split != null) {
            split(m.id(), split);
        } else {
            lines.paragraph(m.id());
        }
        lines.item(ChoiceChange.of(difference, m));
        Split kept = m.asBefore();
        if (kept != null && split != null && kept.after() != split.after()) {
            lines.item("what was recommended before would save " + Figures.money(kept.after()) + " now");
        }
    }

    private void split(String name, Split split) {
        row(name, Figures.money(split.before()), Figures.money(split.after()), ChangeWords.signed(split.change()));
        int hidden = 0;
        for (Part part : split.largestFirst()) {
            if (Figures.shows(part.change())) {
                row("  " + ChangeWords.cause(difference, part), "", "", ChangeWords.signed(part.change()));
            } else {
                hidden++;
            }
        }
        if (hidden > 0) {
            lines.item("and " + Figures.word(hidden) + (hidden == 1 ? " change" : " changes") + " worth less than 1");
        }
    }

    private void row(String label, String before, String after, String change) {
        String numbers = number(before) + number(after) + number(change);
        String lead = label.startsWith("  ") ? "  " : "";
        int room = before.isEmpty() ? Lines.WIDTH - NUMBER - 2 : LABEL;
        List<String> wrapped = Lines.wrap(label, room - lead.length());
        for (String line : wrapped.subList(0, wrapped.size() - 1)) {
            lines.line(lead + line);
        }
        String last = lead + wrapped.get(wrapped.size() - 1);
        String gap = " ".repeat(Math.max(0, LABEL - last.length()));
        lines.line(last + gap + numbers.substring(Math.max(0, last.length() - LABEL)));
    }

    private static String number(String figure) {
        return Lines.right(figure, NUMBER + 1);
    }
}
