package footing.cli;

import footing.io.casefile.CaseSchema;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Prints the JSON Schema of a case file. */
@Command(
        name = "schema",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        description = "Prints the JSON Schema of a case file, for editors that can check while you type.")
final class SchemaCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Option(names = "--catalog", description = "The schema of a catalog file instead.")
    private boolean catalog;

    @Override
    public Integer call() {
        var out = spec.commandLine().getOut();
        out.println(catalog ? CaseSchema.catalogJson() : CaseSchema.json());
        return 0;
    }
}
