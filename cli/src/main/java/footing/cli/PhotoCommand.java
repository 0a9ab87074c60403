package footing.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Measures on photos. */
@Command(
        name = "photo",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        synopsisSubcommandLabel = "COMMAND",
        description = "Measures on photos of a field trial (JPEG or PNG): the print of a tire, or torn turf. Writes the"
                + " picture with what was found drawn over it. Tried on drawn pictures only.")
final class PhotoCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        throw new ParameterException(spec.commandLine(), "Please name a command: print or turf.");
    }
}
