package footing.web.safety;

import java.io.IOException;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Set;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.web.servlet.FilterRegistrationBean;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.http.SessionCreationPolicy;
import org.springframework.security.core.userdetails.User;
import org.springframework.security.core.userdetails.UserDetailsService;
import org.springframework.security.core.userdetails.UsernameNotFoundException;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.authentication.UsernamePasswordAuthenticationFilter;
import org.springframework.security.web.csrf.CookieCsrfTokenRepository;

/**
 * Who may ask what. Without a password the page answers everybody who reaches it, which on this machine's own address is
 * whoever sits at it; with one, it asks for it everywhere.
 */
@Configuration(proxyBeanMethods = false)
class SafetyConfiguration {
    static final String USER = "footing";

    private static final String[] OPEN = {"/login", "/footing.css", "/mark.svg", "/favicon.ico", "/error"};

    private final PasswordFile password;

    SafetyConfiguration(@Value("${footing.data}") String data) {
        password = new PasswordFile(Path.of(data));
    }

    @Bean
    FilterRegistrationBean<HostFilter> hostFilter() {
        FilterRegistrationBean<HostFilter> first =
                new FilterRegistrationBean<>(new HostFilter(new AllowedHosts(Set.of(ownName()))));
        first.setOrder(Ordered.HIGHEST_PRECEDENCE);
        return first;
    }

    private static String ownName() {
        try {
            return InetAddress.getLocalHost().getHostName().toLowerCase(Locale.ROOT);
        } catch (UnknownHostException e) {
            return "localhost";
        }
    }

    /** Programs send no token, but a kind of content that no foreign page can send unasked. */
    @Bean
    @Order(1)
    SecurityFilterChain programs(HttpSecurity http) {
        http.securityMatcher("/api/**")
                .csrf(c -> c.disable())
                .sessionManagement(s -> s.sessionCreationPolicy(SessionCreationPolicy.STATELESS))
                .headers(SafetyHeaders::write);
        if (password.isSet()) {
            return http.authorizeHttpRequests(a -> a.anyRequest().authenticated())
                    .httpBasic(b -> b.realmName("Footing"))
                    .build();
        }
        return http.authorizeHttpRequests(a -> a.anyRequest().permitAll()).build();
    }

    @Bean
    @Order(2)
    SecurityFilterChain pages(HttpSecurity http) {
        http.csrf(c -> c.csrfTokenRepository(tokens())).headers(SafetyHeaders::write);
        if (!password.isSet()) {
            return http.authorizeHttpRequests(a -> a.anyRequest().permitAll())
                    .sessionManagement(s -> s.sessionCreationPolicy(SessionCreationPolicy.STATELESS))
                    .build();
        }
        LoginThrottle throttle = new LoginThrottle(System::nanoTime);
        return http.authorizeHttpRequests(
                        a -> a.requestMatchers(OPEN).permitAll().anyRequest().authenticated())
                .formLogin(f -> f.loginPage("/login")
                        .successHandler(throttle.success("/"))
                        .failureHandler(throttle.failure()))
                .addFilterBefore(throttle, UsernamePasswordAuthenticationFilter.class)
                .logout(l -> l.logoutSuccessUrl("/login?out"))
                .build();
    }

    /** In a cookie, so that a page left open over a restart can still be sent. */
    private static CookieCsrfTokenRepository tokens() {
        CookieCsrfTokenRepository tokens = new CookieCsrfTokenRepository();
        tokens.setCookieName("footing-token");
        tokens.setCookieCustomizer(c -> c.sameSite("Strict"));
        return tokens;
    }

    @Bean
    PasswordEncoder encoder() {
        return PasswordFile.encoder();
    }

    @Bean
    UserDetailsService users() throws IOException {
        String hash = password.hash().orElse("");
        return name -> {
            if (hash.isEmpty() || !name.equals(USER)) {
                throw new UsernameNotFoundException(name);
            }
            return User.withUsername(USER).password(hash).build();
        };
    }
}
