package footing.web.answer;

import footing.core.fleet.Case;
import footing.core.fleet.InForce;
import footing.io.words.Lists;
import footing.io.words.Naming;
import footing.io.words.Origins;
import java.util.Optional;

/** The numbers of a case, by their place in the file. */
final class Inputs {
    private Inputs() {}

    static Optional<InForce> find(Case stated, String path) {
        return Origins.inForce(
                        stated, stated.machines().stream().map(Case.Machine::id).toList())
                .stream()
                .filter(n -> n.input().path().equals(path))
                .findFirst();
    }

    /** 'Slack in a day (crew streets): 0.5 h to 1 h'. */
    static String changed(Case before, Case now, String path) {
        String was = find(before, path).map(Naming::value).orElse("nothing");
        return find(now, path)
                .map(n -> name(now, n) + ": " + was + " to " + Naming.value(n))
                .orElse("Changed " + path);
    }

    static String name(Case stated, InForce number) {
        return Lists.capital(Naming.of(stated, number.input()));
    }
}
