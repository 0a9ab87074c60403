package footing.io.proposal;

import footing.core.answer.Answer;
import footing.core.answer.MachineAnswer;
import footing.core.chance.Metalog;
import footing.core.fleet.Case;
import footing.core.fleet.InForce;
import footing.core.fleet.Place;
import footing.io.words.Naming;
import footing.io.words.Origins;
import java.util.Collection;
import java.util.List;
import java.util.Set;

/** The numbers an answer assumes, each with where it comes from. */
final class Assumptions {
    private Assumptions() {}

    /** Those that several machines may share: money, crews, assemblies. */
    static Table shared(Answer answer) {
        Collection<InForce> all = Origins.inForce(
                answer.of(), answer.machines().stream().map(MachineAnswer::id).toList());
        return table(
                answer.of(),
                "shared-numbers",
                "What every answer here assumes",
                all.stream()
                        .filter(n -> n.input().key().place() != Place.MACHINE)
                        .toList());
    }

    /** Those that are neither a crew's, nor a wheel's, nor a machine's. */
    static Table money(Answer answer) {
        Set<Place> places = Set.of(Place.MONEY, Place.LOAN, Place.TAX);
        return table(
                answer.of(),
                "money-numbers",
                "Money",
                Origins.inForce(
                                answer.of(),
                                answer.machines().stream()
                                        .map(MachineAnswer::id)
                                        .toList())
                        .stream()
                        .filter(n -> places.contains(n.input().key().place()))
                        .toList());
    }

    static Table table(Case stated, String id, String title, List<InForce> numbers) {
        Table.Builder table = Table.named(id, title, "number", "#value", "where it comes from");
        numbers.forEach(n -> table.row(
                Cell.text(footing.io.words.Lists.capital(Naming.of(stated, n.input()))),
                Cell.text(Cell.minus(value(n))),
                Cell.text(Naming.provenance(stated, n))));
        return table.built();
    }

    static boolean matters(Case stated, InForce number) {
        return Origins.matters(stated, number);
    }

    /** '3 to 11, likely 6'. */
    private static String value(InForce n) {
        return n.value() instanceof Metalog m
                ? Naming.value(n) + ", likely " + Naming.value(n.input().key().dimension(), m.likely())
                : Naming.value(n);
    }
}
