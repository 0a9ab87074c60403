package footing.web.api;

import footing.web.serve.Server;
import footing.web.serve.ServerParts;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;

/** The routes that a server really has. */
public final class Routes {
    private Routes() {}

    /** Patterns of the paths that begin with a text. */
    public static Set<String> of(Server server, String beginning) {
        return ServerParts.of(server, "requestMappingHandlerMapping", RequestMappingHandlerMapping.class)
                .getHandlerMethods()
                .keySet()
                .stream()
                .flatMap(route -> route.getPatternValues().stream())
                .filter(pattern -> pattern.startsWith(beginning))
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
