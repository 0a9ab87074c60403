package footing.core.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import footing.core.chance.Spread;
import footing.core.fleet.Case;
import footing.core.fleet.Chance;
import footing.core.fleet.InForce;
import footing.core.fleet.Input;
import footing.core.fleet.Key;
import footing.core.fleet.Numbers;
import footing.core.fleet.Origin;
import footing.core.fleet.Place;
import footing.core.fleet.Resolver;
import footing.core.fleet.Values;
import footing.core.fleet.When;
import footing.core.future.MachineFutures;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What moves a saving, against the same case changed by hand and answered anew. */
class DriversTest {
    private static final int FUTURES = 300;

    private static final Case CASE =
            SmallCase.considering(SmallCase.build(), List.of(SmallCase.FIRM, SmallCase.SEALED), List.of(When.NOW));

    private static final MachineAnswer ANSWER = answer(CASE, false);

    private static MachineAnswer answer(Case c, boolean quick) {
        Options options = Options.usual().withFutures(FUTURES);
        return Assessment.answer(c, quick ? options.quickly() : options, Workers.one(), Watch.NOBODY)
                .machine(SmallCase.RIDER);
    }

    private static List<MachineAnswer.Driver> drivers() {
        return Objects.requireNonNull(ANSWER.drivers());
    }

    private static List<MachineAnswer.Guess> guesses() {
        return Objects.requireNonNull(ANSWER.guesses());
    }

    private static double savingOfTheChoice(Case c) {
        MachineFutures run = new MachineFutures(Resolver.resolve(c).get(0), 1).runAll(FUTURES);
        return new Comparison(run, 0.8).step(0, ANSWER.recommended()).mean();
    }

    @Test
    void drivers_everyOne_isTheSavingOfTheCaseSoChanged() {
        assertThat(ANSWER.recommended()).isPositive();
        for (MachineAnswer.Driver d : drivers()) {
            Input input = d.input().input();
            if (d.input().value().isFixed() || input.key().chance() == Chance.UNKNOWN) {
                String what = input.path();
                assertThat(d.savingAtLow())
                        .as(what)
                        .isCloseTo(savingOfTheChoice(CASE.with(input, Spread.of(d.low()))), within(1e-6));
                assertThat(d.savingAtHigh())
                        .as(what)
                        .isCloseTo(savingOfTheChoice(CASE.with(input, Spread.of(d.high()))), within(1e-6));
            }
        }
    }

    @Test
    void drivers_whatVaries_isScaledByAFifth() {
        for (Key key : List.of(Key.LIFE, Key.DELAY)) {
            MachineAnswer.Driver d = drivers().stream()
                    .filter(x ->
                            x.input().input().key() == key && !x.input().value().isFixed())
                    .max(Comparator.comparingDouble(MachineAnswer.Driver::swing))
                    .orElseThrow();
            Input input = d.input().input();
            Spread value = d.input().value();
            assertThat(d.low()).isCloseTo(0.8 * value.likely(), within(1e-9));
            assertThat(d.savingAtLow()).isCloseTo(savingOfTheChoice(CASE.with(input, value.times(0.8))), within(1e-6));
            assertThat(d.savingAtHigh()).isCloseTo(savingOfTheChoice(CASE.with(input, value.times(1.2))), within(1e-6));
        }
    }

    @Test
    void drivers_nothingMoved_isTheSavingItself() {
        List<MachineAnswer.Driver> still =
                drivers().stream().filter(d -> d.low() == d.high()).toList();
        assertThat(still).isNotEmpty();
        for (MachineAnswer.Driver d : still) {
            assertThat(d.savingAtLow()).isEqualTo(ANSWER.choice().saving().mean());
            assertThat(d.savingAtHigh()).isEqualTo(ANSWER.choice().saving().mean());
        }
    }

    @Test
    void drivers_ofACase_comeLargestSwingFirst() {
        assertThat(drivers())
                .isSortedAccordingTo(
                        Comparator.comparingDouble(MachineAnswer.Driver::swing).reversed());
        assertThat(drivers().get(0).swing()).isPositive();
    }

    @Test
    void drivers_unknownThreePoint_isFixedAtItsEnds() {
        MachineAnswer.Driver flats = drivers().stream()
                .filter(d -> d.input().input().key() == Key.FLATS_PER_SEASON)
                .findFirst()
                .orElseThrow();
        assertThat(flats.low()).isEqualTo(2);
        assertThat(flats.high()).isEqualTo(9);
        assertThat(flats.savingAtHigh()).isGreaterThan(flats.savingAtLow());
    }

    /** Counts, dates, shares of fixes and hoursNow are not moved; every other number in force is, once. */
    @Test
    void drivers_numbersInForce_areAllThere() {
        Set<Key> out = EnumSet.of(
                Key.FIX_SHARE,
                Key.PEOPLE,
                Key.COUNT_DRIVE,
                Key.COUNT_CASTER,
                Key.LOAN_MONTHS,
                Key.HOURS_NOW,
                Key.FLATS_AT_CASTER);
        List<Input> expected = new Values(CASE, CASE.machine(SmallCase.RIDER))
                .all().stream()
                        .map(InForce::input)
                        .filter(i -> !out.contains(i.key()))
                        .toList();
        assertThat(drivers()).extracting(d -> d.input().input()).containsExactlyInAnyOrderElementsOf(expected);
    }

    @Test
    void guesses_defaultsInForce_areAllThere() {
        List<Input> expected = new Values(CASE, CASE.machine(SmallCase.RIDER))
                .all().stream()
                        .filter(i -> i.origin() == Origin.DEFAULT)
                        .map(InForce::input)
                        .filter(i -> Moves.apply(i.key()))
                        .toList();
        assertThat(guesses()).extracting(g -> g.input().input()).containsExactlyInAnyOrderElementsOf(expected);
        assertThat(expected).hasSizeGreaterThan(30);
    }

    @Test
    void guesses_everyOne_turnsIfTheChangedCaseAnswersOtherwise() {
        for (MachineAnswer.Guess g : guesses()) {
            Input input = g.input().input();
            MachineAnswer.Driver d = drivers().stream()
                    .filter(x -> x.input().input().equals(input))
                    .findFirst()
                    .orElseThrow();
            List<Double> ends = new ArrayList<>(List.of(d.low(), d.high()));
            double swing = d.swing();
            Optional<Spread> elsewhere = new Values(CASE, CASE.machine(SmallCase.RIDER)).elsewhere(input);
            if (elsewhere.isPresent()) {
                ends.add(elsewhere.get().likely());
                double there = savingOfTheChoice(CASE.with(input, elsewhere.get()));
                swing = Math.max(
                        swing, Math.abs(there - ANSWER.choice().saving().mean()));
            }
            boolean turns = false;
            for (double end : ends) {
                MachineAnswer moved = answer(CASE.with(input, Spread.of(end)), true);
                turns |= moved.recommended() != ANSWER.recommended() || moved.verdict() != ANSWER.verdict();
            }
            assertThat(g.turnsVerdict()).as(input.path()).isEqualTo(turns);
            assertThat(g.swing()).as(input.path()).isCloseTo(swing, within(1e-6));
        }
    }

    /** Nothing of it is what these defaults say, and a fifth of nothing is nothing: each is tried at something else. */
    @Test
    void guesses_defaultsOfNothing_moveTheSavingElsewhere() {
        for (Key key : Key.values()) {
            key.elsewhere()
                    .ifPresent(rule -> assertThat(key.fallback()).as(key.key()).isPresent());
        }
        assertThat(guesses())
                .filteredOn(g -> g.input().value().likely() == 0 && g.swing() > 0)
                .extracting(g -> g.input().input().key())
                .contains(Key.OUTPUT, Key.CARRY_ON, Key.TRADE_CREDIT, Key.SCRAP_FEE, Key.LIFE_UNSURE);
    }

    /** At this price the carried set is kept if it is new, and not if half its life is behind it. */
    @Test
    void guesses_wornSetNotStated_isMarkedWhereItTurnsTheVerdict() {
        Case silent = withoutWornDrive(SmallCase.with(
                SmallCase.considering(SmallCase.build(), List.of(SmallCase.FIRM), List.of(When.NOW)),
                Key.PRICE,
                "firm-drive",
                750));
        MachineAnswer answer = answer(silent, false);
        MachineAnswer.Guess worn = Objects.requireNonNull(answer.guesses()).stream()
                .filter(g -> g.input().input().key() == Key.WORN_DRIVE)
                .findFirst()
                .orElseThrow();
        assertThat(worn.input().value().likely()).isZero();
        assertThat(worn.swing()).isPositive();
        assertThat(worn.turnsVerdict()).isTrue();
        MachineAnswer halfWorn = answer(SmallCase.with(silent, Key.WORN_DRIVE, SmallCase.RIDER, 300), true);
        assertThat(answer.verdict()).isEqualTo(Verdict.KEEP);
        assertThat(halfWorn.verdict()).isNotEqualTo(Verdict.KEEP);
    }

    private static Case withoutWornDrive(Case c) {
        return SmallCase.machines(
                c,
                all -> all.stream()
                        .map(m -> new Case.Machine(
                                m.id(),
                                m.kind(),
                                m.crew(),
                                m.isNew(),
                                without(m.numbers()),
                                m.carries(),
                                m.consider(),
                                m.when(),
                                m.upcharge()))
                        .toList());
    }

    private static Numbers without(Numbers numbers) {
        Numbers kept = Numbers.NONE;
        for (Key key : Key.of(Place.MACHINE)) {
            Optional<Spread> stated = numbers.get(key);
            if (key != Key.WORN_DRIVE && stated.isPresent()) {
                kept = kept.with(key, stated.get());
            }
        }
        return kept;
    }

    @Test
    void findOutFirst_ofACase_isWorthNoLessThanAnyOfItsParts() {
        MachineAnswer.FindOutFirst found = Objects.requireNonNull(ANSWER.findOutFirst());
        assertThat(found.each())
                .extracting(w -> w.input().key())
                .containsExactlyInAnyOrder(Key.FLATS_PER_SEASON, Key.MAKE_UP_LATER, Key.LIFE_UNSURE);
        assertThat(found.each()).allSatisfy(w -> {
            assertThat(w.value()).isNotNegative();
            assertThat(w.value()).isLessThanOrEqualTo(found.all());
        });
    }
}
