package footing.web.safety;

import java.security.Principal;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ModelAttribute;

/** Tells every page whether somebody gave the password, so that it can offer to leave. */
@ControllerAdvice
class WhoIsIn {
    @ModelAttribute("loggedIn")
    boolean loggedIn(@Nullable Principal who) {
        return who != null;
    }
}
