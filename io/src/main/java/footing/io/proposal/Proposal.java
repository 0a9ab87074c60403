package footing.io.proposal;

import footing.core.answer.Answer;
import footing.core.answer.Watch;
import footing.core.fleet.Case;
import footing.io.drawing.SvgDrawer;
import footing.io.paper.Markup;
import footing.io.paper.Paper;
import footing.io.paper.Press;
import footing.io.paper.Typefaces;
import footing.io.trial.TrialQuote;
import footing.io.words.Advice;
import footing.io.words.Figures;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** An answer as a PDF. */
public final class Proposal {
    /** Machines up to which each gets a block with figures; where there are more, a quick answer will do. */
    public static final int MOST_WHOLE = 24;

    private static final double DRAWN = 0.6;

    private final Answer answer;
    private final Paper paper;
    private final Watch watch;
    private final Typefaces typefaces = new Typefaces();

    private final List<TrialQuote> trials;

    private Proposal(Printed printed, Watch watch) {
        this.answer = printed.answer();
        this.paper = printed.paper();
        this.trials = printed.trials();
        this.watch = watch;
    }

    /** What is printed: an answer, on paper of a size, with verdicts of trials to quote. */
    public record Printed(Answer answer, Paper paper, List<TrialQuote> trials) {
        public Printed {
            trials = List.copyOf(trials);
        }
    }

    /**
     * Prints the proposal.
     *
     * @param drawer kept by whoever prints more than one
     * @return false if the watch asked to stop; then nothing was printed
     * @throws IOException if it can't be written
     */
    public static boolean write(Answer answer, Paper paper, SvgDrawer drawer, Watch watch, OutputStream to)
            throws IOException {
        return write(new Printed(answer, paper, List.of()), drawer, watch, to);
    }

    /**
     * Prints the proposal with the verdicts of trials.
     *
     * @return false if the watch asked to stop; then nothing was printed
     * @throws IOException if it can't be written
     */
    public static boolean write(Printed printed, SvgDrawer drawer, Watch watch, OutputStream to) throws IOException {
        return new Proposal(printed, watch).print(drawer, to);
    }

    private boolean print(SvgDrawer drawer, OutputStream to) throws IOException {
        Markup out = new Markup(typefaces);
        Pages pages = new Pages(out, drawer);
        Case.Heading heading = answer.of().heading();
        out.raw("<!DOCTYPE html>").open("html", "lang", "en", "xmlns", "http://www.w3.org/1999/xhtml");
        head(out, heading);
        out.open("body");
        out.open("div", "class", "footer").element("span", heading.title()).close();
        new FirstPage(answer, pages).write();
        if (!blocks(pages)) {
            return false;
        }
        new LastPages(answer, pages).write(trials);
        if (typefaces.lacked()) {
            pages.paragraph(
                    "Some letters of this case are not in this document's typefaces, which have Latin, Greek and"
                            + " Cyrillic ones; " + Character.toString(Typefaces.MISSING) + " stands for each of them.",
                    "note");
        }
        out.close().close();
        watch.progress("printing", DRAWN);
        if (watch.stopped()) {
            return false;
        }
        Press.print(out.written(), paper, to);
        return true;
    }

    private void head(Markup out, Case.Heading heading) {
        out.open("head").element("title", heading.title());
        out.empty("meta", "name", "subject", "content", "Which wheels and tires each machine should run");
        out.empty("meta", "name", "description", "content", "Which wheels and tires each machine should run");
        String by = heading.prepared().by();
        if (by != null) {
            out.empty("meta", "name", "author", "content", by);
        }
        out.open("style").raw(style()).close().close();
    }

    private boolean blocks(Pages pages) {
        List<Advice> machines = Advice.all(answer);
        if (machines.size() > MOST_WHOLE) {
            lines(pages, machines);
            return true;
        }
        for (int i = 0; i < machines.size(); i++) {
            watch.progress("drawing " + machines.get(i).id(), DRAWN * i / machines.size());
            if (watch.stopped()) {
                return false;
            }
            new MachineBlock(answer, machines.get(i), pages)
                    .write(MachineBlock.length(machines.get(i), machines.size()));
        }
        return true;
    }

    /** A line and a reason for each of very many. */
    private void lines(Pages pages, List<Advice> machines) {
        pages.out().open("div", "class", "fresh").element("h2", "All machines");
        pages.paragraph(
                "With " + Figures.money(machines.size()) + " machines this document is shortened: each has a line and"
                        + " its reason, in place of a block with figures, and the answer is a quick one. Print a single"
                        + " machine by itself to have all of it.",
                "note");
        new MachineLines(answer, pages.out()).write(machines, true);
        pages.out().close();
    }

    private static String style() {
        try (InputStream in = Proposal.class.getResourceAsStream("proposal.css")) {
            if (in == null) {
                throw new IllegalStateException("the style of the proposal is missing from this build");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
