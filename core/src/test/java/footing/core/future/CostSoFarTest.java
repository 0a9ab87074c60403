package footing.core.future;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import footing.core.chance.Sample;
import footing.core.fleet.Position;
import footing.core.fleet.ResolvedMachine;
import footing.core.plain.PlainClock;
import footing.core.plain.PlainFuture;
import footing.core.plain.PlainModel;
import footing.core.plain.PlainPart;
import footing.core.plain.RandomMachines;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;

class CostSoFarTest {
    private static final int CASES = 60;
    private static final int FUTURES = 6;
    private static final long SEED = 20270301;
    private static final double RELATIVE = 1e-9;

    private interface Check {
        void at(ResolvedMachine m, CostSoFar soFar, int entry, String where);
    }

    private static void everywhere(int cases, int futures, Check check) {
        for (int number = 0; number < cases; number++) {
            ResolvedMachine m = RandomMachines.machine(SEED, number);
            CostSoFar soFar = CostSoFar.of(m, SEED, futures);
            for (int e = 0; e < m.entries().size(); e++) {
                check.at(
                        m, soFar, e, "case " + number + ", entry " + m.entries().get(e));
            }
        }
    }

    /** What the plain model has spent by an hour: what is paid at once by then, and upkeep up to it. */
    private static double plainBy(ResolvedMachine m, PlainFuture plain, double hour) {
        double sum = plain.part(PlainPart.PURCHASE);
        for (PlainFuture.Flow flow : plain.flows()) {
            boolean lump = flow.part().isRunning() && flow.part() != PlainPart.UPKEEP;
            sum += lump && flow.hour() <= hour ? flow.present() : 0;
        }
        double keep = 1 - m.terms().taxRate();
        double real = (1 + m.terms().inflation()) / (1 + m.terms().discountRate());
        PlainClock clock = PlainClock.of(m);
        for (PlainFuture.Upkeep u : plain.upkeep()) {
            for (PlainClock.Stretch s : clock.stretches(Math.min(u.from(), hour), Math.min(u.to(), hour))) {
                sum += keep * u.perHour() * s.integral(real, s.lastDay());
            }
        }
        return sum;
    }

    @Test
    void by_randomMachines_agreesWithThePlainModelFutureByFuture() {
        SoftAssertions softly = new SoftAssertions();
        everywhere(CASES, FUTURES, (m, soFar, e, where) -> {
            for (int f = 0; f < FUTURES; f += 5) {
                PlainFuture plain = PlainModel.future(m, m.entries().get(e), SEED, f);
                for (int s = 0; s <= CostSoFar.STEPS; s += 5) {
                    double expected = plainBy(m, plain, CostSoFar.hour(s, m.hoursLeft()));
                    softly.assertThat(soFar.by(e, s)[f])
                            .as(where + ", future " + f + ", step " + s)
                            .isCloseTo(expected, within(1e-8 * (1 + Math.abs(expected))));
                }
            }
        });
        softly.assertAll();
    }

    @Test
    void afterTrade_randomMachines_isTheWholeCostOfThePlainModel() {
        everywhere(CASES, FUTURES, (m, soFar, e, where) -> {
            for (int f = 0; f < FUTURES; f++) {
                PlainFuture plain = PlainModel.future(m, m.entries().get(e), SEED, f);
                double all = plain.part(PlainPart.TRADE_IN);
                double scale = 1 + Math.abs(plain.cost()) + 2 * Math.abs(all);
                assertThat(soFar.afterTrade(e)[f]).as(where).isCloseTo(plain.cost(), within(RELATIVE * 10 * scale));
                assertThat(soFar.by(e, CostSoFar.STEPS)[f])
                        .as(where)
                        .isCloseTo(plain.cost() + all, within(RELATIVE * 10 * scale));
            }
        });
    }

    @Test
    void by_hourZero_isThePurchaseUnlessAWornOutSetIsRenewedAtOnce() {
        everywhere(CASES, FUTURES, (m, soFar, e, where) -> {
            double purchase = new MachineFutures(m, SEED)
                    .runAll(FUTURES)
                    .outcome(e)
                    .parts()
                    .purchase();
            for (int f = 0; f < FUTURES; f++) {
                double first = soFar.by(e, 0)[f];
                if (m.worn(Position.DRIVE) == 0 && m.worn(Position.CASTER) == 0) {
                    assertThat(first).as(where).isCloseTo(purchase, within(1e-9 * (1 + Math.abs(purchase))));
                } else {
                    assertThat(first).as(where).isGreaterThanOrEqualTo(purchase - 1e-9 * (1 + Math.abs(purchase)));
                }
            }
        });
    }

    @Test
    void by_laterHours_neverCostLess() {
        everywhere(CASES, FUTURES, (m, soFar, e, where) -> {
            for (int s = 1; s <= CostSoFar.STEPS; s++) {
                for (int f = 0; f < FUTURES; f++) {
                    double before = soFar.by(e, s - 1)[f];
                    assertThat(soFar.by(e, s)[f])
                            .as(where + ", step " + s)
                            .isGreaterThanOrEqualTo(before - RELATIVE * (1 + Math.abs(before)));
                }
            }
        });
    }

    @Test
    void means_sameFutures_areTheRunningMeansOfTheAnswer() {
        everywhere(30, 64, (m, soFar, e, where) -> {
            EntryOutcome outcome = new MachineFutures(m, SEED).runAll(64).outcome(e);
            for (int s = 0; s <= CostSoFar.STEPS; s++) {
                double running =
                        outcome.parts().purchase() + outcome.running().get(s * MachinePlan.GRID / CostSoFar.STEPS);
                assertThat(new Sample(soFar.by(e, s)).mean())
                        .as(where)
                        .isCloseTo(
                                running,
                                within(RELATIVE * (1 + Math.abs(outcome.parts().purchase()) + Math.abs(running))));
            }
            assertThat(new Sample(soFar.afterTrade(e)).mean())
                    .as(where)
                    .isCloseTo(
                            outcome.parts().cost(),
                            within(1e-8 * (1 + Math.abs(outcome.parts().purchase()))));
        });
    }

    @Test
    void of_noFutures_isRefused() {
        assertThatThrownBy(() -> CostSoFar.of(RandomMachines.machine(SEED, 0), SEED, 0))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
