package footing.core.fleet;

import footing.core.chance.Spread;
import org.jspecify.annotations.Nullable;

/** An assembly with every number in force. Money each; times in hours; {@code check} is one look at the set. */
public record ResolvedAssembly(
        String id,
        Kind kind,
        Position position,
        @Nullable String treats,
        double price,
        double tirePrice,
        double renewalPrice,
        double treatPrice,
        double treatHours,
        Spread life,
        double lifeUnsure,
        Spread flatFactor,
        Spread ruinFactor,
        double changeHours,
        double takeOff,
        double tradeCredit,
        double tradeDeduction,
        double carryOn,
        double scrapFee,
        double check,
        double checkEvery) {
    /** True if this is what {@code carried} becomes when its tires are treated in place. */
    public boolean madeByTreating(ResolvedAssembly carried) {
        return carried.id.equals(treats);
    }
}
