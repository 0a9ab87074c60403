package footing.core.follow;

import footing.core.records.Happened;
import footing.core.records.Log;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A forecast held against what a log has told since.
 *
 * @param machines of which the log tells something
 * @param silent machines of which it tells nothing
 * @param fleet all machines together; empty as long as one of them is silent
 */
public record FollowUp(Forecast forecast, List<Machine> machines, List<String> silent, Optional<Fleet> fleet) {
    public FollowUp {
        machines = List.copyOf(machines);
        silent = List.copyOf(silent);
    }

    /**
     * One machine.
     *
     * @param late recording began only after the day of the forecast; then what came is held against as many hours from
     *     its start
     * @param came what came by the hours since, for drawing beside the bands; the last is how it stands
     * @param others sets put on that are neither the plan's nor what was on before
     */
    public record Machine(
            Forecast.Machine forecast,
            Happened happened,
            boolean late,
            List<Step> came,
            List<Line> lines,
            Set<String> others) {
        public Machine {
            came = List.copyOf(came);
            lines = List.copyOf(lines);
            others = Set.copyOf(others);
        }

        /** True if it has run longer than there are bands for; then the last ones are taken. */
        public boolean beyond() {
            return happened.hours() > forecast.bands().until();
        }
    }

    /** All machines, by the hours of all of them. */
    public record Fleet(List<Step> came, List<Line> lines) {
        public Fleet {
            came = List.copyOf(came);
            lines = List.copyOf(lines);
        }
    }

    /** Holds a forecast against a log. */
    public static FollowUp of(Forecast forecast, Log log) {
        List<Told> told = new ArrayList<>();
        List<String> silent = new ArrayList<>();
        for (Forecast.Machine m : forecast.machines()) {
            Happened.since(log, m.id(), forecast.asOf())
                    .ifPresentOrElse(h -> told.add(new Told(forecast, m, h)), () -> silent.add(m.id()));
        }
        List<Machine> machines = told.stream().map(Told::machine).toList();
        Optional<Fleet> fleet = silent.isEmpty() ? Optional.of(Told.fleet(told, forecast.fleet())) : Optional.empty();
        return new FollowUp(forecast, machines, silent, fleet);
    }
}
