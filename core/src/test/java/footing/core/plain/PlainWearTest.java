package footing.core.plain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import footing.core.chance.Spread;
import footing.core.fleet.Kind;
import footing.core.fleet.ResolvedMachine.Entry;
import footing.core.fleet.When;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Renewals, start and trade of one machine by hand: 1,000 h left, 500 h a year, no flats, no interest. */
class PlainWearTest {
    private final MachineDraft draft = new MachineDraft();
    private final MachineDraft.AssemblyDraft air = draft.assembly("air");
    private final MachineDraft.AssemblyDraft dear = draft.assembly("dear");

    @BeforeEach
    void airAndDear() {
        air.life = Spread.of(400);
        air.price = 100;
        air.renewalPrice = 90;
        air.scrapFee = 5;
        air.changeHours = 1;
        dear.kind = Kind.AIRLESS;
        dear.life = Spread.of(2000);
        dear.price = 300;
        dear.renewalPrice = 300;
        dear.changeHours = 1.5;
        draft.relevel = 0.5;
        draft.entry("on-air", When.NOW, "air", "caster");
    }

    private PlainFuture future(Entry entry) {
        return PlainModel.future(draft.build(), entry, 1, 0);
    }

    private PlainFuture carried() {
        return future(draft.entries.get(0));
    }

    private PlainFuture dear(When when) {
        return future(draft.entry("dear", when, "dear", "caster"));
    }

    private static void check(PlainFuture future, PlainPart part, double expected) {
        assertThat(future.part(part)).as(part.name()).isCloseTo(expected, within(1e-9));
    }

    @Test
    void renewals_fixedLife_fallAtEachEnd() {
        // at 400 and 800: 2·90 tires + 2·5 scrap + (1 + 0.5) h · 40 = 250 each
        PlainFuture f = carried();
        check(f, PlainPart.RENEWALS, 500);
        assertThat(f.sets()).isEqualTo(2);
        assertThat(f.cost()).isCloseTo(500, within(1e-9));
        assertThat(f.flows().stream().filter(x -> x.part() == PlainPart.RENEWALS))
                .extracting(PlainFuture.Flow::hour)
                .containsExactly(400.0, 800.0);
    }

    @Test
    void renewals_tradeClose_runBald() {
        draft.runOut = 200;
        check(carried(), PlainPart.RENEWALS, 500);
        draft.runOut = 201; // at 800 the rest is 200 h; at the trade the set counts as worn out
        air.tradeDeduction = 0.5;
        check(carried(), PlainPart.RENEWALS, 250);
        check(carried(), PlainPart.TRADE_IN, -2 * 0.5 * 90);
    }

    @Test
    void renewals_wornBeyondLife_startAtOnce() {
        draft.wornDrive = 450; // at 0, 400, 800
        check(carried(), PlainPart.RENEWALS, 750);
        assertThat(carried().flows().stream().filter(x -> x.part() == PlainPart.RENEWALS))
                .extracting(PlainFuture.Flow::hour)
                .containsExactly(0.0, 400.0, 800.0);
        draft.wornDrive = 400;
        check(carried(), PlainPart.RENEWALS, 750);
    }

    @Test
    void tradeIn_usedSet_creditAndDeduction() {
        // worn 150: renewed at 250 and 650, 350 of 400 h at the trade, a = 0.875
        // credit 2·0.4·100·0.125 = 10; deduction 2·0.5·90·(0.375/0.5) = 67.5
        draft.wornDrive = 150;
        air.tradeCredit = 0.4;
        air.tradeDeduction = 0.5;
        check(carried(), PlainPart.RENEWALS, 500);
        check(carried(), PlainPart.TRADE_IN, 10 - 67.5);
    }

    @Test
    void renewals_pavement_shortensLife() {
        draft.groundWear = 0.6; // 240 h: at 240, 480, 720, 960
        assertThat(carried().sets()).isEqualTo(4);
    }

    @Test
    void purchase_owned_goodsShopAndTakeOff() {
        // 2·300 + (1.5 + 0.5)·40 − 2·50 %·100·(1 − 100/400) = 600 + 80 − 75
        draft.wornDrive = 100;
        air.takeOff = 0.5;
        PlainFuture f = dear(When.NOW);
        check(f, PlainPart.PURCHASE, 605);
        check(f, PlainPart.RENEWALS, 0);
        assertThat(f.wantedFitted()).isTrue();
        dear.tradeCredit = 0.1; // 1,000 of 2,000 h: the new set's hours began at 0
        check(dear(When.NOW), PlainPart.TRADE_IN, 30);
        dear.carryOn = 0.1; // then the take-offs are kept
        check(dear(When.NOW), PlainPart.PURCHASE, 680);
    }

    @Test
    void purchase_cheapSetForDear_isNegative() {
        // 2·300 + 80 − 2·100 %·500·(1 − 0) = −320
        air.price = 500;
        air.takeOff = 1;
        check(dear(When.NOW), PlainPart.PURCHASE, -320);
    }

    @Test
    void purchase_treated_keepsTheHours() {
        // 2·15 + 0.5·40 = 50, no relevel; the set has 150 h behind it, ends at 600 − 150 = 450
        draft.wornDrive = 150;
        dear.treats = "air";
        dear.treatPrice = 15;
        dear.treatHours = 0.5;
        dear.life = Spread.of(600);
        PlainFuture f = dear(When.NOW);
        check(f, PlainPart.PURCHASE, 50);
        assertThat(f.flows().stream()
                        .filter(x -> x.part() == PlainPart.RENEWALS)
                        .findFirst()
                        .orElseThrow()
                        .hour())
                .isEqualTo(450);
    }

    @Test
    void purchase_newMachine_upchargeOrGoodsAlone() {
        draft.isNew = true;
        air.takeOff = 0.5;
        Entry entry = draft.entry("dear", When.NOW, "dear", "caster");
        check(future(entry), PlainPart.PURCHASE, 2 * 300 - 2 * 0.5 * 100); // no shop time
        Entry priced = new Entry("dear", When.NOW, "dear", "caster", OptionalDouble.of(420));
        check(future(priced), PlainPart.PURCHASE, 420);
    }

    @Test
    void renewals_whenWorn_wantedAtItsPrice() {
        // air ends at 400: 2·300 + 2·5 + (1.5 + 0.5)·40 = 690, then 600 of 2,000 h
        PlainFuture f = dear(When.WORN);
        check(f, PlainPart.PURCHASE, 0);
        check(f, PlainPart.RENEWALS, 690);
        assertThat(f.wantedFitted()).isTrue();
    }

    @Test
    void renewals_shortRest_carriedAgainIfMuchCheaper() {
        // 600 h left < 40 % of 2,000 h; 2·90 = 180 < 70 % of 2·300: air at 400 and again at 800
        draft.noNewSetWithin = 0.4;
        PlainFuture f = dear(When.WORN);
        check(f, PlainPart.RENEWALS, 500);
        assertThat(f.wantedFitted()).isFalse();
        dear.price = 128; // 180 is not below 0.7·256 = 179.2: 256 + 10 + 80
        check(dear(When.WORN), PlainPart.RENEWALS, 346);
        dear.price = 130; // 180 < 0.7·260 = 182
        check(dear(When.WORN), PlainPart.RENEWALS, 500);
        draft.noNewSetWithin = 0.3; // 600 h is not below 600 h
        dear.price = 300;
        check(dear(When.WORN), PlainPart.RENEWALS, 690);
    }

    @Test
    void wantedFitted_carriedUnderAnotherId_nothingToFit() {
        assertThat(future(draft.entry("same", When.WORN, "air", "caster")).wantedFitted())
                .isTrue();
    }

    @Test
    void renewals_shortRestOfTheWanted_carriedAtFullPrice() {
        // dear at once lasts 900 h; 100 h left < 40 % of 900 h; carried now costs 2·100 < 0.7·2·300
        // 200 + 2·0 scrap + (1 + 0.5)·40 = 260
        dear.life = Spread.of(900);
        draft.noNewSetWithin = 0.4;
        check(dear(When.NOW), PlainPart.RENEWALS, 260);
    }

    @Test
    void tradeIn_carriedOn_isTheLarger() {
        // a = 1,000/2,000; kept 2·0.8·300·0.5 − 1.5·40 = 180; sold 2·0.1·300·0.5 = 30
        dear.carryOn = 0.8;
        dear.tradeCredit = 0.1;
        check(dear(When.NOW), PlainPart.TRADE_IN, 180);
        dear.tradeCredit = 0.7; // sold 210
        check(dear(When.NOW), PlainPart.TRADE_IN, 210);
    }

    @Test
    void upkeep_eachAssembly_itsOwnHours() {
        // air 400 h, then dear 600 h: (0.1·400 + 0.02·600)/50 · 25 = 26
        air.check = 0.1;
        dear.check = 0.02;
        check(dear(When.WORN), PlainPart.UPKEEP, 26);
    }

    @Test
    void future_inflationAndDiscount_atTheInstantOfTheHour() {
        // 400 h of 500 h in 365 days: day 292, t = 0.8; 800 h: 365 + 300/500·366 = day 584.6
        draft.inflation = 0.03;
        draft.discountRate = 0.10;
        double expected = 250 * Math.pow(1.03 / 1.1, 292 / 365.0) + 250 * Math.pow(1.03 / 1.1, 584.6 / 365);
        check(carried(), PlainPart.RENEWALS, expected);
        air.tradeCredit = 0.4; // 200 of 400 h at day 731: 2·0.4·100·0.5 = 40
        check(carried(), PlainPart.TRADE_IN, 40 * Math.pow(1.03 / 1.1, 731 / 365.0));
    }
}
