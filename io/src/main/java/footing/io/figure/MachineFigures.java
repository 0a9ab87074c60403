package footing.io.figure;

import footing.core.answer.Answer;
import footing.core.answer.EntryAnswer;
import footing.core.answer.MachineAnswer;
import footing.core.fleet.Input;
import footing.core.fleet.Key;
import footing.core.fleet.ResolvedMachine;
import footing.core.fleet.Values;
import footing.core.future.MachineFutures;
import footing.io.words.Advice;
import footing.io.words.ClockedFlat;
import java.util.List;
import java.util.Optional;

/** The figures of one machine's answer. Where there is nothing to draw there is no figure. */
public final class MachineFigures {
    private final Answer answer;
    private final Advice advice;
    private final MachineAnswer machine;

    public MachineFigures(Answer answer, Advice advice) {
        this.answer = answer;
        this.advice = advice;
        machine = advice.machine();
    }

    /** The fix that costs the machine most, by the clock; empty if it never goes flat. */
    public Optional<Figure> flatByTheClock() {
        return ClockedFlat.dearest(machine)
                .map(fix -> FlatByTheClock.of(machine.machine().crew(), fix).figure(machine.id()));
    }

    public Optional<Figure> pricesOfAnHour() {
        return about().map(e -> inCurrency(PricesOfAnHour.of(advice, e)));
    }

    public Figure overHours() {
        double hoursNow = new Values(answer.of(), answer.of().machine(machine.id()))
                .get(Input.of(Key.HOURS_NOW, machine.id()))
                .likely();
        return inCurrency(OverHours.of(advice, hoursNow));
    }

    public Figure whereItGoes() {
        return inCurrency(WhereItGoes.of(advice));
    }

    /** Empty where every future comes out the same. */
    public Optional<Figure> howSure() {
        return about().filter(e -> e.saving().standardError() > 0).map(e -> inCurrency(Spreading.of(e, savings(e))));
    }

    /** Empty too where the answer leaves out what moves it. */
    public Optional<Figure> whatMovesIt() {
        List<MachineAnswer.Driver> drivers = machine.drivers();
        return drivers == null || drivers.isEmpty()
                ? Optional.empty()
                : about().map(e -> inCurrency(WhatMovesIt.of(answer.of(), advice, e, drivers)));
    }

    public Optional<Figure> byYear() {
        return about().map(e -> inCurrency(ByYear.of(advice, e)));
    }

    /** The same with its currency beside what its axes count. */
    private Figure inCurrency(Figure f) {
        String currency = answer.of().heading().currency();
        return new Figure(
                f.id(),
                f.title(),
                f.caption(),
                f.kind(),
                f.places().in(currency),
                f.values().in(currency),
                f.series(),
                f.marks());
    }

    private Optional<EntryAnswer> about() {
        return Optional.ofNullable(advice.about());
    }

    /** The saving in each future of the answer, which keeps only their summary: run again, to the last bit. */
    private double[] savings(EntryAnswer entry) {
        ResolvedMachine two = machine.machine().about(List.of(machine.carried().entry(), entry.entry()));
        MachineFutures futures = new MachineFutures(two, answer.seed()).runAll(answer.futures());
        double[] savings = futures.costs(0).clone();
        double[] costs = futures.costs(1);
        for (int f = 0; f < savings.length; f++) {
            savings[f] -= costs[f];
        }
        return savings;
    }
}
