package footing.cli;

import footing.cli.text.FitText;
import footing.core.fitting.Fit;
import footing.core.fitting.FitQuestion;
import footing.core.fitting.Measured;
import footing.core.fitting.SetUp;
import footing.core.fleet.Case;
import footing.core.fleet.Measure;
import footing.core.fleet.Measures;
import footing.core.quantity.Length;
import footing.io.answer.FitJson;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says whether a package fits a machine, what it changes, and what restores the deck. */
@Command(
        name = "fit",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        description = "Whether a wheel package fits a machine, each test with its two numbers; what it changes on the"
                + " machine; and the hanger turns that restore the deck.")
final class FitCommand implements Callable<Integer> {
    private static final int TIPS = 4;

    @Spec
    private CommandSpec spec;

    @Mixin
    private MachineArgument about;

    @Parameters(index = "2", paramLabel = "PACKAGE", description = "The wheel package's id.")
    private String wheels;

    @Option(
            names = "--height",
            paramLabel = "LENGTH",
            description = "Height of cut to reach, such as \"3.25 in\"; without it the case's own.")
    private @Nullable String height;

    @Option(
            names = "--rake",
            paramLabel = "LENGTH",
            description = "Rake to reach, the front lower, such as \"0.19 in\"; without it the case's own.")
    private @Nullable String rake;

    @Option(
            names = "--measured",
            paramLabel = "LENGTHS",
            description =
                    "Blade tip heights after fitting, to be judged in place of those kept with the case: rear left, rear right, front left, front"
                            + " right, such as \"3.3 in, 3.3 in, 3.1 in, 3.1 in\".")
    private @Nullable String measured;

    @Option(
            names = "--card",
            paramLabel = "FILE.pdf",
            description = "Print the fitting card as well: what to do in the bay, in order, with the numbers to reach.")
    private @Nullable String card;

    @Mixin
    private PaperFile on;

    private final Terminal terminal;

    FitCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws BadInput, IOException {
        var out = spec.commandLine().getOut();
        Path pdf = card == null ? null : on.free(terminal, card);
        Case stated = about.read(terminal, spec.commandLine().getErr()).stated();
        String machine = about.id();
        Case.WheelPackage wanted = wanted(stated.machine(machine), stated.packages());
        Measures measures = stated.machine(machine).measures();
        Length high = length("--height", height, measures, Measure.DECK_HEIGHT);
        Length low = length("--rake", rake, measures, Measure.DECK_RAKE);
        Fit fit = Fit.of(FitQuestion.of(stated, machine, wanted));
        SetUp setUp = SetUp.of(stated, machine, wanted, target(high, low));
        List<Measured.Judgment> judged = measured == null
                ? Measured.kept(stated.machine(machine), setUp)
                : tips(measured).against(high, low);
        if (about.json()) {
            FitJson.write(stated, fit, setUp, judged, out);
        } else {
            out.print(FitText.of(stated, fit, setUp, judged, terminal.letters()));
        }
        out.flush();
        if (pdf != null) {
            CardFile.write(stated, wanted, setUp, on.size(stated), pdf);
            spec.commandLine().getErr().println("Wrote " + terminal.letters().shown(String.valueOf(card)));
        }
        return 0;
    }

    /** One of those the machine carries or considers, or any of the case's. */
    private Case.WheelPackage wanted(Case.Machine m, List<Case.WheelPackage> named) throws BadInput {
        Set<Case.WheelPackage> all = new LinkedHashSet<>();
        all.add(m.carries());
        all.addAll(m.consider());
        all.addAll(named);
        List<String> ids = all.stream().map(Case.WheelPackage::id).distinct().toList();
        return all.stream()
                .filter(p -> p.id().equals(wheels))
                .findFirst()
                .orElseThrow(() -> new BadInput(CaseArgument.unknown("wheel package", wheels, ids)));
    }

    private SetUp.@Nullable Target target(@Nullable Length high, @Nullable Length low) throws BadInput {
        if (height == null && rake == null) {
            return null;
        }
        if (high == null || low == null) {
            throw new BadInput(
                    "a target has a height and a rake\n   state both, or deck.height and deck.rake in the" + " case");
        }
        return new SetUp.Target(high, low);
    }

    private static @Nullable Length length(String option, @Nullable String text, Measures measures, Measure measure)
            throws BadInput {
        if (text != null) {
            return Lengths.read(option, text);
        }
        OptionalDouble own = measures.get(measure);
        return own.isPresent() ? new Length(own.getAsDouble()) : null;
    }

    private static Measured tips(String text) throws BadInput {
        List<Length> all = new ArrayList<>();
        for (String one : text.split(",", -1)) {
            all.add(Lengths.read("--measured", one));
        }
        if (all.size() != TIPS || all.stream().anyMatch(l -> !(l.meters() > 0))) {
            throw new BadInput("--measured '" + text + "': four heights above the floor would fit, rear left, rear"
                    + " right, front left, front right\n   try: \"3.3 in, 3.3 in, 3.1 in, 3.1 in\"");
        }
        return new Measured(all.get(0), all.get(1), all.get(2), all.get(3));
    }
}
