package footing.core.answer;

import footing.core.chance.Spread;
import footing.core.fleet.Case;
import footing.core.fleet.InForce;
import footing.core.fleet.Input;
import footing.core.fleet.Origin;
import footing.core.fleet.Place;
import footing.core.fleet.ResolvedMachine;
import footing.core.fleet.Resolver;
import footing.core.fleet.Values;
import footing.core.future.MachineFutures;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The saving of one machine's recommended entry (or the best other one) with one input at a time moved, on the first
 * {@value Sensitivity#FUTURES} futures; and for the defaults, whether the verdict would be another.
 */
final class Drivers {
    private final Case stated;
    private final Case.Machine machine;
    private final ResolvedMachine.Entry entry;
    private final Options options;
    private final int futures;
    private final ResolvedMachine base;
    private final ResolvedMachine pair;
    private final List<InForce> inputs;
    private final End[] ends;
    private final End unmoved;

    /** What the case says with one input at one of its ends. */
    private record End(double saving, String decision) {}

    Drivers(Case stated, MachineAnswer answer, ResolvedMachine.Entry entry, Options options, int futures) {
        this.stated = stated;
        this.entry = entry;
        this.options = options;
        this.futures = Math.min(Sensitivity.FUTURES, futures);
        machine = stated.machine(answer.id());
        base = answer.machine();
        pair = base.about(List.of(base.carried(), entry));
        inputs = new Values(stated, machine)
                .all().stream().filter(i -> Moves.apply(i.input().key())).toList();
        ends = new End[2 * inputs.size()];
        unmoved = measured(base, true);
    }

    /** Two for each input, in any order. */
    int tasks() {
        return ends.length;
    }

    void run(int task) {
        InForce input = inputs.get(task / 2);
        Moves moves = Moves.of(input, machine.numbers());
        Spread to = task % 2 == 0 ? moves.low() : moves.high();
        ends[task] = to.equals(input.value()) ? unmoved : moved(input, to);
    }

    private End moved(InForce input, Spread to) {
        boolean guess = input.origin() == Origin.DEFAULT;
        ResolvedMachine all = Resolver.resolve(stated.with(input.input(), to), machine(input, to));
        if (all.equals(base) || (!guess && canNotMatter(input.input()))) {
            return unmoved;
        }
        return measured(all, guess);
    }

    private Case.Machine machine(InForce input, Spread to) {
        return stated.with(input.input(), to).machine(machine.id());
    }

    /** True for an assembly at a position where the entry changes nothing: both sides of the saving bear it alike. */
    private boolean canNotMatter(Input input) {
        return input.key().place() == Place.ASSEMBLY
                && !input.owner().equals(changed(pair.carried().drive(), entry.drive()))
                && !input.owner().equals(changed(entry.drive(), pair.carried().drive()))
                && !input.owner().equals(changed(pair.carried().caster(), entry.caster()))
                && !input.owner().equals(changed(entry.caster(), pair.carried().caster()));
    }

    private static String changed(String one, String other) {
        return one.equals(other) ? "" : one;
    }

    private End measured(ResolvedMachine moved, boolean decide) {
        int e = base.entries().indexOf(entry);
        ResolvedMachine.Entry same = moved.entries().get(e);
        ResolvedMachine about = decide ? moved : moved.about(List.of(moved.carried(), same));
        MachineFutures run = new MachineFutures(about, options.seed()).runAll(futures);
        Comparison comparison = new Comparison(run, options.threshold());
        String decision = decide ? comparison.recommended() + " " + comparison.verdict() : "";
        return new End(comparison.step(0, decide ? e : 1).mean(), decision);
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
                    ends[2 * i].saving(),
                    ends[2 * i + 1].saving()));
        }
        drivers.sort(Comparator.comparingDouble(MachineAnswer.Driver::swing).reversed());
        return drivers;
    }

    /** The defaults in force, the largest swing first. */
    List<MachineAnswer.Guess> guesses() {
        List<MachineAnswer.Guess> guesses = new ArrayList<>();
        for (int i = 0; i < inputs.size(); i++) {
            InForce input = inputs.get(i);
            if (input.origin() == Origin.DEFAULT) {
                End low = ends[2 * i];
                End high = ends[2 * i + 1];
                boolean turns = !low.decision().equals(unmoved.decision())
                        || !high.decision().equals(unmoved.decision());
                guesses.add(new MachineAnswer.Guess(input, Math.abs(high.saving() - low.saving()), turns));
            }
        }
        guesses.sort(Comparator.comparingDouble(MachineAnswer.Guess::swing).reversed());
        return guesses;
    }
}
