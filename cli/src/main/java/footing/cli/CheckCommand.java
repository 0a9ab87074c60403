package footing.cli;

import footing.cli.text.DefaultsText;
import footing.core.fleet.Case;
import footing.io.words.Figures;
import footing.io.words.Origins;
import java.io.IOException;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Checks a case file. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        description = "Reads a case and says all that is wrong with it, or what it holds.")
final class CheckCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private CaseArgument argument;

    @Option(names = "--defaults", description = "List the numbers nobody stated, with where they come from.")
    private boolean defaults;

    private final Terminal terminal;

    CheckCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws BadInput, IOException {
        var out = spec.commandLine().getOut();
        Case stated = argument.read(terminal, spec.commandLine().getErr()).stated();
        if (defaults) {
            out.print(DefaultsText.of(stated, terminal.letters()));
        } else {
            out.println(terminal.letters().shown(summary(stated)));
        }
        return 0;
    }

    private static String summary(Case stated) {
        var ids = stated.machines().stream().map(Case.Machine::id).toList();
        return "Nothing wrong with it: " + counted(stated.machines().size(), "machine") + ", "
                + counted(stated.crews().size(), "crew") + ", "
                + counted(stated.packages().size(), "wheel package") + ".\n"
                + Origins.told(Origins.inForce(stated, ids));
    }

    private static String counted(int n, String what) {
        return Figures.word(n) + " " + what + (n == 1 ? "" : "s");
    }
}
