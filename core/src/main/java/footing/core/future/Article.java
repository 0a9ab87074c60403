package footing.core.future;

import footing.core.chance.Metalog;
import footing.core.chance.Spread;
import footing.core.fleet.Position;
import footing.core.fleet.ResolvedAssembly;
import footing.core.fleet.ResolvedMachine;
import org.jspecify.annotations.Nullable;

/** An assembly of a machine as the simulation reads it: sums of money for a set, hours, and where its draws are. */
final class Article {
    final int index;
    final String id;
    final Position position;
    final boolean holdsAir;
    final int count;
    final double price;
    final double renewalPrice;
    final double tirePrice;
    final double bothTires;
    final double scrap;
    final double fitting;
    final double upkeepPerHour;
    final double medianLife;
    /** What a new set adds to the trade, and a worn-out one takes off for each share of its life beyond half. */
    private final double credit;

    private final double deduction;
    final Spread flatFactor;
    final Spread ruinFactor;
    final double lifeUnsure;

    private final ResolvedAssembly assembly;
    private final double groundWear;
    private final double shopRate;
    private final @Nullable Metalog life;
    final double worn;
    /** Share of the lives that end before {@link #worn} hours, if this assembly's lives are here as stated. */
    private final double belowWorn;

    Article(int index, ResolvedAssembly a, ResolvedMachine m) {
        this.index = index;
        assembly = a;
        id = a.id();
        position = a.position();
        holdsAir = a.kind().holdsAir();
        count = m.count(a.position());
        shopRate = m.terms().shopRate();
        price = count * a.price();
        renewalPrice = count * a.renewalPrice();
        tirePrice = a.tirePrice();
        bothTires = count * (a.tirePrice() + a.scrapFee()) + a.changeHours() / 2 * shopRate;
        scrap = count * a.scrapFee();
        fitting = (a.changeHours() + m.relevel()) * shopRate;
        upkeepPerHour = a.check() / a.checkEvery() * m.crew().hourlyCost();
        groundWear = m.groundWear();
        medianLife = a.life().likely() * groundWear;
        credit = count * a.tradeCredit() * a.price();
        deduction = count * a.tradeDeduction() * a.renewalPrice() / 0.5;
        flatFactor = a.flatFactor();
        ruinFactor = a.ruinFactor();
        lifeUnsure = a.lifeUnsure();
        life = a.life() instanceof Metalog metalog ? metalog : null;
        worn = m.worn(a.position());
        belowWorn = life == null ? 0 : life.cumulative(worn / groundWear);
    }

    /** True if the same life is stated of another article. */
    boolean sameLife(Article other) {
        return assembly.life().equals(other.assembly.life());
    }

    /** The life as stated, at a uniform y and its logit. */
    double statedLife(double y, double logit) {
        return life == null ? assembly.life().likely() : life.quantile(y, logit);
    }

    /** A set's life here, from the one stated. */
    double life(double stated, double factor) {
        return stated * factor * groundWear;
    }

    /** The life of the set that already has hours on it: drawn from what is left of the distribution. */
    double lifeBeyondWorn(double u, double factor) {
        if (life == null) {
            return life(assembly.life().likely(), factor);
        }
        double below = factor == 1 ? belowWorn : life.cumulative(worn / (factor * groundWear));
        return life(life.quantile(Math.min(below + (1 - below) * u, Metalog.MOST_Y)), factor);
    }

    /** The share of the hits of a fix that are a flat here: φ. */
    double share(FixTable fixes, int fix, double flat, double ruin) {
        return fixes.replacesTire[fix] ? ruin : fixes.sealable[fix] ? flat : holdsAir ? 1 : 0;
    }

    /** What a set in use for a share of its life adds to or takes off the trade, today's money. */
    double atTrade(double age) {
        return credit * (1 - age) - (age > 0.5 ? deduction * (age - 0.5) : 0);
    }

    /** What it is worth on the owner's next machine, the take-offs put back; less than any trade if it can't move. */
    double carriedOn(double age) {
        return assembly.carryOn() > 0
                ? count * assembly.carryOn() * assembly.price() * (1 - age) - assembly.changeHours() * shopRate
                : Double.NEGATIVE_INFINITY;
    }
}
