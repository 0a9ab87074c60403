package footing.cli;

import footing.core.fleet.Case;
import footing.io.paper.Paper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints the card that starts a log. */
@Command(
        name = "card",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        description =
                "Prints a visor card to fill in, one line a flat: date, meter, machine, wheel, what was done, minutes.",
        footer = {
            "",
            "Typed up with its headings as they stand, the card is a sheet that 'footing learn' reads.",
        })
final class CardCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "FILE.pdf", description = "The card to write.")
    private String file;

    @Option(names = "--case", paramLabel = "CASE", description = "The case whose machines and fixes it names.")
    private @Nullable String caseFile;

    @Mixin
    private PaperFile on;

    private final Terminal terminal;

    CardCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws BadInput, IOException {
        var err = spec.commandLine().getErr();
        Path pdf = on.free(terminal, file);
        Optional<Case> stated = caseFile == null
                ? Optional.empty()
                : Optional.of(
                        CaseArgument.of(caseFile).readForRecords(terminal, err).stated());
        Paper paper = stated.isPresent() ? on.size(stated.get()) : on.size(false);
        CardFile.write(stated, paper, pdf);
        err.println("Wrote " + terminal.letters().shown(file));
        return 0;
    }
}
