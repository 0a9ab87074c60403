package footing.io.card;

import footing.core.trial.RunPlan;
import footing.core.trial.Side;
import footing.io.paper.Markup;
import footing.io.paper.Paper;
import footing.io.paper.Press;
import footing.io.paper.Typefaces;
import footing.io.trial.RunSheet;
import footing.io.words.Lists;
import footing.io.words.TrialCautions;
import footing.io.words.TrialWords;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;

/** The runs of a planned trial on paper, with boxes to write in and the cautions above them. */
public final class RunCard {
    private final RunSheet plan;
    private final Sheet sheet;
    private final Markup out;

    private RunCard(RunSheet plan) {
        this.plan = plan;
        out = new Markup(new Typefaces());
        sheet = new Sheet(out);
    }

    /**
     * Prints the runs.
     *
     * @throws IOException if it can't be written
     */
    public static void write(RunSheet plan, Paper paper, OutputStream to) throws IOException {
        RunCard card = new RunCard(plan);
        card.document();
        Press.print(card.out.written(), paper, to);
    }

    private void document() {
        String title = "Run sheet: " + plan.measure().words() + ", " + plan.a() + " against " + plan.b();
        out.raw("<!DOCTYPE html>").open("html", "lang", "en", "xmlns", "http://www.w3.org/1999/xhtml");
        out.open("head").element("title", title);
        out.empty("meta", "name", "subject", "content", "Runs to make, in order");
        out.empty("meta", "name", "description", "content", "Runs to make, in order");
        out.open("style").raw(Sheet.style()).close().close();
        out.open("body").open("div", "class", "footer").element("span", title).close();
        out.element("h1", title);
        TrialCautions.of(plan.measure().kind()).forEach(c -> sheet.paragraph(c, "caution"));
        sheet.head("Before the first run");
        sheet.boxes(List.of(
                List.of("Place, date", ""),
                List.of("Machine, hours", ""),
                List.of("Mass with " + plan.a(), ""),
                List.of("Mass with " + plan.b(), ""),
                List.of("Margin: less counts as alike", ""),
                List.of("Held equal (fuel, tread, operator)", "")));
        sheet.head("The runs, in this order");
        sheet.list(List.of(
                "The order was tossed for; keep it, and drop no run. A run that went wrong is noted, not repeated.",
                "Fresh lane each run; the two runs of a pair right after each other and the same way.",
                "Pressure with one gauge before each run; moisture with a probe where the machine ran."));
        runs();
        String limits = TrialWords.limits(plan.measure().kind());
        if (!limits.isEmpty()) {
            sheet.paragraph(limits, "caution");
        }
        out.close().close();
    }

    private void runs() {
        boolean surfaces =
                plan.plan().runs().stream().anyMatch(r -> !r.surface().isEmpty());
        String unit = plan.measure().shown(plan.metric()).unit();
        out.open("table").open("thead").open("tr");
        head("run");
        if (surfaces) {
            head("surface");
        }
        List.of("pair", "side", "lane", "way").forEach(this::head);
        head(Lists.capital(plan.measure().words()) + (unit.isEmpty() ? "" : ", " + unit));
        head(plan.metric() ? "pressure, kPa" : "pressure, psi");
        List.of("moisture, %", "note").forEach(this::head);
        out.close().close().open("tbody");
        for (RunPlan.Planned run : plan.plan().runs()) {
            out.open("tr").element("td", "" + run.order());
            if (surfaces) {
                out.element("td", run.surface());
            }
            out.element("td", "" + run.pair());
            out.element("td", run.side() == Side.A ? plan.a() : plan.b());
            out.element("td", "" + run.lane()).element("td", run.outward() ? "out" : "back");
            for (int box = 0; box < 4; box++) {
                out.element("td", "", "class", "box");
            }
            out.close();
        }
        out.close().close();
    }

    private void head(String text) {
        out.element("th", text, "scope", "col");
    }
}
