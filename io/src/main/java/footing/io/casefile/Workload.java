package footing.io.casefile;

import footing.core.fleet.Case;
import footing.core.fleet.ResolvedAssembly;
import footing.core.fleet.ResolvedMachine;
import footing.core.fleet.Resolver;
import footing.io.form.Found;
import footing.io.form.Problems;
import footing.io.form.Written;
import java.util.List;

/** Numbers that are each possible but together mean more flats or sets than any machine sees: nobody meant them. */
final class Workload {
    private static final double MOST = 50_000;
    private static final double FAR = 3;

    private Workload() {}

    static void check(Case stated, Found file, Problems problems) {
        List<ResolvedMachine> machines = Resolver.resolve(stated);
        for (int i = 0; i < machines.size(); i++) {
            check(machines.get(i), file.get("machines").items().get(i), problems);
        }
    }

    private static void check(ResolvedMachine m, Found machine, Problems problems) {
        String key = machine.has("flatsPerSeason") ? "flatsPerSeason" : "flatsPer1000h";
        double flats = m.flatsPerSeason().draw(1) / m.hoursPerYear() * m.hoursLeft();
        if (!(flats <= MOST)) {
            problems.error(
                    machine.get(key).at(),
                    "",
                    "up to " + Written.number(Math.rint(flats)) + " flats before the trade in a bad case",
                    "try numbers that come to no more than " + Written.number(MOST));
        }
        for (ResolvedAssembly a : m.assemblies().values()) {
            double shortest = a.life().draw(0) * m.groundWear() * Math.exp(-FAR * a.lifeUnsure());
            if (!(m.hoursLeft() / shortest <= MOST)) {
                problems.error(
                        machine.get("keepUntil").at(),
                        Written.number(m.hoursLeft()),
                        "sets of '" + a.id() + "' can be so short-lived that over " + Written.number(MOST)
                                + " would wear out before the trade",
                        "try: a longer life of " + a.id() + ", less lifeUnsure, or fewer hours");
                return;
            }
        }
    }
}
