package footing.core.future;

import footing.core.chance.Spread;
import footing.core.fleet.ResolvedCrew;
import footing.core.fleet.ResolvedMachine;
import java.util.Arrays;
import java.util.function.ToLongFunction;

/** What nobody knows of a machine, as one future has it: one draw each for the whole future. */
final class Unknowns {
    private final SharedDraws shared;
    private final Article[] articles;
    private final Spread flatsPerSeason;
    private final double hoursPerYear;
    private final Spread[] makeUpLater;
    private final long flatsKey;
    private final long laterKey;
    private final long[] lifeKeys;
    private final long[] flatKeys;
    private final long[] ruinKeys;
    private final FixTable fixes;
    /** By article, whether its shares differ between futures. */
    private final boolean[] unsure;

    /** The draws of a run of futures, from this one on. */
    private int first;

    private double[] flatsDrawn = {};
    private final double[][] laterDrawn;
    private final double[][] lifeDrawn;
    private final double[][] flatDrawn;
    private final double[][] ruinDrawn;

    /** Flats per operating hour of the whole machine on air: λ0. */
    double flatsPerHour;
    /** Share made up later: of ordinary weeks at 0, of full week i at i. */
    final double[] later;

    final double[] lifeFactor;
    /** By article and fix, half the share φ of the hits that are a flat. */
    final double[][] halfShares;

    Unknowns(MachinePlan plan, SharedDraws shared) {
        this.shared = shared;
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
        laterDrawn = new double[makeUpLater.length][];
        int n = articles.length;
        lifeFactor = new double[n];
        Arrays.fill(lifeFactor, 1);
        lifeDrawn = new double[n][];
        flatDrawn = new double[n][];
        ruinDrawn = new double[n][];
        fixes = plan.fixes;
        halfShares = new double[n][fixes.size];
        unsure = new boolean[n];
        for (int a = 0; a < n; a++) {
            Article article = articles[a];
            unsure[a] = !(article.flatFactor.isFixed() && article.ruinFactor.isFixed());
            setShares(a, article.flatFactor.likely(), article.ruinFactor.likely());
        }
        lifeKeys = keys(id -> DrawKeys.lifeUnsure(seed, id));
        flatKeys = keys(id -> DrawKeys.flatFactor(seed, id));
        ruinKeys = keys(id -> DrawKeys.ruinFactor(seed, id));
    }

    private long[] keys(ToLongFunction<String> ofId) {
        return Arrays.stream(articles).mapToLong(a -> ofId.applyAsLong(a.id)).toArray();
    }

    /** Draws futures {@code from} to {@code to}, exclusive, ready to be shown one by one. */
    void draw(int from, int to) {
        first = from;
        flatsDrawn = shared.of(flatsPerSeason, flatsKey, from, to);
        for (int i = 0; i < later.length; i++) {
            laterDrawn[i] = shared.of(makeUpLater[i], laterKey, from, to);
        }
        for (int a = 0; a < articles.length; a++) {
            if (articles[a].lifeUnsure > 0) {
                lifeDrawn[a] = shared.ofFactor(articles[a].lifeUnsure, lifeKeys[a], from, to);
            }
            if (unsure[a]) {
                flatDrawn[a] = shared.of(articles[a].flatFactor, flatKeys[a], from, to);
                ruinDrawn[a] = shared.of(articles[a].ruinFactor, ruinKeys[a], from, to);
            }
        }
    }

    /** Shows one of the futures drawn. */
    void show(int future) {
        int i = future - first;
        flatsPerHour = flatsDrawn[i] / hoursPerYear;
        for (int week = 0; week < later.length; week++) {
            later[week] = laterDrawn[week][i];
        }
        for (int a = 0; a < articles.length; a++) {
            if (articles[a].lifeUnsure > 0) {
                lifeFactor[a] = lifeDrawn[a][i];
            }
            if (unsure[a]) {
                setShares(a, flatDrawn[a][i], ruinDrawn[a][i]);
            }
        }
    }

    private void setShares(int a, double flat, double ruin) {
        double[] half = halfShares[a];
        for (int fix = 0; fix < half.length; fix++) {
            half[fix] = articles[a].share(fixes, fix, flat, ruin) / 2;
        }
    }
}
