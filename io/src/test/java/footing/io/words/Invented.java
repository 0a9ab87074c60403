package footing.io.words;

import footing.core.answer.Answer;
import footing.core.answer.EntryAnswer;
import footing.core.answer.Estimate;
import footing.core.answer.MachineAnswer;
import footing.core.answer.Saving;
import footing.core.answer.Verdict;
import footing.core.fleet.Case;
import footing.core.fleet.ResolvedMachine;
import footing.core.fleet.Resolver;
import footing.core.fleet.When;
import footing.core.future.Counts;
import footing.core.future.EntryOutcome;
import footing.core.future.FixOutcome;
import footing.core.future.Parts;
import footing.io.casefile.CaseFile;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Makes up answers: what each entry saves is said here, not simulated. */
public final class Invented {
    /** What each machine costs as it is. */
    public static final double CARRIED_COST = 4000;

    private static final String CASE = """
            format: footing-case/1
            title: Made up
            asOf: 2027-03-01
            crews:
              north: {people: 2, wage: 20, billing: 110, fixes: [{name: to the yard, share: 100 %, delay: 115 min}]}
            assemblies:
              air: {kind: air, position: drive, price: 200, life: 600}
              sealed: {kind: sealant, position: drive, price: 220, life: 600}
              spoked: {kind: airless, position: drive, price: 600, life: 2000}
              spoked-b: {kind: airless, position: drive, price: 650, life: 2100}
              soft: {kind: air, position: caster, price: 80, life: 800}
              hard: {kind: solid, position: caster, price: 100, life: 900}
            packages:
              on-air: {drive: air, caster: soft}
              sealant: {drive: sealed, caster: soft}
              airless: {drive: spoked, caster: hard}
              airless-b: {drive: spoked-b, caster: hard}
            machines:
            """;

    private final StringBuilder machines = new StringBuilder();
    private final Map<String, Verdict> verdicts = new LinkedHashMap<>();
    private final Map<String, Saving> savings = new LinkedHashMap<>();
    private final Map<String, Double> starts = new LinkedHashMap<>();
    private final Map<String, String> rivals = new LinkedHashMap<>();
    private EntryAnswer.@Nullable BreakEvenFlats breakEven;
    private String flats = "{low: 3, likely: 6, high: 11}";
    private int hoursNow;
    private double partsAlone = 1;
    private double partsAndTime = 2;

    /** Flats a season of the machines named from here on. */
    public Invented flats(String stated) {
        flats = stated;
        return this;
    }

    /** The meter of the machines named from here on; they are traded at 2,000 hours. */
    public Invented hoursNow(int hours) {
        hoursNow = hours;
        return this;
    }

    /** What every entry saves counting parts alone, and with the crew's time. */
    public Invented levels(double parts, double withTime) {
        partsAlone = parts;
        partsAndTime = withTime;
        return this;
    }

    /** A machine of 2,000 hours, 500 a season, that considers some packages. */
    public Invented machine(String id, boolean isNew, Verdict verdict, String... considers) {
        machines.append("  - {id: %s, crew: north, hoursNow: %d, keepUntil: 2000, hoursPerYear: 500, crewOutput: 5 %%, "
                .formatted(id, hoursNow));
        machines.append("flatsPerSeason: %s, carries: on-air, new: %s, consider: [%s]}\n"
                .formatted(flats, isNew, String.join(", ", considers)));
        verdicts.put(id, verdict);
        return this;
    }

    /** What an entry saves; an entry not named here costs 500 more and is never chosen. */
    public Invented saves(String machine, String wheels, When when, Saving saving, double start) {
        savings.put(key(machine, wheels, when), saving);
        starts.put(key(machine, wheels, when), start);
        return this;
    }

    /** The best cheaper entry is another package changed to now, and hardly worse. */
    public Invented hardlyBeats(String machine, String wheels, String rival) {
        rivals.put(key(machine, wheels, When.NOW), rival);
        return this;
    }

    public Invented breakEven(double at, double now) {
        breakEven = new EntryAnswer.BreakEvenFlats(at, now);
        return this;
    }

    /** A saving with its 10th and 90th percentile and chance; its standard error is 1. */
    public static Saving saving(double mean, double p10, double p90, double chance) {
        return new Saving(mean, 1, p10, mean, p90, chance);
    }

    private static String key(String machine, String wheels, When when) {
        return machine + " " + wheels + " " + when;
    }

    public Answer answer() {
        Case stated = CaseFile.read(CASE + machines, "made-up.yaml").found().orElseThrow();
        List<MachineAnswer> answers = new ArrayList<>();
        for (ResolvedMachine m : Resolver.resolve(stated)) {
            answers.add(machine(m));
        }
        double mean =
                answers.stream().mapToDouble(a -> a.choice().saving().mean()).sum();
        double p10 =
                answers.stream().mapToDouble(a -> a.choice().saving().p10()).sum();
        double p90 =
                answers.stream().mapToDouble(a -> a.choice().saving().p90()).sum();
        double start = answers.stream().mapToDouble(a -> a.choice().startCost()).sum();
        Answer.Fleet fleet = new Answer.Fleet(saving(mean, p10, p90, 0.9), start);
        return new Answer(stated, 4000, 1, 0.8, "Enough.", true, List.of(), answers, fleet);
    }

    private MachineAnswer machine(ResolvedMachine m) {
        List<EntryAnswer> entries = new ArrayList<>();
        int best = 0;
        for (ResolvedMachine.Entry e : m.entries()) {
            entries.add(entry(m, e, entries.isEmpty()));
            int last = entries.size() - 1;
            best = entries.get(last).cost().mean() < entries.get(best).cost().mean() ? last : best;
        }
        MachineAnswer.CostPerFlat flat = new MachineAnswer.CostPerFlat(
                31, 84, 46, List.of(new FixOutcome("to the yard", 12, 31, 84, 46, 115 / 60.0, 46 / 60.0)));
        Verdict verdict = verdicts.getOrDefault(m.id(), Verdict.KEEP);
        return new MachineAnswer(m, entries, best, verdict, List.of(), flat, null, null, null, null);
    }

    private EntryAnswer entry(ResolvedMachine m, ResolvedMachine.Entry e, boolean carried) {
        String key = key(m.id(), e.id(), e.when());
        Saving saving = carried ? saving(0, 0, 0, 0) : savings.getOrDefault(key, saving(-500, -900, -100, 0.02));
        double start = carried ? 0 : starts.getOrDefault(key, 2000.0);
        Estimate cost = new Estimate(CARRIED_COST - saving.mean(), 1, 3000, CARRIED_COST, 5000);
        EntryOutcome outcome = new EntryOutcome(
                e, start, 0, 0, Parts.NONE, new Counts(1, 2, 3, 4, 5), 0.5, 0.6, new TreeMap<>(), List.of(0.0), 0);
        List<EntryAnswer.Level> levels = List.of(
                new EntryAnswer.Level(EntryAnswer.Counting.PARTS, partsAlone, 0.1),
                new EntryAnswer.Level(EntryAnswer.Counting.PARTS_AND_TIME, partsAndTime, 0.2),
                new EntryAnswer.Level(EntryAnswer.Counting.ALL, saving.mean(), saving.chance()));
        EntryAnswer.OverNext next = carried ? null : overNext(m, rivals.get(key), saving);
        EntryAnswer.Monthly monthly = start == 0 ? null : new EntryAnswer.Monthly(start / 36, 60, 36, 36, start);
        Double never = e.when() == When.WORN ? Double.valueOf(0.25) : null;
        return new EntryAnswer(
                outcome, never, cost, saving, levels, next, null, carried ? null : breakEven, null, null, monthly);
    }

    private static EntryAnswer.OverNext overNext(ResolvedMachine m, @Nullable String rival, Saving saving) {
        return m.entries().stream()
                .filter(e -> e.id().equals(rival) && e.when() == When.NOW)
                .findFirst()
                .map(e -> new EntryAnswer.OverNext(e, 15, 1, 0.55))
                .orElseGet(() -> new EntryAnswer.OverNext(m.carried(), saving.mean(), 1, saving.chance()));
    }
}
