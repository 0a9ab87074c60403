package footing.web.api;

import footing.core.answer.Answer;
import footing.core.answer.Assessment;
import footing.core.answer.Options;
import footing.core.fleet.Case;
import footing.io.answer.AnswerJson;
import footing.io.answer.Threads;
import footing.io.casefile.CaseFile;
import footing.io.casefile.Reading;
import footing.io.form.FileText;
import footing.io.form.Problem;
import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** A case file in, an answer out. Nothing is kept. */
@RestController
class AnswerController {
    static final int MOST_MACHINES = 100;
    static final int MOST_SECONDS = 30;
    private static final int MOST_WAITING = 16;
    private static final long PATIENCE_MILLIS = 30_000;
    private static final String BODY = "body";

    private final Queue queue = new Queue(MOST_WAITING, PATIENCE_MILLIS);
    private final Threads threads = Threads.usual();

    @PostMapping(
            path = "/api/answers",
            consumes = {"application/yaml", "application/x-yaml", "text/yaml", MediaType.APPLICATION_JSON_VALUE})
    ResponseEntity<Object> answer(
            @RequestParam(required = false) @Nullable String futures,
            @RequestParam(required = false) @Nullable String seed,
            @RequestParam(required = false) @Nullable String quick,
            HttpServletRequest request)
            throws IOException {
        Asked asked = Asked.of(futures, seed, quick);
        if (!asked.problems().isEmpty()) {
            return ApiFault.unusable(HttpStatus.BAD_REQUEST, "The query does not fit", asked.problems());
        }
        byte[] bytes = request.getInputStream().readNBytes(FileText.MOST_BYTES + 1);
        if (bytes.length > FileText.MOST_BYTES) {
            return ApiFault.tooMuch(HttpStatus.CONTENT_TOO_LARGE, "A case file of at most 2 MB is read.");
        }
        Reading reading = read(bytes);
        return reading.found()
                .map(stated -> answer(stated, asked.options(), reading.warnings()))
                .orElseGet(() -> ApiFault.unusable(
                        HttpStatus.UNPROCESSABLE_CONTENT, "The case file can't be answered", reading.problems()));
    }

    private static Reading read(byte[] bytes) {
        try {
            return CaseFile.read(
                    StandardCharsets.UTF_8
                            .newDecoder()
                            .decode(ByteBuffer.wrap(bytes))
                            .toString(),
                    BODY);
        } catch (CharacterCodingException e) {
            Problem problem = new Problem(BODY, 1, "", "", "not UTF-8 text", "send it as UTF-8");
            return new Reading.Refused(List.of(problem), List.of());
        }
    }

    private ResponseEntity<Object> answer(Case stated, Options options, List<Problem> warnings) {
        if (stated.machines().size() > MOST_MACHINES) {
            return ApiFault.tooMuch(
                    HttpStatus.UNPROCESSABLE_CONTENT,
                    "At most " + MOST_MACHINES + " machines are answered at once: split them over several requests.");
        }
        Optional<Answer> answer = queue.inTurn(
                () -> Assessment.answer(stated, options, threads, new Deadline(MOST_SECONDS, System::nanoTime)));
        if (answer.isEmpty()) {
            return ApiFault.busy();
        }
        if (!answer.get().complete()) {
            return ApiFault.tooMuch(
                    HttpStatus.SERVICE_UNAVAILABLE,
                    "Not done within " + MOST_SECONDS + " s: ask for fewer futures, fewer machines, or quick=true.");
        }
        StringWriter json = new StringWriter();
        AnswerJson.write(answer.get(), warnings.stream().map(Problem::toString).toList(), json);
        return ResponseEntity.ok().contentType(MediaType.APPLICATION_JSON).body(json.toString());
    }
}
