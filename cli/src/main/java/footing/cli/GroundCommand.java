package footing.cli;

import footing.cli.text.GroundText;
import footing.core.fleet.Case;
import footing.core.ground.MachineGround;
import footing.io.answer.GroundJson;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Shows a machine on the ground under each of its packages. */
@Command(
        name = "ground",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        description = "What each wheel package of a machine does to the ground and to the machine on it, side by side:"
                + " pressure, marking, turns, height, speed, hold and tip. No figure is a permission to mow a slope.")
final class GroundCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private MachineArgument about;

    @Mixin
    private TrialsOption trials;

    private final Terminal terminal;

    GroundCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws BadInput, IOException {
        var out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        CaseArgument.Accepted read = trials.added(about.read(terminal, err), terminal, err);
        Case stated = read.stated();
        MachineGround ground = MachineGround.of(stated, about.id());
        if (about.json()) {
            GroundJson.write(stated, ground, TrialsOption.quotes(read), out);
        } else {
            out.print(GroundText.of(stated, ground, TrialsOption.quotes(read), terminal.letters()));
        }
        out.flush();
        return 0;
    }
}
