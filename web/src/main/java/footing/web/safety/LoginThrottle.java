package footing.web.safety;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;
import org.springframework.security.web.authentication.AuthenticationFailureHandler;
import org.springframework.security.web.authentication.AuthenticationSuccessHandler;
import org.springframework.security.web.authentication.SavedRequestAwareAuthenticationSuccessHandler;
import org.springframework.web.filter.OncePerRequestFilter;

/** Makes guessing slow: after {@value #FREE} wrong passwords in a row, one try each {@value #PAUSE_SECONDS} seconds. */
final class LoginThrottle extends OncePerRequestFilter {
    static final int FREE = 5;
    static final int PAUSE_SECONDS = 10;

    private final LongSupplier nanoClock;
    private int wrong;
    private long lastWrong;

    LoginThrottle(LongSupplier nanoClock) {
        this.nanoClock = nanoClock;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        boolean isTry =
                request.getMethod().equals("POST") && request.getServletPath().equals("/login");
        if (isTry && mustWait()) {
            response.sendRedirect("/login?wait");
        } else {
            chain.doFilter(request, response);
        }
    }

    private synchronized boolean mustWait() {
        return wrong >= FREE && nanoClock.getAsLong() - lastWrong < TimeUnit.SECONDS.toNanos(PAUSE_SECONDS);
    }

    private synchronized void count(boolean right) {
        wrong = right ? 0 : wrong + 1;
        lastWrong = nanoClock.getAsLong();
    }

    AuthenticationSuccessHandler success(String home) {
        SavedRequestAwareAuthenticationSuccessHandler onward = new SavedRequestAwareAuthenticationSuccessHandler();
        onward.setDefaultTargetUrl(home);
        return (request, response, who) -> {
            count(true);
            onward.onAuthenticationSuccess(request, response, who);
        };
    }

    AuthenticationFailureHandler failure() {
        return (request, response, why) -> {
            count(false);
            response.sendRedirect("/login?wrong");
        };
    }
}
