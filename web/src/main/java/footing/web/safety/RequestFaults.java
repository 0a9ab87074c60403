package footing.web.safety;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.http.HttpStatus;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.multipart.MaxUploadSizeExceededException;
import org.springframework.web.multipart.MultipartException;

/** Uploads that can't be taken apart are the sender's fault, which the framework sees otherwise. */
@ControllerAdvice
class RequestFaults {
    @ExceptionHandler
    void upload(MultipartException fault, HttpServletResponse response) throws IOException {
        boolean isTooLarge = fault instanceof MaxUploadSizeExceededException;
        response.sendError((isTooLarge ? HttpStatus.CONTENT_TOO_LARGE : HttpStatus.BAD_REQUEST).value());
    }
}
