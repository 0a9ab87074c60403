package footing.cli;

import footing.web.safety.PasswordFile;
import footing.web.serve.NotServed;
import footing.web.serve.Server;
import footing.web.serve.ServerOptions;
import java.io.BufferedReader;
import java.io.Console;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Serves the page until it is stopped. */
@Command(
        name = "serve",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        description = "Serves the page, on this machine alone unless a password is set, until Ctrl-C.")
final class ServeCommand implements Callable<Integer> {
    private static final int FAILED = 1;
    private static final Path STANDARD_INPUT = Path.of("/proc/self/fd/0");

    @Spec
    private CommandSpec spec;

    @Option(names = "--port", paramLabel = "N", description = "Port to listen on (8300); 0 for any that is free.")
    private int port = ServerOptions.USUAL_PORT;

    @Option(names = "--address", paramLabel = "A", description = "Address to listen on (${DEFAULT-VALUE}).")
    private String address = ServerOptions.THIS_MACHINE;

    @Option(names = "--data", paramLabel = "DIR", description = "Folder of the cases (.footing in your home folder).")
    private @Nullable Path data;

    @Option(
            names = "--set-password",
            description =
                    "Ask for a password, keep its hash in the data folder, and end. From then on the page asks for"
                            + " it; it can then be served to others, unencrypted.")
    private boolean setPassword;

    private final Terminal terminal;

    ServeCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws BadInput, IOException, InterruptedException {
        Path folder = data == null ? ServerOptions.usualData() : data;
        if (setPassword) {
            return setPassword(folder);
        }
        if (!(port >= 0 && port <= ServerOptions.HIGHEST_PORT)) {
            throw new BadInput("--port " + port + ": between 0 and " + ServerOptions.HIGHEST_PORT + " would fit");
        }
        return serve(new ServerOptions(port, address, folder));
    }

    private int serve(ServerOptions options) throws InterruptedException {
        var out = spec.commandLine().getOut();
        try (Server server = Server.start(options)) {
            out.println("Footing is at " + server.url());
            out.println("Cases are kept in " + terminal.letters().shown(String.valueOf(options.data()))
                    + ". Ctrl-C ends it.");
            out.flush();
            server.warm();
            server.awaitEnd();
            return 0;
        } catch (NotServed e) {
            var err = spec.commandLine().getErr();
            err.println(terminal.letters().shown("footing: " + e.getMessage()));
            err.flush();
            return FAILED;
        }
    }

    private int setPassword(Path folder) throws BadInput, IOException {
        char[] password = ask();
        try {
            Optional<String> fault = PasswordFile.fault(password);
            if (fault.isPresent()) {
                throw new BadInput("this password is " + fault.get());
            }
            new PasswordFile(folder).set(password);
        } finally {
            Arrays.fill(password, ' ');
        }
        spec.commandLine()
                .getOut()
                .println("The password is set. A page that runs asks for it once it is started anew.");
        return 0;
    }

    /** Without echo, twice; from a pipe one line. */
    private char[] ask() throws BadInput, IOException {
        Console console = keyboard();
        if (console == null) {
            var in = new BufferedReader(new InputStreamReader(terminal.in(), StandardCharsets.UTF_8));
            String line = in.readLine();
            return line == null ? new char[0] : line.toCharArray();
        }
        char[] first = console.readPassword("Password, at least %d characters: ", PasswordFile.SHORTEST);
        char[] again = console.readPassword("Once more: ");
        if (first == null || !Arrays.equals(first, again)) {
            throw new BadInput("the two did not agree; nothing was changed");
        }
        Arrays.fill(again, ' ');
        return first;
    }

    /** Null if somebody has put a pipe or a file in its place, for which newer Javas have a console as well. */
    @SuppressWarnings("SystemConsoleNull")
    private static @Nullable Console keyboard() {
        try {
            String input = Files.readSymbolicLink(STANDARD_INPUT).toString();
            return input.startsWith("/dev/pts") || input.startsWith("/dev/tty") ? System.console() : null;
        } catch (IOException | UnsupportedOperationException e) {
            return System.console();
        }
    }
}
