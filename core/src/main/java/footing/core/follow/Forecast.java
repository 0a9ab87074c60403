package footing.core.follow;

import footing.core.fleet.Position;
import footing.core.fleet.When;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What was forecast of a case, kept to be held against what comes.
 *
 * @param made the day it was made
 * @param asOf the day of the case, from which its hours count
 * @param futures the bands were taken from
 * @param fleet all machines together, by the hours of all of them, their hours spread over the calendar as the case
 *     says
 */
public record Forecast(
        LocalDate made, LocalDate asOf, long seed, int futures, String currency, List<Machine> machines, Bands fleet) {
    public Forecast {
        machines = List.copyOf(machines);
    }

    /**
     * One machine.
     *
     * @param hoursNow what its meter showed on the day of the case
     */
    public record Machine(String id, double hoursNow, Plan plan, Bands bands) {}

    /**
     * What was taken to be on it.
     *
     * @param wheels the id of the package
     * @param drive the assembly wanted there; {@code driveBefore} what was on it before
     */
    public record Plan(String wheels, When when, String drive, String caster, String driveBefore, String casterBefore) {
        public String wanted(Position position) {
            return position == Position.DRIVE ? drive : caster;
        }

        public String before(Position position) {
            return position == Position.DRIVE ? driveBefore : casterBefore;
        }

        /** True if another set is put on at the start. */
        public boolean changesNow(Position position) {
            return when == When.NOW && !wanted(position).equals(before(position));
        }
    }

    public Optional<Machine> machine(String id) {
        return machines.stream().filter(m -> m.id().equals(id)).findFirst();
    }
}
