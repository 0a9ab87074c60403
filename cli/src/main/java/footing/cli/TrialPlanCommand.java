package footing.cli;

import footing.core.trial.PairedResult;
import footing.core.trial.PairedTest;
import footing.core.trial.PlanAdvice;
import footing.core.trial.Power;
import footing.core.trial.RunPlan;
import footing.core.trial.Side;
import footing.core.trial.TrialResult;
import footing.io.card.RunCard;
import footing.io.form.Nearest;
import footing.io.paper.Paper;
import footing.io.trial.Measure;
import footing.io.trial.RunSheet;
import footing.io.words.TrialCautions;
import footing.io.words.TrialWords;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Plans a field trial. */
@Command(
        name = "plan",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        description = "Says how many pairs of runs a wanted margin needs, and draws a randomized run sheet.")
final class TrialPlanCommand implements Callable<Integer> {
    private static final Pattern SHARE = Pattern.compile("(\\d{1,3}(?:\\.\\d{1,6})?) ?%");
    private static final int MOST_RUNS = 4000;

    @Spec
    private CommandSpec spec;

    @Option(
            names = "--measure",
            paramLabel = "WORD",
            description = "What each run gives: steady, peak, drift, angle, torn, area, z, distance ... (steady).")
    private String measure = "steady";

    @Option(names = "--a", paramLabel = "NAME", description = "One of the two things (A).")
    private String a = "A";

    @Option(names = "--b", paramLabel = "NAME", description = "The other (B).")
    private String b = "B";

    @Option(names = "--margin", paramLabel = "SHARE", description = "The difference that would matter (10 %%).")
    private String margin = "10 %";

    @Option(
            names = "--spread",
            paramLabel = "SHARE",
            description = "By how much single runs of one thing scatter; a usual value of the kind if not given.")
    private @Nullable String spread;

    @Option(names = "--pilot", paramLabel = "FILE", description = "A trial already made, whose scatter is taken.")
    private @Nullable String pilot;

    @Option(names = "--pairs", paramLabel = "N", description = "Pairs on each surface, instead of what is advised.")
    private @Nullable Integer pairs;

    @Option(names = "--surface", paramLabel = "NAME", description = "A surface; may be given several times.")
    private List<String> surfaces = List.of("");

    @Option(names = "--seed", paramLabel = "S", description = "The same seed draws the same plan (${DEFAULT-VALUE}).")
    private long seed = 1;

    @Option(names = "--si", description = "SI units on the sheet.")
    private boolean metric;

    @Option(names = "--csv", paramLabel = "FILE", description = "Write the run sheet there instead of printing it.")
    private @Nullable String csv;

    @Option(
            names = "--sheet",
            paramLabel = "FILE.pdf",
            description = "Write the run sheet there, to print, instead of printing it as CSV.")
    private @Nullable String pdf;

    @Mixin
    private PaperFile on;

    private final Terminal terminal;

    TrialPlanCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws BadInput, IOException {
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        Measure judged = judged();
        double wanted = share("--margin", margin);
        names();
        Path printed = pdf == null ? null : on.free(terminal, pdf);
        Path written = csv == null ? null : writable(csv);
        Paper paper = on.size(metric);
        double scatter = pilot != null ? ofPilot(pilot) : guessed(judged);
        PlanAdvice advice = PlanAdvice.fromRuns(wanted, scatter);
        RunPlan plan = plan(advice);
        err.println(terminal.letters().shown(TrialWords.advice(advice, wanted, scatter)));
        if (pairs != null) {
            err.println(terminal.letters().shown(TrialWords.asStated(pairs, advice)));
        }
        if (spread == null && pilot == null) {
            err.println("The scatter is a usual value, common practice, no source: --spread or --pilot states yours.");
        }
        RunSheet sheet = new RunSheet(plan, judged, a, b, metric);
        if (printed != null) {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            RunCard.write(sheet, paper, bytes);
            Files.write(printed, bytes.toByteArray());
            told(judged, pdf);
        }
        if (written != null) {
            try (Writer file = Files.newBufferedWriter(written)) {
                sheet.write(file);
            }
            told(judged, csv);
        }
        if (printed == null && written == null) {
            sheet.write(out);
            out.flush();
        }
        return 0;
    }

    private void told(Measure judged, @Nullable String file) {
        PrintWriter err = spec.commandLine().getErr();
        TrialCautions.of(judged.kind())
                .forEach(c -> err.println(terminal.letters().shown(c)));
        err.println("Wrote " + file);
    }

    private void names() throws BadInput {
        if (a.equals(b) || a.isBlank() || b.isBlank()) {
            throw new BadInput("the two things need names that differ");
        }
    }

    /** A sheet may be written over, since a plan is drawn again as often as one likes. */
    private Path writable(String name) throws BadInput {
        Path file = PaperFile.path(terminal, name);
        Path folder = file.toAbsolutePath().getParent();
        if (Files.isDirectory(file)) {
            throw new BadInput(name + " is a folder; name a file in it");
        }
        if (folder == null || !Files.isDirectory(folder)) {
            throw new BadInput("there is no folder " + folder + "; make it first, or name a file elsewhere");
        }
        return file;
    }

    private double guessed(Measure judged) throws BadInput {
        return spread == null ? judged.kind().usualSpread() : share("--spread", spread);
    }

    private Measure judged() throws BadInput {
        List<String> known = Arrays.stream(Measure.values()).map(Measure::key).toList();
        return Arrays.stream(Measure.values())
                .filter(m -> m.key().equals(measure))
                .findFirst()
                .orElseThrow(() -> new BadInput(
                        "nothing called '" + measure + "' is measured here\n   " + Nearest.advice(measure, known)));
    }

    private RunPlan plan(PlanAdvice advice) throws BadInput {
        if (pairs == null && advice.pairs() >= Power.MOST_PAIRS) {
            throw new BadInput("that would take more pairs than anybody runs; a wider margin takes fewer");
        }
        int each = pairs == null ? advice.pairs() : pairs;
        if (each < 1 || 2L * each * surfaces.size() > MOST_RUNS) {
            throw new BadInput("a plan has from 1 pair to " + MOST_RUNS + " runs in all");
        }
        return RunPlan.of(each, surfaces, seed);
    }

    /** Scatter of one run of a pilot, as a share of the mean: that of the pairs' differences over the root of two. */
    private double ofPilot(String file) throws BadInput, IOException {
        PairedResult result = TrialResult.of(
                        TrialCommand.accepted(file, terminal).stated().trial())
                .together();
        PairedTest test = result == null ? null : result.test();
        double mean = test == null || result == null ? 0 : (result.meanOf(Side.A) + result.meanOf(Side.B)) / 2;
        if (test == null || !(test.spread() > 0) || !(Math.abs(mean) > 0)) {
            throw new BadInput("the pilot needs two or more pairs of measured runs that differ");
        }
        return test.spread() / Math.sqrt(2) / Math.abs(mean);
    }

    private static double share(String option, String text) throws BadInput {
        var m = SHARE.matcher(text.strip());
        double share = m.matches() ? Double.parseDouble(m.group(1)) / 100 : Double.NaN;
        if (!(share > 0 && share < 1)) {
            throw new BadInput(option + " takes a share above 0 % and below 100 %, such as '10 %'");
        }
        return share;
    }
}
