package footing.web.trial;

import footing.core.trial.RunPlan;
import footing.core.trial.Side;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A run to make.
 *
 * @param place stays the same when more pairs are planned
 * @param number in the order of the plan, from 1
 * @param surface empty if there is only one
 * @param side null for an opposed pull
 * @param thing what runs, as the trial calls it; of an opposed pull both
 */
record Planned(
        String place,
        int number,
        String surface,
        int pair,
        @Nullable Side side,
        String thing,
        int lane,
        boolean outward) {
    /** All of them, in order. */
    static List<Planned> of(Setup setup) {
        return setup.opposed() ? pulls(setup) : runs(setup);
    }

    private static List<Planned> runs(Setup setup) {
        List<Planned> all = new ArrayList<>();
        Map<String, Integer> seen = new LinkedHashMap<>();
        for (RunPlan.Planned run :
                RunPlan.of(setup.pairs(), setup.surfaces(), setup.seed()).runs()) {
            String pair = setup.surfaces().indexOf(run.surface()) + "-" + run.pair();
            int turn = seen.merge(pair, 1, Integer::sum);
            String thing = name(run.side() == Side.A ? setup.a() : setup.b());
            all.add(new Planned(
                    pair + "-" + turn,
                    run.order(),
                    run.surface(),
                    run.pair(),
                    run.side(),
                    thing,
                    run.lane(),
                    run.outward()));
        }
        return all;
    }

    /** Ends are swapped after each pull. */
    private static List<Planned> pulls(Setup setup) {
        List<Planned> all = new ArrayList<>();
        String both = name(setup.a()) + " against " + name(setup.b());
        for (String surface : setup.surfaces()) {
            int at = setup.surfaces().indexOf(surface);
            for (int pull = 1; pull <= setup.pairs(); pull++) {
                all.add(new Planned(
                        at + "-" + pull + "-1", all.size() + 1, surface, pull, null, both, pull, pull % 2 == 1));
            }
        }
        return all;
    }

    private static String name(Map<String, String> side) {
        return side.getOrDefault("name", "");
    }

    /** 'Run 3: airless, dry fescue, lane 3, out'. */
    public String words() {
        String where = surface.isEmpty() ? "" : ", " + surface;
        String way = side == null ? (outward ? ", ends as they are" : ", ends swapped") : outward ? ", out" : ", back";
        return (side == null ? "Pull " : "Run ") + number + ": " + thing + where
                + (side == null ? "" : ", lane " + lane) + way;
    }

    /** Its keys in a trial file, without what it gives. */
    Map<String, String> cells() {
        Map<String, String> cells = new LinkedHashMap<>();
        if (side != null) {
            cells.put("side", side == Side.A ? "a" : "b");
        }
        cells.put("surface", surface);
        cells.put("lane", Integer.toString(lane));
        if (side != null) {
            cells.put("direction", outward ? "out" : "back");
        }
        cells.values().removeIf(String::isEmpty);
        return cells;
    }
}
