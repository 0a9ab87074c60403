package footing.io.casefile;

import footing.core.chance.Spread;
import footing.core.fleet.Key;
import footing.core.fleet.Numbers;
import footing.io.form.Found;
import footing.io.form.Problems;
import footing.io.form.Written;
import java.util.Optional;

/** What only several numbers of one machine together can get wrong. */
final class MachineChecks {
    private static final double MOST_YEARS = 60;

    private MachineChecks() {}

    static void check(Found machine, boolean isNew, Numbers numbers, Problems problems) {
        checkRest(machine, numbers, problems);
        if (isNew && machine.has("worn")) {
            problems.error(machine.get("worn").at(), "", "a new machine comes on a new set", "leave worn out");
        } else {
            checkWorn(machine, numbers, Key.WORN_DRIVE, problems);
            checkWorn(machine, numbers, Key.WORN_CASTER, problems);
        }
    }

    private static void checkRest(Found machine, Numbers numbers, Problems problems) {
        Optional<Spread> now = numbers.get(Key.HOURS_NOW);
        Optional<Spread> until = numbers.get(Key.KEEP_UNTIL);
        Optional<Spread> perYear = numbers.get(Key.HOURS_PER_YEAR);
        if (now.isEmpty() || until.isEmpty()) {
            return;
        }
        double rest = until.get().likely() - now.get().likely();
        String from = Written.number(now.get().likely());
        if (!(rest > 0)) {
            problems.error(
                    machine.get("keepUntil").at(),
                    Written.number(until.get().likely()),
                    "the hour meter already stands at " + from,
                    "try: the meter at which it is traded, above " + from);
        } else if (perYear.isPresent() && rest / perYear.get().likely() > MOST_YEARS) {
            problems.error(
                    machine.get("hoursPerYear").at(),
                    Written.number(perYear.get().likely()),
                    "so few hours would keep the machine over 60 years",
                    "try: at least " + Written.number(Math.ceil(rest / MOST_YEARS)) + ", or a lower keepUntil");
        }
    }

    private static void checkWorn(Found machine, Numbers numbers, Key key, Problems problems) {
        Optional<Spread> now = numbers.get(Key.HOURS_NOW);
        Optional<Spread> worn = numbers.get(key);
        if (now.isPresent()
                && worn.isPresent()
                && worn.get().likely() > now.get().likely()) {
            String end = key == Key.WORN_DRIVE ? "drive" : "caster";
            problems.warn(
                    machine.get("worn").get(end).at(),
                    Written.number(worn.get().likely()),
                    "more hours than the machine itself has",
                    "right only if the set came from another machine, or the meter was replaced");
        }
    }
}
