package footing.core.answer;

import footing.core.chance.Sample;
import footing.core.fleet.ResolvedMachine;
import footing.core.future.CostSoFar;
import java.util.ArrayList;
import java.util.List;

/**
 * How far single futures stray from the mean of what an entry has cost by each hour: one in ten is below the low edge,
 * one in ten above the high one. Present values.
 *
 * @param futures the first ones of the answer, from which it was taken
 * @param stands at equal steps of hours from now to the trade, the trade left out
 * @param afterTrade the same with the trade, which is the whole cost
 */
public record HourBand(ResolvedMachine.Entry entry, int futures, List<Stand> stands, Stand afterTrade) {
    /** Futures run for it, if the answer has so many. */
    public static final int FUTURES = 4000;

    /** What an entry has cost by an hour, counted from now: mean, 10th and 90th percentile. */
    public record Stand(double hours, double mean, double p10, double p90) {
        static Stand of(double hours, double[] costs) {
            Sample sample = new Sample(costs);
            double[] ends = sample.percentiles(0.1, 0.9);
            return new Stand(hours, sample.mean(), ends[0], ends[1]);
        }
    }

    public HourBand {
        stands = List.copyOf(stands);
    }

    /** Bands of what a machine carries and of what its answer speaks of. */
    static List<HourBand> of(MachineAnswer answer, long seed, int futures) {
        EntryAnswer change = answer.bestChange();
        List<ResolvedMachine.Entry> entries =
                new ArrayList<>(List.of(answer.carried().entry()));
        if (change != null) {
            entries.add(change.entry());
        }
        int run = Math.min(FUTURES, futures);
        CostSoFar soFar = CostSoFar.of(answer.machine().about(entries), seed, run);
        List<HourBand> bands = new ArrayList<>();
        for (int e = 0; e < entries.size(); e++) {
            bands.add(band(soFar, e, entries.get(e), run, answer.machine().hoursLeft()));
        }
        return bands;
    }

    private static HourBand band(CostSoFar soFar, int e, ResolvedMachine.Entry entry, int run, double hoursLeft) {
        List<Stand> stands = new ArrayList<>();
        for (int s = 0; s <= CostSoFar.STEPS; s++) {
            stands.add(Stand.of(CostSoFar.hour(s, hoursLeft), soFar.by(e, s)));
        }
        return new HourBand(entry, run, stands, Stand.of(hoursLeft, soFar.afterTrade(e)));
    }
}
