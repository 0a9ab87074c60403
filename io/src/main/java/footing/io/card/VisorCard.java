package footing.io.card;

import footing.core.fleet.Case;
import footing.io.paper.Markup;
import footing.io.paper.Paper;
import footing.io.paper.Press;
import footing.io.paper.Typefaces;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The visor card: one line a flat, to be filled in by whoever had it. Its headings are those that records are read by, so
 * that the card typed up is a sheet as it stands.
 */
public final class VisorCard {
    /** The headings, in order; typed up, they are the first row of the sheet. */
    public static final List<String> HEADINGS = List.of(
            "date",
            "machine",
            "what happened",
            "hour meter",
            "wheel",
            "what was done",
            "minutes down",
            "cost",
            "note (by whom)");

    private static final int MOST_FLATS = 24;
    private static final int FEWEST_FLATS = 8;
    /** Lines of a page. */
    private static final int LINES = 33;

    private static final int READINGS = 3;
    private static final int MACHINE = 1;
    private static final int EVENT = 2;

    private final Markup out = new Markup(new Typefaces());
    private final Sheet sheet = new Sheet(out);
    private final Optional<Case> stated;
    private final List<String> machines;

    private VisorCard(Optional<Case> stated) {
        this.stated = stated;
        machines = stated.stream()
                .flatMap(c -> c.machines().stream())
                .map(Case.Machine::id)
                .toList();
    }

    /**
     * Prints the card.
     *
     * @param stated whose machines and fixes it names; empty for a card for anybody
     * @throws IOException if it can't be written
     */
    public static void write(Optional<Case> stated, Paper paper, OutputStream to) throws IOException {
        VisorCard card = new VisorCard(stated);
        card.document();
        Press.print(card.out.written(), paper, to);
    }

    private void document() {
        String title = "Visor card: flats and meter readings";
        out.raw("<!DOCTYPE html>").open("html", "lang", "en", "xmlns", "http://www.w3.org/1999/xhtml");
        out.open("head").element("title", title);
        out.empty("meta", "name", "subject", "content", "One line a flat, to be filled in");
        out.empty("meta", "name", "description", "content", "One line a flat, to be filled in");
        out.open("style").raw(Sheet.style()).close().close();
        out.open("body", "class", "visor").open("div", "class", "footer");
        out.element("span", title + stated.map(c -> ", " + c.heading().title()).orElse(""));
        out.close().element("h1", title);
        sheet.paragraph(
                "One line a flat, written when the machine cuts again. Leave open what you don't know; the day and the"
                        + " machine are enough.",
                "who");
        sheet.list(legend());
        lines();
        sheet.paragraph(
                "A tire is looked at with the engine off, the brake set and the key out; how to lift and what to inflate"
                        + " to, the operator's manual says.",
                "caution");
        out.close().close();
    }

    /** How to fill it in, in the words that are understood. */
    private List<String> legend() {
        List<String> how = new ArrayList<>();
        how.add("Date: year-month-day, such as 2027-05-04. Minutes: until it cut again. Cost: what was paid.");
        how.add("Wheel: drive left, drive right, caster left, caster right.");
        Set<String> fixes = new LinkedHashSet<>();
        stated.ifPresent(c -> c.crews().forEach(crew -> crew.fixes().forEach(f -> fixes.add(f.name()))));
        how.add("What was done: " + (fixes.isEmpty() ? "plug on site, wheel swap, to the shop, new tire" : told(fixes))
                + ".");
        if (!machines.isEmpty()) {
            how.add("Machines: " + told(machines) + ".");
        }
        how.add("Begin each machine with its meter on the day the card goes up, and end with a reading when it comes"
                + " down: a season without a flat counts too.");
        return how;
    }

    private static String told(Iterable<String> words) {
        return String.join(", ", words);
    }

    private void lines() {
        out.open("table").open("thead").open("tr");
        for (int column = 0; column < HEADINGS.size(); column++) {
            out.element("th", HEADINGS.get(column), "scope", "col", "class", "c" + column);
        }
        out.close().close().open("tbody");
        List<String> known = machines.isEmpty() ? List.of("", "") : machines;
        known.forEach(m -> line(m, "begin"));
        int others = known.size() + (machines.isEmpty() ? READINGS : machines.size());
        int flats = Math.max(FEWEST_FLATS, Math.min(MOST_FLATS, LINES - others));
        for (int i = 0; i < flats; i++) {
            line(machines.size() == 1 ? machines.get(0) : "", "flat");
        }
        if (machines.isEmpty()) {
            for (int i = 0; i < READINGS; i++) {
                line("", "reading");
            }
        }
        machines.forEach(m -> line(m, "reading"));
        out.close().close();
    }

    private void line(String machine, String event) {
        out.open("tr");
        for (int column = 0; column < HEADINGS.size(); column++) {
            out.element("td", column == MACHINE ? machine : column == EVENT ? event : "", "class", "box line");
        }
        out.close();
    }
}
