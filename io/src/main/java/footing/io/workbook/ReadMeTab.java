package footing.io.workbook;

import footing.core.answer.Answer;
import footing.core.fleet.Case;
import footing.io.words.Origins;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What the workbook is, sheet by sheet, and what it isn't. */
final class ReadMeTab {
    private static final int LONGEST = 100;

    private final Tab tab;

    ReadMeTab(Tab tab) {
        this.tab = tab;
    }

    void write(Answer answer, List<String> notes) {
        Case.Heading heading = answer.of().heading();
        tab.text(0, 0, heading.title(), Look.TITLE);
        tab.note(
                1,
                0,
                "As of " + heading.asOf() + ". All money in " + heading.currency() + ". " + answer.futures()
                        + " ways it could go, seed " + answer.seed() + ".");
        int row = 3;
        for (String line : lines(answer, notes)) {
            for (String part : broken(line)) {
                tab.text(row++, 0, part);
            }
        }
        tab.widths(0, 112);
        tab.freeze(1, 0);
    }

    /** A line broken between words, so that it ends on the paper whatever typeface it is printed in. */
    private static List<String> broken(String line) {
        List<String> parts = new ArrayList<>();
        StringBuilder part = new StringBuilder();
        for (String word : line.split(" ", -1)) {
            if (part.length() + word.length() >= LONGEST && !part.isEmpty()) {
                parts.add(part.toString());
                part.setLength(0);
                part.append("    ");
            }
            part.append(part.isEmpty() || part.toString().isBlank() ? "" : " ").append(word);
        }
        parts.add(part.toString());
        return parts;
    }

    private static List<String> lines(Answer answer, List<String> notes) {
        Case.Prepared prepared = answer.of().heading().prepared();
        List<String> lines = new ArrayList<>();
        add(lines, "Prepared by ", prepared.by());
        add(lines, "Prepared for ", prepared.recipient());
        add(lines, "", prepared.on());
        add(lines, "", answer.of().heading().note());
        lines.add("Fleet: what to do with each machine, and the sums.");
        lines.add(
                "Change me: alter flats, billing, prices and lives in the yellow cells; the expected saving follows at once.");
        lines.add("Packages: what each package costs, part by part; its sums lead to the monthly sheets.");
        lines.add("By year: what each package moves in the bank account in each calendar year, in that year's money.");
        lines.add("Assumptions: every number, its unit, and whose it is.");
        lines.add("Paying: the loan (PMT), the tax deductions, and what they come to.");
        lines.add("MACHINE months: what each package is expected to cost in each month, and its present value.");
        lines.add(
                "MACHINE engine: the reckoning behind 'Change me', step by step; for the screen, on paper its sums alone.");
        lines.add(
                "A future is one simulated life of a machine. All figures are averages over them, unless they say otherwise.");
        lines.add(Origins.told(answer));
        lines.add(answer.reached());
        lines.addAll(notes);
        lines.add("It speaks of money. Other wheels change deck height, pitch and how a machine holds on a slope: the"
                + " operator's manual and local rules come first.");
        return lines;
    }

    private static void add(List<String> lines, String before, @Nullable String text) {
        if (text != null && !text.isBlank()) {
            lines.add(before + text);
        }
    }
}
