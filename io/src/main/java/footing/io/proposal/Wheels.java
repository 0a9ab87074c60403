package footing.io.proposal;

import footing.core.fleet.Called;
import footing.core.fleet.Case;
import footing.core.fleet.InForce;
import footing.core.fleet.Input;
import footing.core.fleet.Key;
import footing.core.fleet.Origin;
import footing.core.fleet.Position;
import footing.core.fleet.ResolvedAssembly;
import footing.core.fleet.ResolvedMachine;
import footing.core.fleet.Values;
import footing.io.words.Lists;
import java.time.LocalDate;

/** What wheels are called on an order, and whose their prices are. */
final class Wheels {
    private final Case stated;

    Wheels(Case stated) {
        this.stated = stated;
    }

    /** 'Airless drives, 24x12 N12'. */
    String name(ResolvedAssembly a) {
        return Lists.capital(Called.in(stated).withSize(a.id()));
    }

    static String position(Position position) {
        return position == Position.DRIVE ? "drive" : "caster";
    }

    /** 'yours, as of 2027-02-15', 'quoted 2027-02-01' or 'typical, not a quote, of 2026-01-15'. */
    String priceOrigin(ResolvedMachine m, ResolvedAssembly a, Key key) {
        InForce price = inForce(m, a, key);
        LocalDate day = stated.assembly(a.id()).priced();
        return switch (price.origin()) {
            case TYPICAL -> "typical, not a quote" + (day == null ? "" : ", of " + day);
            case STATED -> day == null ? "yours, as of " + stated.heading().asOf() : "quoted " + day;
            case GUESSED -> "a guess, not a quote";
            case LEARNED -> "from your records";
            case DEFAULT -> "a guess: " + price.why();
        };
    }

    /** The number a price rests on: one that nobody stated is that of the tire, or of the whole assembly. */
    private InForce inForce(ResolvedMachine m, ResolvedAssembly a, Key key) {
        InForce price = new Values(stated, stated.machine(m.id()))
                .find(Input.of(key, a.id()))
                .orElseThrow();
        if (price.origin() == Origin.DEFAULT && key == Key.RENEWAL_PRICE) {
            return inForce(m, a, a.kind().holdsAir() ? Key.TIRE_PRICE : Key.PRICE);
        }
        return price.origin() == Origin.DEFAULT && key == Key.TIRE_PRICE ? inForce(m, a, Key.PRICE) : price;
    }
}
