package footing.web.api;

import footing.io.form.Problem;
import java.net.URI;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ProblemDetail;
import org.springframework.http.ResponseEntity;

/**
 * What is answered in place of an answer: a problem document that lists everything that is wrong.
 *
 * <p>Source: RFC 9457, Problem Details for HTTP APIs.
 */
final class ApiFault {
    private static final int RETRY_SECONDS = 5;

    private ApiFault() {}

    /** The query or the case can't be used. */
    static ResponseEntity<Object> unusable(HttpStatus status, String title, List<Problem> problems) {
        String detail = problems.size() == 1 ? problems.get(0).message() : problems.size() + " problems, all listed";
        ProblemDetail fault = fault(status, "not-usable", title, detail);
        fault.setProperty("problems", problems.stream().map(ApiFault::told).toList());
        return response(fault).body(fault);
    }

    private static Map<String, Object> told(Problem p) {
        Map<String, Object> told = new LinkedHashMap<>();
        if (!p.file().equals(Asked.QUERY)) {
            told.put("line", p.line());
        }
        told.put("path", p.path());
        told.put("read", p.read());
        told.put("message", p.message());
        told.put("advice", p.advice());
        return told;
    }

    static ResponseEntity<Object> tooMuch(HttpStatus status, String detail) {
        ProblemDetail fault = fault(status, "too-much", "More than is answered at once", detail);
        return response(fault).body(fault);
    }

    /** Too many ask at once. */
    static ResponseEntity<Object> busy() {
        ProblemDetail fault = fault(
                HttpStatus.SERVICE_UNAVAILABLE,
                "busy",
                "Busy",
                "Too many ask at once. Ask again in " + RETRY_SECONDS + " seconds.");
        return response(fault)
                .header(HttpHeaders.RETRY_AFTER, Integer.toString(RETRY_SECONDS))
                .body(fault);
    }

    private static ProblemDetail fault(HttpStatus status, String type, String title, String detail) {
        ProblemDetail fault = ProblemDetail.forStatusAndDetail(status, detail);
        fault.setType(URI.create("urn:footing:" + type));
        fault.setTitle(title);
        return fault;
    }

    private static ResponseEntity.BodyBuilder response(ProblemDetail fault) {
        return ResponseEntity.status(fault.getStatus()).contentType(MediaType.APPLICATION_PROBLEM_JSON);
    }
}
