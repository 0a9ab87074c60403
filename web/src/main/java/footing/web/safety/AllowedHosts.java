package footing.web.safety;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The hosts a request may name. A foreign page whose own name is made to lead here ('DNS rebinding') names that, and is
 * refused: a numeric address can't be made to lead elsewhere, a name can.
 *
 * @param names in lower case, besides localhost and numeric addresses
 */
record AllowedHosts(Set<String> names) {
    private static final Pattern FOUR = Pattern.compile("\\d{1,3}(\\.\\d{1,3}){3}");
    private static final Pattern SIX = Pattern.compile("\\[[0-9a-f:.]+]");
    private static final Pattern PORT = Pattern.compile(":\\d{1,5}$");

    AllowedHosts {
        names = Set.copyOf(names);
    }

    /** Whether a Host header, with or without a port, is one of them. */
    boolean contains(@Nullable String header) {
        if (header == null) {
            return false;
        }
        String host = PORT.matcher(header.toLowerCase(Locale.ROOT)).replaceFirst("");
        return host.equals("localhost")
                || names.contains(host)
                || FOUR.matcher(host).matches()
                || SIX.matcher(host).matches();
    }
}
