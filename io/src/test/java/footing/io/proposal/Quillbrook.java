package footing.io.proposal;

import footing.core.answer.Answer;
import footing.core.fleet.ResolvedMachine;
import footing.io.answer.AnswerJson;
import footing.io.paper.Paper;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The example with nine machines, printed once for all tests, and the JSON document of the same answer. */
final class Quillbrook {
    static final Answer ANSWER = Printed.answer(Printed.example("quillbrook.yaml"), 300, false);
    static final Printed PRINTED = Printed.of(ANSWER, Paper.LETTER);
    static final String TEXT = text(1, Integer.MAX_VALUE);
    static final JsonNode JSON = json();

    private Quillbrook() {}

    static String text(int from, int to) {
        try {
            return PRINTED.text(from, to);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static JsonNode json() {
        StringWriter to = new StringWriter();
        AnswerJson.write(ANSWER, List.of(), to);
        return JsonMapper.shared().readTree(to.toString());
    }

    static JsonNode machine(String id) {
        for (JsonNode m : JSON.get("machines")) {
            if (m.get("id").asString().equals(id)) {
                return m;
            }
        }
        throw new AssertionError("no machine " + id);
    }

    static JsonNode entry(JsonNode machine, ResolvedMachine.Entry wanted) {
        for (JsonNode e : machine.get("entries")) {
            if (e.get("id").asString().equals(wanted.id())
                    && e.get("when").asString().equals(wanted.when().name().toLowerCase(Locale.ROOT))) {
                return e;
            }
        }
        throw new AssertionError("no entry " + wanted);
    }

    /** What is printed of a machine: from its heading to that of the next, or of what all assume. */
    static String block(String id) {
        List<String> ids = ANSWER.machines().stream().map(m -> m.id()).toList();
        int next = ids.indexOf(id) + 1;
        int from = heading(id);
        int to = next < ids.size() ? heading(ids.get(next)) : TEXT.indexOf("What every answer here assumes", from);
        return TEXT.substring(from, to);
    }

    private static int heading(String id) {
        String kind = ANSWER.machine(id).machine().kind();
        int at = TEXT.indexOf(id + ", " + kind + ": ");
        if (at < 0) {
            throw new AssertionError(id + " has no block");
        }
        return at;
    }
}
