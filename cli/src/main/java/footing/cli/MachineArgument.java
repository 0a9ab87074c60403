package footing.cli;

import java.io.IOException;
import java.io.PrintWriter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** One machine of a case, and whether it is to be told as JSON. */
final class MachineArgument {
    @Mixin
    private CaseArgument argument;

    @Parameters(index = "1", paramLabel = "MACHINE", description = "The machine's id.")
    private String machine;

    @Option(names = "--json", description = "Print one JSON document and nothing else.")
    private boolean json;

    String id() {
        return machine;
    }

    boolean json() {
        return json;
    }

    /**
     * The case, which has this machine.
     *
     * @throws BadInput if there is no such case or machine
     */
    CaseArgument.Accepted read(Terminal terminal, PrintWriter err) throws BadInput, IOException {
        CaseArgument.Accepted read = argument.read(terminal, err);
        read.checkMachine(machine);
        return read;
    }
}
