package footing.web.cases;

import footing.web.store.CaseStore;
import footing.web.store.NoSuchCase;
import footing.web.store.Overtaken;
import footing.web.store.StoredCase;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.sql.SQLException;
import java.util.LinkedHashMap;
import java.util.Map;
import org.springframework.http.HttpStatus;
import org.springframework.jdbc.UncategorizedSQLException;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.servlet.ModelAndView;
import org.sqlite.SQLiteErrorCode;

/** What to say where a case is gone, or was changed by somebody else first. */
@ControllerAdvice
class CaseFaults {
    private final CaseStore store;

    CaseFaults(CaseStore store) {
        this.store = store;
    }

    @ExceptionHandler
    void gone(NoSuchCase gone, HttpServletResponse response) throws IOException {
        response.sendError(HttpStatus.NOT_FOUND.value());
    }

    /** Somebody else has been writing for longer than one waits. */
    @ExceptionHandler
    void busy(UncategorizedSQLException failure, HttpServletResponse response) throws IOException {
        SQLException cause = failure.getSQLException();
        if (cause == null || cause.getErrorCode() != SQLiteErrorCode.SQLITE_BUSY.code) {
            throw failure;
        }
        response.sendError(HttpStatus.SERVICE_UNAVAILABLE.value());
    }

    @ExceptionHandler
    ModelAndView overtaken(Overtaken overtaken) {
        StoredCase now = overtaken.now();
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("kept", now);
        model.put("last", Spoken.change(store.history(now.id()).get(0)));
        model.put("changed", Spoken.time(now.at()));
        return new ModelAndView("cases/overtaken", model, HttpStatus.CONFLICT);
    }
}
