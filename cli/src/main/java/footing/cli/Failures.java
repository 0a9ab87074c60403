package footing.cli;

import java.io.IOException;
import java.io.PrintWriter;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.ParseResult;

/** Tells of failures without a stack trace and ends with the right code. */
final class Failures implements IExecutionExceptionHandler {
    private static final int FAILED = 1;
    private static final int NOT_USABLE = 2;

    private final Terminal terminal;
    private final boolean trace;

    Failures(Terminal terminal, boolean trace) {
        this.terminal = terminal;
        this.trace = trace;
    }

    /** Runs the command; output that could not be written is a failure too. */
    int run(ParseResult parsed) {
        CommandLine commandLine = parsed.commandSpec().commandLine();
        int code = new CommandLine.RunLast().execute(parsed);
        PrintWriter out = commandLine.getOut();
        if (out.checkError()) {
            say(commandLine.getErr(), "the output could not be written in full");
            return FAILED;
        }
        return code;
    }

    @Override
    public int handleExecutionException(Exception e, CommandLine commandLine, ParseResult parsed) {
        PrintWriter err = commandLine.getErr();
        if (e instanceof BadInput) {
            say(err, String.valueOf(e.getMessage()));
            return NOT_USABLE;
        }
        if (e instanceof IOException) {
            say(err, "can't read or write: " + e.getMessage());
        } else {
            say(err, "something went wrong that should not have: " + e);
        }
        if (trace) {
            e.printStackTrace(err);
        } else {
            say(err, "FOOTING_DEBUG=1 shows where");
        }
        return FAILED;
    }

    private void say(PrintWriter err, String message) {
        err.println(terminal.letters().shown("footing: " + message));
        err.flush();
    }
}
