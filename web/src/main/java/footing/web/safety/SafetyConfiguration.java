package footing.web.safety;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.core.userdetails.UserDetailsService;
import org.springframework.security.core.userdetails.UsernameNotFoundException;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.csrf.CookieCsrfTokenRepository;

/** Who may ask what. */
@Configuration(proxyBeanMethods = false)
class SafetyConfiguration {
    private static final String POLICY =
            "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:;"
                    + " font-src 'self'; connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

    @Bean
    SecurityFilterChain chain(HttpSecurity http) {
        CookieCsrfTokenRepository tokens = new CookieCsrfTokenRepository();
        tokens.setCookieName("footing-token");
        tokens.setCookieCustomizer(c -> c.sameSite("Strict"));
        return http.authorizeHttpRequests(a -> a.anyRequest().permitAll())
                .csrf(c -> c.csrfTokenRepository(tokens))
                .headers(h -> h.contentSecurityPolicy(p -> p.policyDirectives(POLICY)))
                .build();
    }

    @Bean
    UserDetailsService users() {
        return name -> {
            throw new UsernameNotFoundException(name);
        };
    }
}
