package footing.web.safety;

import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.http.HttpServletRequest;
import java.util.Map;
import org.springframework.boot.webmvc.error.ErrorController;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ProblemDetail;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.ModelAndView;

/** Says what went wrong in words; never what it looks like inside. */
@Controller
class ErrorPages implements ErrorController {
    private static final Map<Integer, String> ADVICE = Map.of(
            400, "The request could not be read. Go back and try again.",
            401, "This needs the password.",
            403,
                    "The page was open for too long, or the request came from elsewhere. Nothing was changed: go back,"
                            + " reload the page and try again.",
            404, "There is no such page. A case that was deleted for good, or a mistyped address, ends here.",
            405, "This can't be done here. Go back and try again.",
            413, "That is more than can be taken at once.",
            415, "This kind of content can't be read here.",
            503, "Too much is asked at once. Try again in a moment.");

    @RequestMapping("/error")
    Object error(HttpServletRequest request) {
        HttpStatus status = status(request);
        String advice = ADVICE.getOrDefault(
                status.value(),
                status.is5xxServerError()
                        ? "Something went wrong that should not have. What was saved is safe; the window that Footing"
                                + " was started in says more."
                        : "The request does not fit. Go back and try again.");
        String path = String.valueOf(request.getAttribute(RequestDispatcher.ERROR_REQUEST_URI));
        if (path.startsWith("/api/")) {
            ProblemDetail problem = ProblemDetail.forStatusAndDetail(status, advice);
            problem.setTitle(title(status));
            return ResponseEntity.status(status)
                    .contentType(MediaType.APPLICATION_PROBLEM_JSON)
                    .body(problem);
        }
        return new ModelAndView(
                "error", Map.of("status", status.value(), "title", title(status), "advice", advice), status);
    }

    private static HttpStatus status(HttpServletRequest request) {
        Object code = request.getAttribute(RequestDispatcher.ERROR_STATUS_CODE);
        HttpStatus status = code instanceof Integer i ? HttpStatus.resolve(i) : null;
        // Whoever asks for the page of errors itself has found no page.
        return status == null ? HttpStatus.NOT_FOUND : status;
    }

    private static String title(HttpStatus status) {
        return switch (status) {
            case NOT_FOUND -> "Not found";
            case FORBIDDEN -> "Not taken";
            default -> status.is5xxServerError() ? "Something went wrong" : "That did not work";
        };
    }
}
