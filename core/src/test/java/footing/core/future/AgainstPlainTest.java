package footing.core.future;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import footing.core.chance.Bounds;
import footing.core.chance.Metalog;
import footing.core.chance.Spread;
import footing.core.fleet.ResolvedCrew;
import footing.core.fleet.ResolvedMachine;
import footing.core.fleet.When;
import footing.core.plain.MachineDraft;
import footing.core.plain.PlainFuture;
import footing.core.plain.PlainModel;
import footing.core.plain.PlainPart;
import footing.core.plain.PlainSummary;
import footing.core.plain.RandomMachines;
import java.util.SortedSet;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;

/** The fast simulation against the plain one: future by future, and what is summed over futures. */
class AgainstPlainTest {
    private static final int CASES = 300;
    private static final int FUTURES = 12;
    private static final long SEED = 20270301;
    private static final double RELATIVE = 1e-9;

    @Test
    void future_randomMachines_agreesWithThePlainModelFutureByFuture() {
        SoftAssertions softly = new SoftAssertions();
        for (int number = 0; number < CASES; number++) {
            ResolvedMachine m = RandomMachines.machine(SEED, number);
            agree(m, number, softly);
        }
        softly.assertAll();
    }

    private static void agree(ResolvedMachine m, int number, SoftAssertions softly) {
        MachinePlan plan = new MachinePlan(m, SEED, false);
        Simulation simulation = new Simulation(plan, new SharedDraws(), 1);
        double[][] costs = new double[m.entries().size()][FUTURES];
        for (int f = 0; f < FUTURES; f++) {
            Outcomes outcomes = new Outcomes(plan, simulation.run(f, f + 1, costs));
            for (int e = 0; e < m.entries().size(); e++) {
                String where = "case " + number + ", future " + f + ", entry "
                        + m.entries().get(e).id() + " " + m.entries().get(e).when();
                PlainFuture plain = PlainModel.future(m, m.entries().get(e), SEED, f);
                agree(where, outcomes.entry(e), plain, softly);
                close(softly, where + " cost", costs[e][f], plain.cost(), scale(plain));
            }
        }
    }

    /** So many hits that the product of their gaps leaves the range of doubles several times over. */
    @Test
    void future_thousandsOfFlats_agreesWithThePlainModel() {
        MachineDraft draft = new MachineDraft();
        draft.flatsPerSeason = Spread.of(900);
        draft.hoursLeft = 2500;
        draft.fixes.add(new ResolvedCrew.ResolvedFix("plug", 0.7, Spread.of(0.5), 4, false, true, 0));
        draft.fixes.add(new ResolvedCrew.ResolvedFix("ruined", 0.3, Spread.of(2), 9, true, false, 0));
        draft.assembly("air").life = new Metalog(300, 500, 900, Bounds.POSITIVE);
        draft.entry("plain", When.NOW, "air", "caster");
        SoftAssertions softly = new SoftAssertions();
        agree(draft.build(), 0, softly);
        softly.assertAll();
    }

    private static double scale(PlainFuture plain) {
        double scale = 1;
        for (PlainPart part : PlainPart.values()) {
            scale += Math.abs(plain.part(part));
        }
        return scale;
    }

    private static void agree(String where, EntryOutcome fast, PlainFuture plain, SoftAssertions softly) {
        double scale = scale(plain);
        Parts parts = fast.parts();
        close(softly, where + " start cost", fast.startCost(), plain.startCost(), scale);
        close(softly, where + " purchase", parts.purchase(), plain.part(PlainPart.PURCHASE), scale);
        close(softly, where + " renewals", parts.renewals(), plain.part(PlainPart.RENEWALS), scale);
        close(softly, where + " repairs", parts.repairs(), plain.part(PlainPart.REPAIRS), scale);
        close(softly, where + " crew time", parts.crewTime(), plain.part(PlainPart.CREW_TIME), scale);
        close(softly, where + " lost work", parts.lostWork(), plain.part(PlainPart.LOST_WORK), scale);
        close(softly, where + " upkeep", parts.upkeep(), plain.part(PlainPart.UPKEEP), scale);
        close(softly, where + " trade-in", parts.tradeIn(), plain.part(PlainPart.TRADE_IN), scale);
        Counts counts = fast.counts();
        close(softly, where + " flats", counts.flats(), plain.flats().size(), 1);
        close(softly, where + " sets", counts.sets(), plain.sets(), 1);
        close(softly, where + " down", counts.downHours(), plain.downHours(), 1);
        close(softly, where + " displaced", counts.displacedHours(), plain.displacedHours(), 1);
        close(softly, where + " lost", counts.lostHours(), plain.lostHours(), 1);
        close(softly, where + " never fitted", fast.neverFitted(), plain.wantedFitted() ? 0 : 1, 1);
    }

    private static void close(SoftAssertions softly, String what, double fast, double plain, double scale) {
        softly.assertThat(fast).as(what).isCloseTo(plain, within(RELATIVE * scale));
    }

    @Test
    void outcome_randomMachines_sumsLikeThePlainModel() {
        for (int number = 0; number < CASES; number += 3) {
            ResolvedMachine m = RandomMachines.machine(SEED, number);
            MachineFutures futures = new MachineFutures(m, SEED).runAll(FUTURES);
            for (int e = 0; e < m.entries().size(); e++) {
                PlainSummary plain = new PlainSummary(m, m.entries().get(e), SEED, FUTURES);
                String where = "case " + number + ", entry " + m.entries().get(e);
                sumsAgree(where, futures, e, plain);
            }
        }
    }

    private static void sumsAgree(String where, MachineFutures futures, int e, PlainSummary plain) {
        EntryOutcome fast = futures.outcome(e);
        double scale = 1 + Math.abs(fast.parts().purchase()) + plain.mean(AgainstPlainTest::scale);
        SortedSet<Integer> years = plain.years();
        years.addAll(fast.yearly().keySet());
        for (int year : years) {
            Parts own = fast.yearly().getOrDefault(year, Parts.NONE);
            for (PlainPart part : PlainPart.values()) {
                assertThat(part(own, part))
                        .as(where + " " + year + " " + part)
                        .isCloseTo(plain.yearly(year, part), within(RELATIVE * scale * 10));
            }
        }
        plain.monthly().ifPresent(monthly -> {
            double avoided = (futures.outcome(0).runningNominal() - fast.runningNominal()) / futures.monthsCompared();
            assertThat(avoided).as(where + " avoided").isCloseTo(monthly.avoided(), within(1e-8 * scale));
            assertThat(futures.monthlyPayment(fast.startCost()))
                    .as(where + " payment")
                    .isCloseTo(monthly.payment(), within(RELATIVE * scale));
        });
    }

    private static double part(Parts parts, PlainPart part) {
        return switch (part) {
            case PURCHASE -> parts.purchase();
            case RENEWALS -> parts.renewals();
            case REPAIRS -> parts.repairs();
            case CREW_TIME -> parts.crewTime();
            case LOST_WORK -> parts.lostWork();
            case UPKEEP -> parts.upkeep();
            case TRADE_IN -> parts.tradeIn();
        };
    }
}
