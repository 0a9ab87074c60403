package footing.web.bay;

import footing.core.fleet.Case;
import footing.web.store.StoredCase;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.springframework.http.HttpStatus;
import org.springframework.web.server.ResponseStatusException;

/** A machine and the wheels that are looked at on it. */
record Bench(StoredCase kept, Case stated, Case.Machine machine, Case.WheelPackage wheels) {
    /**
     * Finds them.
     *
     * @param asked the package; without any the first that is not on the machine
     * @throws ResponseStatusException 404 if there is no such machine or package
     */
    static Bench of(StoredCase kept, String machine, String asked) {
        return find(kept, machine, asked).orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND));
    }

    /** The same; empty if the case can't be read, or there is no such machine or package. */
    static Optional<Bench> find(StoredCase kept, String machine, String asked) {
        return kept.read()
                .found()
                .flatMap(stated -> stated.machines().stream()
                        .filter(m -> m.id().equals(machine))
                        .findFirst()
                        .flatMap(m -> wheels(m, stated, asked).map(p -> new Bench(kept, stated, m, p))));
    }

    private static Optional<Case.WheelPackage> wheels(Case.Machine machine, Case stated, String asked) {
        Set<Case.WheelPackage> all = packages(machine, stated);
        if (asked.isEmpty()) {
            String carried = machine.carries().id();
            return Optional.of(all.stream()
                    .filter(p -> !p.id().equals(carried))
                    .findFirst()
                    .orElse(machine.carries()));
        }
        return all.stream().filter(p -> p.id().equals(asked)).findFirst();
    }

    private static Set<Case.WheelPackage> packages(Case.Machine machine, Case stated) {
        Set<Case.WheelPackage> all = new LinkedHashSet<>(machine.consider());
        all.add(machine.carries());
        all.addAll(stated.packages());
        return all;
    }

    /** The same with another statement of its case. */
    Bench with(Case other) {
        return new Bench(kept, other, machine, wheels);
    }

    /** Every package that can be looked at on it. */
    List<String> packages() {
        return packages(machine, stated).stream().map(Case.WheelPackage::id).toList();
    }

    boolean si() {
        return stated.heading().si();
    }
}
