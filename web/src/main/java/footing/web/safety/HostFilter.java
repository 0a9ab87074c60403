package footing.web.safety;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.net.URI;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.web.filter.OncePerRequestFilter;

/** Turns away requests that other pages send, before anything looks at them. */
final class HostFilter extends OncePerRequestFilter {
    private final AllowedHosts allowed;

    HostFilter(AllowedHosts allowed) {
        this.allowed = allowed;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        String host = request.getHeader("Host");
        if (!allowed.contains(host)) {
            refuse(response, HttpStatus.MISDIRECTED_REQUEST, "This host name does not lead here.");
        } else if (isForeign(request.getHeader("Origin"), host)) {
            refuse(response, HttpStatus.FORBIDDEN, "A page of another origin asked for this.");
        } else {
            chain.doFilter(request, response);
        }
    }

    private static boolean isForeign(@Nullable String origin, @Nullable String host) {
        if (origin == null) {
            return false;
        }
        try {
            return !String.valueOf(URI.create(origin).getAuthority()).equalsIgnoreCase(host);
        } catch (IllegalArgumentException e) {
            return true;
        }
    }

    private static void refuse(HttpServletResponse response, HttpStatus status, String why) throws IOException {
        response.setStatus(status.value());
        response.setContentType("text/plain;charset=UTF-8");
        response.setHeader("X-Content-Type-Options", "nosniff");
        response.setHeader("Content-Security-Policy", SafetyHeaders.POLICY);
        response.getWriter().println(why);
    }
}
