package footing.core.answer;

import footing.core.chance.Sample;
import footing.core.chance.Spread;
import footing.core.fleet.Case;
import footing.core.fleet.InForce;
import footing.core.fleet.Input;
import footing.core.fleet.Key;
import footing.core.fleet.Place;
import footing.core.fleet.Position;
import footing.core.fleet.ResolvedMachine;
import footing.core.fleet.Resolver;
import footing.core.fleet.Values;
import footing.core.future.MachineFutures;
import footing.core.future.SharedDraws;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The saving of one machine's recommended entry (or the best other one) with one input at a time moved, on the first
 * {@value Sensitivity#FUTURES} futures; and for the defaults, whether the verdict would be another.
 */
final class Drivers {
    private static final int LOW = 0;
    private static final int HIGH = 1;
    private static final int ELSEWHERE = 2;
    private static final int ENDS = 3;

    private final Case stated;
    private final Case.Machine machine;
    private final ResolvedMachine.Entry entry;
    private final long seed;
    private final int futures;
    private final SharedDraws shared;
    private final ResolvedMachine base;
    private final List<InForce> inputs;
    private final Values values;
    private final End[] ends;
    private final Comparison baseline;
    private final End unmoved;

    /** What the case says with one input at one of its ends. */
    private record End(double saving, String decision) {}

    Drivers(Case stated, MachineAnswer answer, ResolvedMachine.Entry entry, Options options, MachineFutures run) {
        this.stated = stated;
        this.entry = entry;
        seed = options.seed();
        futures = Math.min(Sensitivity.FUTURES, run.futures());
        shared = run.shared();
        machine = stated.machine(answer.id());
        base = answer.machine();
        values = new Values(stated, machine);
        inputs = values.all().stream().filter(i -> Moves.apply(i.input().key())).toList();
        ends = new End[ENDS * inputs.size()];
        baseline = new Comparison(new MachineFutures(base, seed, shared).runAll(futures), options.threshold());
        unmoved = decided(baseline);
    }

    /** A few for each input, in any order. */
    int tasks() {
        return ends.length;
    }

    void run(int task) {
        InForce input = inputs.get(task / ENDS);
        Moves moves = Moves.of(input, machine.numbers());
        Spread to = switch (task % ENDS) {
            case LOW -> moves.low();
            case HIGH -> moves.high();
            default -> values.elsewhere(input.input()).orElse(input.value());
        };
        ends[task] = to.equals(input.value()) ? unmoved : moved(input, to);
    }

    private End moved(InForce input, Spread to) {
        Case changed = stated.with(input.input(), to);
        ResolvedMachine all = Resolver.resolve(changed, changed.machine(machine.id()));
        if (all.equals(base)) {
            return unmoved;
        }
        return input.origin().isGuess()
                ? decided(baseline.with(new MachineFutures(affected(all, input.input()), seed, shared).runAll(futures)))
                : saving(all, input.input());
    }

    private End decided(Comparison comparison) {
        int e = base.entries().indexOf(entry);
        return new End(comparison.step(0, e).mean(), comparison.recommended() + " " + comparison.verdict());
    }

    private End saving(ResolvedMachine all, Input input) {
        if (ofAssembly(input) && !reaches(input.owner(), entry)) {
            return unmoved;
        }
        ResolvedMachine pair = all.about(
                List.of(all.carried(), all.entries().get(base.entries().indexOf(entry))));
        MachineFutures run = MachineFutures.ofDifferences(pair, seed, shared).runAll(futures);
        return new End(new Sample(run.costs(0)).mean() - new Sample(run.costs(1)).mean(), unmoved.decision());
    }

    private static boolean ofAssembly(Input input) {
        return input.key().place() == Place.ASSEMBLY;
    }

    /** True if an assembly counts at a position where an entry changes something; elsewhere both sides bear it alike. */
    private boolean reaches(String assembly, ResolvedMachine.Entry e) {
        for (Position p : Position.values()) {
            boolean here =
                    assembly.equals(e.at(p)) || assembly.equals(base.carried().at(p));
            if (here && base.differs(e, p)) {
                return true;
            }
        }
        return false;
    }

    /** The entries a default can change: all of them, or those with the assembly it belongs to. */
    private ResolvedMachine affected(ResolvedMachine all, Input input) {
        ResolvedMachine.Entry carried = all.carried();
        String owner = input.owner();
        if (!ofAssembly(input) || owner.equals(carried.drive()) || owner.equals(carried.caster())) {
            return all;
        }
        List<ResolvedMachine.Entry> some = new ArrayList<>(List.of(carried));
        all.entries().stream()
                .filter(e -> owner.equals(e.drive()) || owner.equals(e.caster()))
                .forEach(some::add);
        return all.about(some);
    }

    /** Every input with what it does, the largest swing first. */
    List<MachineAnswer.Driver> drivers() {
        List<MachineAnswer.Driver> drivers = new ArrayList<>();
        for (int i = 0; i < inputs.size(); i++) {
            InForce input = inputs.get(i);
            Moves moves = Moves.of(input, machine.numbers());
            drivers.add(new MachineAnswer.Driver(
                    input,
                    moves.low().likely(),
                    moves.high().likely(),
                    ends[ENDS * i + LOW].saving(),
                    ends[ENDS * i + HIGH].saving()));
        }
        drivers.sort(Comparator.comparingDouble(MachineAnswer.Driver::swing).reversed());
        return drivers;
    }

    /**
     * The defaults in force and what the case marks as a guess, the largest swing first. Where a default says there is none of a thing, it is also judged by
     * what it may well be elsewhere ({@link Key#elsewhere}); drivers leave that out.
     */
    List<MachineAnswer.Guess> guesses() {
        List<MachineAnswer.Guess> guesses = new ArrayList<>();
        for (int i = 0; i < inputs.size(); i++) {
            InForce input = inputs.get(i);
            if (input.origin().isGuess()) {
                List<End> tried = List.of(ends).subList(ENDS * i, ENDS * (i + 1));
                double moved =
                        Math.abs(tried.get(HIGH).saving() - tried.get(LOW).saving());
                double elsewhere = Math.abs(tried.get(ELSEWHERE).saving() - unmoved.saving());
                boolean turns = tried.stream().anyMatch(end -> !end.decision().equals(unmoved.decision()));
                guesses.add(new MachineAnswer.Guess(input, Math.max(moved, elsewhere), turns));
            }
        }
        guesses.sort(Comparator.comparingDouble(MachineAnswer.Guess::swing).reversed());
        return guesses;
    }
}
