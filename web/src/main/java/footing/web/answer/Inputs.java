package footing.web.answer;

import footing.core.chance.Metalog;
import footing.core.fleet.Case;
import footing.core.fleet.InForce;
import footing.io.form.Written;
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

    /** 'Slack in a day (crew streets): 0.5 h to 1 h', or whose it is now if the value is the same. */
    static String changed(Case before, Case now, String path) {
        Optional<InForce> was = find(before, path);
        return find(now, path)
                .map(is -> name(now, is) + ": " + change(before, was, now, is))
                .orElse("Changed " + path);
    }

    /** Values that read the same are told to all their digits; where even those are the same, whose it is. */
    private static String change(Case before, Optional<InForce> found, Case now, InForce is) {
        if (found.isEmpty()) {
            return "nothing to " + Naming.value(is);
        }
        InForce was = found.get();
        if (was.value().equals(is.value())) {
            return Naming.value(is) + ", now " + Naming.provenance(now, is) + " (before: "
                    + Naming.provenance(before, was) + ")";
        }
        boolean alike = Naming.value(was).equals(Naming.value(is));
        boolean range = was.value() instanceof Metalog || is.value() instanceof Metalog;
        String between = range ? ", now " : " to ";
        return alike ? exactly(was) + between + exactly(is) : Naming.value(was) + between + Naming.value(is);
    }

    private static String exactly(InForce number) {
        return Written.spread(number.input().key().dimension(), number.value());
    }

    static String name(Case stated, InForce number) {
        return Lists.capital(Naming.of(stated, number.input()));
    }
}
