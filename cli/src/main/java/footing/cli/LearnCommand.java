package footing.cli;

import footing.cli.text.LearnedText;
import footing.core.fleet.Case;
import footing.core.records.Background;
import footing.core.records.Learned;
import footing.core.records.Learner;
import footing.io.answer.LearnedJson;
import footing.io.form.Problem;
import footing.io.records.CaseBackground;
import footing.io.records.Records;
import footing.io.records.RecordsFile;
import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says what a shop's records teach, and links them to a case. */
@Command(
        name = "learn",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        description =
                "Says what records teach: how often tires go flat, how long sets last, what is done about a flat.",
        footer = {
            "",
            "Rows that can't be are listed with the reason and not counted. --write, and a file most of whose rows",
            "can't be, need --leave-out to go on without them."
        })
final class LearnCommand implements Callable<Integer> {
    private static final int MOST_LISTED = 50;

    @Spec
    private CommandSpec spec;

    @Parameters(
            index = "0",
            paramLabel = "RECORDS",
            description = "The records: a .csv or .xlsx sheet with a header row.")
    private String file;

    @Option(names = "--case", paramLabel = "CASE", description = "The case the records belong to.")
    private @Nullable String caseFile;

    @Option(
            names = "--columns",
            paramLabel = "FILE",
            description = "Which column is which, a line such as date: Day worked.")
    private @Nullable Path columns;

    @Option(names = "--leave-out", description = "Go on without the rows that can't be.")
    private boolean leaveOut;

    @Option(
            names = "--wear-limit",
            paramLabel = "MM",
            description = "Tread depth at which a set is worn out, in mm (${DEFAULT-VALUE}, about 2/32 in).")
    private double wearLimit = 1.6;

    @Option(names = "--write", description = "Put what was learned into the case, linked to the records.")
    private boolean write;

    @Option(names = "--json", description = "Print one JSON document, footing-learned/1, and nothing else.")
    private boolean json;

    private final Terminal terminal;

    LearnCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws BadInput, IOException {
        var out = spec.commandLine().getOut();
        var err = spec.commandLine().getErr();
        checkOptions();
        Case stated = caseFile == null
                ? null
                : CaseArgument.of(caseFile).readForRecords(terminal, err).stated();
        Records records = read();
        checkEnough(records);
        Background background = stated == null ? Background.NONE : new CaseBackground(stated);
        Learned learned = Learner.learn(records.log(), background, wearLimit);
        if (json) {
            LearnedJson.write(records, learned, out);
            return 0;
        }
        out.print(LearnedText.of(records, learned, terminal.letters()));
        if (write && caseFile != null && stated != null) {
            LearnedWriting writing = new LearnedWriting(Path.of(caseFile), stated, Path.of(file), learned);
            writing.write().forEach(line -> out.println(terminal.letters().shown(line)));
        }
        return 0;
    }

    private void checkOptions() throws BadInput {
        if (!(wearLimit >= 0 && wearLimit < 100)) {
            throw new BadInput("--wear-limit is " + wearLimit + ", must lie between 0 and 100 mm");
        }
        if (write && (caseFile == null || caseFile.equals("-"))) {
            throw new BadInput("--write needs a case to write to: add --case CASE");
        }
        if (write && json) {
            throw new BadInput("--write and --json don't go together: run once with each");
        }
        if (write && columns != null) {
            throw new BadInput(
                    "a case reads its records by their own headers: rename them instead of --columns, then --write");
        }
    }

    private Records read() throws BadInput, IOException {
        try {
            Records records = RecordsFile.read(Path.of(file), columns);
            if (!records.unread().isEmpty()) {
                throw new BadInput("these records can't be used; wrong with them is\n" + told(records.unread()));
            }
            return records;
        } catch (InvalidPathException e) {
            throw new BadInput("'" + file + "' is not the name of a file");
        } catch (NoSuchFileException e) {
            throw new BadInput("there is no file " + e.getMessage());
        } catch (IOException e) {
            throw new BadInput("can't read " + file);
        }
    }

    /** The rest may answer for the rows that can't be, but not be put to use or be the smaller part unasked. */
    private void checkEnough(Records records) throws BadInput {
        int refused = records.refused().size();
        if (records.rows() > 0 && refused == records.rows()) {
            throw new BadInput("none of " + records.rows() + " rows can be:\n" + some(records));
        }
        if (refused > 0 && !leaveOut && (write || 2 * refused > records.rows())) {
            throw new BadInput(refused + " of " + records.rows() + " rows can't be:\n" + some(records)
                    + "\nMend them, or give --leave-out to "
                    + (write ? "write what the rest teaches." : "learn from the rest."));
        }
    }

    private static String some(Records records) {
        int more = records.refused().size() - MOST_LISTED;
        return told(records.refused().stream().limit(MOST_LISTED).toList())
                + (more > 0 ? "\nand " + more + " more" : "");
    }

    private static String told(List<Problem> problems) {
        return problems.stream().map(Problem::toString).collect(Collectors.joining("\n"));
    }
}
