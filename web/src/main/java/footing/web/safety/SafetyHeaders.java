package footing.web.safety;

import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.HeadersConfigurer;
import org.springframework.security.web.header.writers.CrossOriginOpenerPolicyHeaderWriter.CrossOriginOpenerPolicy;
import org.springframework.security.web.header.writers.CrossOriginResourcePolicyHeaderWriter.CrossOriginResourcePolicy;
import org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter.ReferrerPolicy;

/** What every response tells the browser: load from here alone, run no code in the page, be shown in no frame. */
final class SafetyHeaders {
    /** Source: W3C, Content Security Policy Level 3. */
    static final String POLICY = "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:;"
            + " font-src 'self'; connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

    private static final String NO_DEVICES = "camera=(), microphone=(), geolocation=(), payment=(), usb=()";

    private SafetyHeaders() {}

    static void write(HeadersConfigurer<HttpSecurity> headers) {
        headers.contentSecurityPolicy(p -> p.policyDirectives(POLICY))
                .referrerPolicy(r -> r.policy(ReferrerPolicy.SAME_ORIGIN))
                .crossOriginOpenerPolicy(p -> p.policy(CrossOriginOpenerPolicy.SAME_ORIGIN))
                .crossOriginResourcePolicy(p -> p.policy(CrossOriginResourcePolicy.SAME_ORIGIN))
                .permissionsPolicyHeader(p -> p.policy(NO_DEVICES));
    }
}
