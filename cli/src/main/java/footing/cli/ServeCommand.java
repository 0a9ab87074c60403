package footing.cli;

import footing.web.serve.Server;
import footing.web.serve.ServerOptions;
import java.io.IOException;
import java.nio.file.Path;
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
        description = "Serves the page on this machine, until Ctrl-C.")
final class ServeCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Option(names = "--port", paramLabel = "N", description = "Port to listen on (8300); 0 for any that is free.")
    private int port = 8300;

    @Option(names = "--address", paramLabel = "A", description = "Address to listen on (${DEFAULT-VALUE}).")
    private String address = "127.0.0.1";

    @Option(names = "--data", paramLabel = "DIR", description = "Folder of the cases (.footing in your home folder).")
    private @Nullable Path data;

    @Override
    public Integer call() throws IOException, InterruptedException {
        var out = spec.commandLine().getOut();
        ServerOptions options = new ServerOptions(port, address, data == null ? ServerOptions.usualData() : data);
        Server server = Server.start(options);
        out.println("Footing is at " + server.url());
        out.flush();
        server.awaitEnd();
        return 0;
    }
}
