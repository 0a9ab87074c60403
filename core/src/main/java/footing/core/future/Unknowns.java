package footing.core.future;

import footing.core.chance.Draws;
import footing.core.chance.Spread;
import footing.core.fleet.ResolvedCrew;
import footing.core.fleet.ResolvedMachine;
import org.hipparchus.distribution.continuous.NormalDistribution;

/** What nobody knows of a machine, as one future has it: one draw each for the whole future. */
final class Unknowns {
    private static final NormalDistribution NORMAL = new NormalDistribution();

    private final Article[] articles;
    private final Spread flatsPerSeason;
    private final double hoursPerYear;
    private final Spread[] makeUpLater;
    private final long flatsKey;
    private final long laterKey;
    private final long[] lifeKeys;
    private final long[] flatKeys;
    private final long[] ruinKeys;

    /** Flats per operating hour of the whole machine on air: λ0. */
    double flatsPerHour;
    /** Share made up later: of ordinary weeks at 0, of full week i at i. */
    final double[] later;

    final double[] lifeFactor;
    final double[] flatFactor;
    final double[] ruinFactor;
    /** By article and fix, half the share φ of the hits that are a flat. */
    final double[][] halfShares;

    private final FixTable fixes;

    Unknowns(MachinePlan plan) {
        ResolvedMachine m = plan.machine;
        ResolvedCrew crew = m.crew();
        long seed = plan.seed;
        articles = plan.articles.toArray(Article[]::new);
        flatsPerSeason = m.flatsPerSeason();
        hoursPerYear = m.hoursPerYear();
        flatsKey = DrawKeys.flatsPerSeason(seed, crew.id());
        laterKey = DrawKeys.makeUpLater(seed, crew.id());
        makeUpLater = new Spread[1 + crew.fullWeeks().size()];
        makeUpLater[0] = crew.makeUpLater();
        for (int i = 1; i < makeUpLater.length; i++) {
            makeUpLater[i] = crew.fullWeeks().get(i - 1).makeUpLater();
        }
        later = new double[makeUpLater.length];
        int n = articles.length;
        lifeFactor = new double[n];
        flatFactor = new double[n];
        ruinFactor = new double[n];
        fixes = plan.fixes;
        halfShares = new double[n][fixes.size];
        lifeKeys = plan.articles.stream()
                .mapToLong(a -> DrawKeys.lifeUnsure(seed, a.id))
                .toArray();
        flatKeys = plan.articles.stream()
                .mapToLong(a -> DrawKeys.flatFactor(seed, a.id))
                .toArray();
        ruinKeys = plan.articles.stream()
                .mapToLong(a -> DrawKeys.ruinFactor(seed, a.id))
                .toArray();
    }

    void draw(long future) {
        flatsPerHour = draw(flatsPerSeason, flatsKey, future) / hoursPerYear;
        for (int i = 0; i < later.length; i++) {
            later[i] = draw(makeUpLater[i], laterKey, future);
        }
        for (int a = 0; a < lifeFactor.length; a++) {
            Article article = articles[a];
            lifeFactor[a] = article.lifeUnsure > 0
                    ? Math.exp(article.lifeUnsure * NORMAL.inverseCumulativeProbability(uniform(lifeKeys[a], future)))
                    : 1;
            flatFactor[a] = draw(article.flatFactor, flatKeys[a], future);
            ruinFactor[a] = draw(article.ruinFactor, ruinKeys[a], future);
            for (int fix = 0; fix < fixes.size; fix++) {
                halfShares[a][fix] = article.share(fixes, fix, flatFactor[a], ruinFactor[a]) / 2;
            }
        }
    }

    private static double draw(Spread spread, long key, long future) {
        return spread.isFixed() ? spread.likely() : spread.draw(uniform(key, future));
    }

    private static double uniform(long key, long future) {
        return Draws.uniform(Draws.future(key, future), 0);
    }
}
