package footing.core.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import footing.core.fleet.Case;
import footing.core.fleet.Dimension;
import footing.core.fleet.InForce;
import footing.core.fleet.Input;
import footing.core.fleet.Key;
import footing.core.fleet.Origin;
import footing.core.fleet.Values;
import footing.core.future.Parts;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold of any case's money whatever the figures are. */
class MoneyLawsTest {
    private static final Options QUICK = Options.usual().withFutures(2500).quickly();

    static Stream<Case> cases() {
        return Stream.of(SmallCase.build(), SmallCase.buying());
    }

    private static MachineAnswer answer(Case c) {
        return Assessment.answer(c, QUICK, Workers.one(), Watch.NOBODY).machine(SmallCase.RIDER);
    }

    @ParameterizedTest
    @MethodSource("cases")
    void answer_noFlats_costsNoRepairsCrewTimeOrLostWork(Case c) {
        MachineAnswer usual = answer(c);
        MachineAnswer none = answer(SmallCase.with(c, Key.FLATS_PER_SEASON, SmallCase.RIDER, 0));
        assertThat(usual.carried().parts().repairs()).isPositive();
        assertThat(usual.carried().parts().crewTime()).isPositive();
        assertThat(usual.carried().parts().lostWork()).isPositive();
        for (EntryAnswer e : none.entries()) {
            assertThat(e.parts().repairs()).isZero();
            assertThat(e.parts().crewTime()).isZero();
            assertThat(e.parts().lostWork()).isZero();
            assertThat(e.counts().flats()).isZero();
            assertThat(e.counts().downHours()).isZero();
        }
        assertThat(none.costPerFlat()).isNull();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void answer_everyPriceTwice_doublesEveryFigureOfMoney(Case c) {
        MachineAnswer once = answer(c);
        MachineAnswer twice = answer(everyPriceTwice(c));
        assertThat(twice.recommended()).isEqualTo(once.recommended());
        assertThat(twice.verdict()).isEqualTo(once.verdict());
        for (int i = 0; i < once.entries().size(); i++) {
            EntryAnswer a = once.entries().get(i);
            EntryAnswer b = twice.entries().get(i);
            assertThat(b.cost()).isEqualTo(doubled(a.cost()));
            assertThat(b.saving().mean()).isEqualTo(2 * a.saving().mean());
            assertThat(b.saving().chance()).isEqualTo(a.saving().chance());
            assertThat(b.parts()).isEqualTo(doubled(a.parts()));
            assertThat(b.counts()).isEqualTo(a.counts());
            assertThat(b.paybackHours()).isEqualTo(a.paybackHours());
            assertThat(b.startCost()).isEqualTo(2 * a.startCost());
            a.yearly().forEach((year, parts) -> assertThat(b.yearly().get(year)).isEqualTo(doubled(parts)));
        }
    }

    private static Case everyPriceTwice(Case c) {
        Case changed = c;
        for (InForce i : new Values(c, c.machine(SmallCase.RIDER)).all()) {
            boolean price = i.input().key().dimension() == Dimension.MONEY;
            if (price && i.origin() != Origin.DEFAULT) {
                changed = changed.with(i.input(), i.value().times(2));
            }
        }
        return changed;
    }

    private static Estimate doubled(Estimate e) {
        return new Estimate(2 * e.mean(), 2 * e.standardError(), 2 * e.p10(), 2 * e.p50(), 2 * e.p90());
    }

    private static Parts doubled(Parts p) {
        return new Parts(
                2 * p.purchase(),
                2 * p.renewals(),
                2 * p.repairs(),
                2 * p.crewTime(),
                2 * p.lostWork(),
                2 * p.upkeep(),
                2 * p.tradeIn());
    }

    @Test
    void answer_moreFlats_neverFavorsTheTireThatGetsMore() {
        double before = Double.NEGATIVE_INFINITY;
        for (double flats : new double[] {0, 1, 2, 4, 8, 16}) {
            Case c = SmallCase.with(SmallCase.build(), Key.FLATS_PER_SEASON, SmallCase.RIDER, flats);
            MachineAnswer answer = answer(SmallCase.with(c, Key.RUIN_FACTOR, "firm-drive", 0));
            double saving = entry(answer, "firm").saving().mean();
            assertThat(saving).as("at %s flats", flats).isGreaterThan(before);
            before = saving;
        }
    }

    static EntryAnswer entry(MachineAnswer answer, String id) {
        return answer.entries().stream()
                .filter(e -> e.entry().id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void answer_nothingBilled_losesNoWork(Case c) {
        for (EntryAnswer e :
                answer(SmallCase.with(c, Key.BILLING, SmallCase.CREW, 0)).entries()) {
            assertThat(e.parts().lostWork()).isZero();
            assertThat(e.counts().lostHours()).isPositive();
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void answer_whatIsCarried_savesExactlyNothing(Case c) {
        MachineAnswer answer = answer(c);
        for (EntryAnswer e : List.of(answer.carried(), entry(answer, "twin"))) {
            assertThat(e.saving()).isEqualTo(new Saving(0, 0, 0, 0, 0, 0));
            assertThat(e.startCost()).isZero();
            assertThat(e.monthly()).isNull();
            assertThat(e.levels()).allSatisfy(l -> {
                assertThat(l.mean()).isZero();
                assertThat(l.chance()).isZero();
            });
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void answer_parts_addUpToTheCost(Case c) {
        for (EntryAnswer e : answer(c).entries()) {
            Parts p = e.parts();
            double sum =
                    p.purchase() + p.renewals() + p.repairs() + p.crewTime() + p.lostWork() + p.upkeep() - p.tradeIn();
            assertThat(e.cost().mean()).isCloseTo(sum, within(1e-9 * e.cost().mean()));
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void answer_levels_endWithTheSaving(Case c) {
        MachineAnswer answer = answer(c);
        Parts carried = answer.carried().parts();
        for (EntryAnswer e : answer.entries()) {
            Parts p = e.parts();
            double goods = carried.goods() - p.goods();
            double time = carried.crewTime() + carried.upkeep() - p.crewTime() - p.upkeep();
            assertThat(e.levels().get(0).mean()).isCloseTo(goods, within(1e-9));
            assertThat(e.levels().get(1).mean()).isCloseTo(goods + time, within(1e-9));
            assertThat(e.levels().get(2).mean()).isEqualTo(e.saving().mean());
            assertThat(e.levels().get(2).chance()).isEqualTo(e.saving().chance());
        }
    }

    @Test
    void answer_noRates_addsTheYearsUpToTheParts() {
        Case c = SmallCase.with(SmallCase.build(), Key.DISCOUNT_RATE, "", 0);
        for (EntryAnswer e : answer(SmallCase.with(c, Key.INFLATION, "", 0)).entries()) {
            Parts sum = e.yearly().values().stream().reduce(Parts.NONE, MoneyLawsTest::plus);
            assertClose(sum, e.parts());
        }
    }

    private static Parts plus(Parts a, Parts b) {
        return new Parts(
                a.purchase() + b.purchase(),
                a.renewals() + b.renewals(),
                a.repairs() + b.repairs(),
                a.crewTime() + b.crewTime(),
                a.lostWork() + b.lostWork(),
                a.upkeep() + b.upkeep(),
                a.tradeIn() + b.tradeIn());
    }

    private static void assertClose(Parts a, Parts b) {
        assertThat(a.purchase()).isCloseTo(b.purchase(), within(1e-8));
        assertThat(a.renewals()).isCloseTo(b.renewals(), within(1e-8));
        assertThat(a.repairs()).isCloseTo(b.repairs(), within(1e-8));
        assertThat(a.crewTime()).isCloseTo(b.crewTime(), within(1e-8));
        assertThat(a.lostWork()).isCloseTo(b.lostWork(), within(1e-8));
        assertThat(a.upkeep()).isCloseTo(b.upkeep(), within(1e-8));
        assertThat(a.tradeIn()).isCloseTo(b.tradeIn(), within(1e-8));
    }

    /** Lives, delays and shares fixed, no flats: nothing is left to chance. */
    @ParameterizedTest
    @MethodSource("cases")
    void answer_nothingUncertain_makesEveryFutureTheSame(Case c) {
        Case fixed = SmallCase.with(c, Key.FLATS_PER_SEASON, SmallCase.RIDER, 0);
        fixed = SmallCase.with(fixed, Key.LIFE_UNSURE, "firm-drive", 0);
        for (Case.Assembly a : c.assemblies()) {
            double likely = a.numbers().get(Key.LIFE).orElseThrow().likely();
            fixed = fixed.with(Input.of(Key.LIFE, a.id()), footing.core.chance.Spread.of(likely));
        }
        for (EntryAnswer e : answer(fixed).entries()) {
            assertThat(e.cost().p10())
                    .isEqualTo(e.cost().p50())
                    .isEqualTo(e.cost().p90());
            assertThat(e.cost().mean())
                    .isCloseTo(e.cost().p50(), within(1e-9 * e.cost().p50()));
            assertThat(e.saving().chance()).isIn(0.0, 1.0);
        }
    }
}
