package footing.core.follow;

import footing.core.answer.Answer;
import footing.core.answer.MachineAnswer;
import footing.core.answer.Verdict;
import footing.core.fleet.Input;
import footing.core.fleet.Key;
import footing.core.fleet.ResolvedMachine;
import footing.core.fleet.Values;
import footing.core.future.Followed;
import footing.core.future.MeterDate;
import footing.core.future.Paths;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Makes forecasts: the futures of each machine under what it is going to run, told by its hours, and of all machines
 * together by the hours of all.
 */
public final class Forecaster {
    /** Enough for the ends of an 80 % band: the share below either has a standard error of half a percent. */
    public static final int FUTURES = 4_000;

    private static final int STEPS = 48;

    private final Answer answer;
    private final Map<String, ResolvedMachine.Entry> chosen;
    private final LocalDate lastTrade;
    private final double[] fleetHours = new double[STEPS + 1];
    private final Map<Followed, double[][]> fleet = columns();

    private Forecaster(Answer answer, Map<String, ResolvedMachine.Entry> chosen) {
        this.answer = answer;
        this.chosen = chosen;
        lastTrade = answer.machines().stream()
                .map(MachineAnswer::machine)
                .map(m -> MeterDate.of(m, m.hoursLeft()))
                .max(LocalDate::compareTo)
                .orElseThrow(() -> new IllegalArgumentException("a case without machines has no forecast"));
    }

    /** What the answer says to run: the recommended change where it pays, else what is on the machine. */
    public static ResolvedMachine.Entry advised(MachineAnswer m) {
        return m.machine().entries().get(m.verdict() == Verdict.PAYS ? m.recommended() : 0);
    }

    /**
     * Forecasts what an answer's machines will go through, by the first {@value #FUTURES} futures of its seed. Works
     * machine by machine, so that memory doesn't grow with the fleet.
     *
     * @param chosen by machine, one of its entries; for machines left out, what is {@link #advised}
     * @param made the day it is made
     */
    public static Forecast of(Answer answer, Map<String, ResolvedMachine.Entry> chosen, LocalDate made) {
        return new Forecaster(answer, chosen).forecast(made);
    }

    private Forecast forecast(LocalDate made) {
        List<Forecast.Machine> machines = new ArrayList<>();
        for (MachineAnswer m : answer.machines()) {
            machines.add(machine(m.machine(), chosen.getOrDefault(m.id(), advised(m))));
        }
        return new Forecast(
                made,
                answer.of().heading().asOf(),
                answer.seed(),
                FUTURES,
                answer.of().heading().currency(),
                machines,
                Bands.of(fleetHours, fleet));
    }

    private static Map<Followed, double[][]> columns() {
        Map<Followed, double[][]> columns = new EnumMap<>(Followed.class);
        for (Followed what : Followed.values()) {
            columns.put(what, new double[STEPS + 1][FUTURES]);
        }
        return columns;
    }

    /** One machine by its own hours; adds it to the fleet by the calendar. */
    private Forecast.Machine machine(ResolvedMachine m, ResolvedMachine.Entry entry) {
        double[] own = new double[STEPS + 1];
        double[] calendar = new double[STEPS + 1];
        long days = ChronoUnit.DAYS.between(m.asOf(), lastTrade);
        for (int i = 0; i <= STEPS; i++) {
            own[i] = m.hoursLeft() * i / STEPS;
            calendar[i] = i == 0 ? 0 : Paths.hoursBy(m, m.asOf().plusDays(days * i / STEPS));
            fleetHours[i] += calendar[i];
        }
        Paths byCalendar = Paths.of(m, entry, answer.seed(), FUTURES, calendar);
        fleet.forEach((what, columns) -> {
            for (int i = 0; i <= STEPS; i++) {
                double[] futures = byCalendar.at(what, i);
                for (int f = 0; f < FUTURES; f++) {
                    columns[i][f] += futures[f];
                }
            }
        });
        Paths byHours = Paths.of(m, entry, answer.seed(), FUTURES, own);
        Map<Followed, double[][]> columns = columns();
        columns.forEach((what, at) -> {
            for (int i = 0; i <= STEPS; i++) {
                at[i] = byHours.at(what, i);
            }
        });
        return new Forecast.Machine(m.id(), hoursNow(m), plan(m, entry), Bands.of(own, columns));
    }

    private double hoursNow(ResolvedMachine m) {
        return new Values(answer.of(), answer.of().machine(m.id()))
                .get(Input.of(Key.HOURS_NOW, m.id()))
                .likely();
    }

    private static Forecast.Plan plan(ResolvedMachine m, ResolvedMachine.Entry e) {
        ResolvedMachine.Entry before = m.carried();
        return new Forecast.Plan(e.id(), e.when(), e.drive(), e.caster(), before.drive(), before.caster());
    }
}
