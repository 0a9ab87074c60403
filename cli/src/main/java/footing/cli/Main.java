package footing.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.ZoneId;
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
 * <p>Exit codes: 0 done, 1 the work failed or was stopped before everything was known, 2 the command line or an input
 * file is not usable. An unexpected failure is told in a sentence; FOOTING_DEBUG=1 shows where it came from.
 */
@Command(
        name = "footing",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        description = "Answers which wheels and tires each commercial mower should run, what it is worth and how sure.",
        synopsisSubcommandLabel = "COMMAND",
        footer = {
            "",
            "Start with: footing demo",
            "",
            "Ends with 0 if done, 1 if it failed or was stopped, 2 if the command line or a file is not usable."
        })
public final class Main implements Callable<Integer> {
    private static final int FAILED = 1;

    @Spec
    private CommandSpec spec;

    public static void main(String[] args) {
        Stop stop = new Stop();
        Runtime.getRuntime().addShutdownHook(new Thread(() -> stopped(stop), "footing-stop"));
        PrintWriter err = writer(FileDescriptor.err);
        int code = FAILED;
        try {
            code = commandLine(Terminal.here(stop), writer(FileDescriptor.out), err)
                    .execute(args);
        } catch (OutOfMemoryError e) {
            err.println("footing: not enough memory; fewer --futures need less");
        } finally {
            err.flush();
            stop.done();
        }
        System.exit(code);
    }

    /** On Ctrl-C: lets the run print what it knows, then ends with the code of a run that was stopped. */
    private static void stopped(Stop stop) {
        if (stop.stopRun()) {
            Runtime.getRuntime().halt(Answering.STOPPED);
        }
    }

    private static PrintWriter writer(FileDescriptor to) {
        return new PrintWriter(new OutputStreamWriter(new FileOutputStream(to), StandardCharsets.UTF_8));
    }

    static CommandLine commandLine(Terminal terminal, PrintWriter out, PrintWriter err) {
        Failures failures = new Failures(terminal, System.getenv("FOOTING_DEBUG") != null);
        return new CommandLine(new Main())
                .addSubcommand(new NewCommand(terminal))
                .addSubcommand(new AssessCommand(terminal))
                .addSubcommand(new ProposalCommand(terminal))
                .addSubcommand(new DemoCommand(terminal))
                .addSubcommand(new CheckCommand(terminal))
                .addSubcommand(new ExplainCommand(terminal))
                .addSubcommand(new CompareCommand(terminal))
                .addSubcommand(new FitCommand(terminal))
                .addSubcommand(new GroundCommand(terminal))
                .addSubcommand(new LearnCommand(terminal))
                .addSubcommand(new CardCommand(terminal))
                .addSubcommand(new FollowCommand(terminal, Clock.system(ZoneId.systemDefault())))
                .addSubcommand(new WorkbookCommand(terminal))
                .addSubcommand(
                        new CommandLine(new TrialCommand(terminal)).addSubcommand(new TrialPlanCommand(terminal)))
                .addSubcommand(new CommandLine(new PhotoCommand())
                        .addSubcommand(new PhotoPrintCommand(terminal))
                        .addSubcommand(new PhotoTurfCommand(terminal)))
                .addSubcommand(new SchemaCommand())
                .addSubcommand(new ServeCommand(terminal))
                .setOut(out)
                .setErr(err)
                .setExecutionExceptionHandler(failures)
                .setExecutionStrategy(failures::run);
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
