package footing.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/**
 * The one executable. It only gathers the subcommands; each lives in its own class.
 *
 * <p>Exit codes: 0 done, 1 the work failed, 2 the command line or an input file is not usable.
 */
@Command(
        name = "footing",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        description = "Answers which wheels and tires each commercial mower should run, what it is worth and how sure.",
        synopsisSubcommandLabel = "COMMAND")
public final class Main implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    public static void main(String[] args) {
        System.exit(commandLine().execute(args));
    }

    static CommandLine commandLine() {
        return new CommandLine(new Main());
    }

    @Override
    public Integer call() {
        throw new ParameterException(spec.commandLine(), "Please name a command.");
    }

    /** Reads the version from the jar's manifest, so that it is written down once, in the build. */
    static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            var version = Main.class.getPackage().getImplementationVersion();
            return new String[] {"footing " + (version == null ? "(unpackaged)" : version)};
        }
    }
}
