package footing.cli;

import footing.cli.text.NextSteps;
import footing.core.answer.Answer;
import footing.io.answer.AnswerJson;
import footing.io.casefile.CaseFile;
import footing.io.paper.Paper;
import footing.io.proposal.Proposal;
import footing.io.trial.TrialQuote;
import footing.io.words.Lists;
import java.io.IOException;
import java.io.InputStream;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Answers the example that comes with the program. */
@Command(
        name = "demo",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        description =
                "Answers an invented contractor's case with nine machines, which comes with Footing, and leaves"
                        + " the case, the answer, the proposal, the workbook and an invented trial day in the folder footing-demo.")
final class DemoCommand implements Callable<Integer> {
    private static final String CASE = "quillbrook.yaml";
    private static final String PROPOSAL = "proposal.pdf";
    private static final String WORKBOOK = "workbook.xlsx";
    private static final String FOLDER = "footing-demo";

    @Spec
    private CommandSpec spec;

    @Mixin
    private AnswerOptions asked;

    private final Terminal terminal;

    DemoCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws BadInput, IOException {
        var commandLine = spec.commandLine();
        String text = text();
        CaseArgument.Accepted read = CaseArgument.accepted(CaseFile.read(text, CASE), terminal, commandLine.getErr());
        Answering answering = new Answering(terminal, asked, commandLine.getOut(), commandLine.getErr());
        Answer answer = answering.answer(read.stated(), asked.options(null));
        Path folder = terminal.folder().resolve(FOLDER);
        keep(folder, text, answer, read);
        int code = answering.print(answer, read.warnings(), new NextSteps(FOLDER + "/" + CASE));
        List<String> written = new ArrayList<>(List.of(CASE, "answer.json"));
        Printing printing = new Printing(terminal, commandLine.getErr());
        Paper paper = Paper.usual(read.stated().heading().si());
        List<TrialQuote> trials = TrialDay.leave(folder);
        written.add(TrialDay.FOLDER);
        boolean printed = answer.complete()
                && printing.print(new Proposal.Printed(answer, paper, trials), folder.resolve(PROPOSAL));
        if (printed) {
            written.add(PROPOSAL);
        }
        if (answering.workbook(answer, read.warnings(), folder.resolve(WORKBOOK))) {
            written.add(WORKBOOK);
        }
        commandLine
                .getErr()
                .println("Wrote "
                        + Lists.and(written.stream().map(f -> FOLDER + "/" + f).toList()));
        return printed ? code : Answering.STOPPED;
    }

    private static void keep(Path folder, String text, Answer answer, CaseArgument.Accepted read) throws IOException {
        Files.createDirectories(folder);
        Files.writeString(folder.resolve(CASE), text);
        try (Writer json = Files.newBufferedWriter(folder.resolve("answer.json"))) {
            AnswerJson.write(answer, read.warnings(), json);
        }
    }

    private static String text() throws IOException {
        try (InputStream in = DemoCommand.class.getResourceAsStream(CASE)) {
            if (in == null) {
                throw new IllegalStateException("the example is missing from this build");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
