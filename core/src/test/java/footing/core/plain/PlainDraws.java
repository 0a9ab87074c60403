package footing.core.plain;

import footing.core.chance.Draws;
import footing.core.chance.Metalog;
import footing.core.fleet.Position;
import footing.core.fleet.ResolvedAssembly;
import footing.core.fleet.ResolvedMachine;
import footing.core.future.DrawKeys;
import org.hipparchus.distribution.continuous.NormalDistribution;

/** Everything drawn in one future of one machine, each by its own key. */
record PlainDraws(ResolvedMachine m, long seed, long future) {
    private double unknown(long key) {
        return Draws.uniform(Draws.future(key, future), 0);
    }

    double flatsPerSeason() {
        return m.flatsPerSeason()
                .draw(unknown(DrawKeys.flatsPerSeason(seed, m.crew().id())));
    }

    /** The uniform behind makeUpLater, of full weeks as of others. */
    double makeUpLater() {
        return unknown(DrawKeys.makeUpLater(seed, m.crew().id()));
    }

    double flatFactor(ResolvedAssembly a) {
        return a.flatFactor().draw(unknown(DrawKeys.flatFactor(seed, a.id())));
    }

    double ruinFactor(ResolvedAssembly a) {
        return a.ruinFactor().draw(unknown(DrawKeys.ruinFactor(seed, a.id())));
    }

    private double lifeFactor(ResolvedAssembly a) {
        double z = new NormalDistribution().inverseCumulativeProbability(unknown(DrawKeys.lifeUnsure(seed, a.id())));
        return Math.exp(a.lifeUnsure() * z);
    }

    private double lifeUniform(Position position, int set) {
        return Draws.uniform(Draws.future(DrawKeys.life(seed, m.id(), position), future), set);
    }

    /** Life of the n-th set at a position, fitted new. */
    double life(ResolvedAssembly a, Position position, int set) {
        return a.life().draw(lifeUniform(position, set)) * lifeFactor(a) * m.groundWear();
    }

    /** Life of set 0, of which it is known that it has lasted so many hours. */
    double lifeBeyond(ResolvedAssembly a, Position position, double worn) {
        double factor = lifeFactor(a);
        if (a.life() instanceof Metalog stated) {
            double before = stated.cumulative(worn / (factor * m.groundWear()));
            double y = before + (1 - before) * lifeUniform(position, 0);
            return stated.quantile(Math.min(y, Metalog.MOST_Y)) * factor * m.groundWear();
        }
        return a.life().likely() * factor * m.groundWear();
    }

    double encounter(Position position, long number, int slot) {
        long state = Draws.future(DrawKeys.encounter(seed, m.id(), position), future);
        return Draws.uniform(state, DrawKeys.SLOTS * number + slot);
    }
}
