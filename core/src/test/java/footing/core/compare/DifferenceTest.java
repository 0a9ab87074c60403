package footing.core.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import footing.core.answer.Options;
import footing.core.answer.SmallCase;
import footing.core.answer.Watch;
import footing.core.answer.Workers;
import footing.core.chance.Bounds;
import footing.core.chance.Metalog;
import footing.core.chance.Spread;
import footing.core.fleet.Case;
import footing.core.fleet.Input;
import footing.core.fleet.Key;
import footing.core.fleet.Numbers;
import footing.core.fleet.Origin;
import footing.core.fleet.When;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class DifferenceTest {
    static final Options FEW = Options.usual().withFutures(200);
    static final Case BASE = SmallCase.build();

    static Difference between(Case a, Case b) {
        return Difference.between(a, b, FEW, Workers.one(), Watch.NOBODY);
    }

    static Split recommended(Difference d) {
        return Objects.requireNonNull(d.machines().get(0).recommended());
    }

    private static Split asBefore(Difference d) {
        return Objects.requireNonNull(d.machines().get(0).asBefore());
    }

    private static Case with(Case c, Key key, String owner, double value) {
        return SmallCase.with(c, key, owner, value);
    }

    private static Case fix(Case c, int index, Key key, double value) {
        return c.with(new Input(key, SmallCase.CREW, Integer.toString(index)), Spread.of(value));
    }

    private static Case without(Case c, Key key) {
        Case.Crew crew = c.crew(SmallCase.CREW);
        Map<Key, Numbers.Stated> left = new TreeMap<>(crew.numbers().stated());
        left.remove(key);
        Case.Crew less = new Case.Crew(crew.id(), new Numbers(left), crew.fullWeeks(), crew.fixes());
        return new Case(c.heading(), c.season(), c.money(), List.of(less), c.assemblies(), c.packages(), c.machines());
    }

    private static double part(Split split, Key key) {
        return split.parts().stream()
                .filter(p -> p.inputs().stream().anyMatch(i -> i.key() == key))
                .mapToDouble(Part::change)
                .sum();
    }

    static double sum(Split split) {
        return split.parts().stream().mapToDouble(Part::change).reduce(0, Double::sum);
    }

    static Case manyChanges() {
        Case c = with(BASE, Key.WAGE, SmallCase.CREW, 24);
        c = with(c, Key.BILLING, SmallCase.CREW, 131);
        c = with(c, Key.INFLATION, "", 0.04);
        c = with(c, Key.PRICE, "firm-drive", 655);
        c = with(c, Key.GROUND_WEAR, SmallCase.RIDER, 0.8);
        return c.with(Input.of(Key.FLATS_PER_SEASON, SmallCase.RIDER), new Metalog(3, 6, 12, Bounds.POSITIVE));
    }

    @Test
    void between_sameCase_findsNothing() {
        Difference d = between(BASE, SmallCase.build());

        assertThat(d.isNothing()).isTrue();
        assertThat(d.complete()).isTrue();
        assertThat(recommended(d).parts()).isEmpty();
        assertThat(recommended(d).change()).isZero();
        assertThat(Objects.requireNonNull(d.recommended()).change()).isZero();
    }

    @Test
    void between_oneInput_givesItTheWhole() {
        Difference d = between(BASE, with(BASE, Key.BILLING, SmallCase.CREW, 150));

        assertThat(d.inputs()).extracting(c -> c.input().path()).containsExactly("crews.north.billing");
        for (Split split : List.of(recommended(d), asBefore(d))) {
            assertThat(split.change()).isNotZero();
            assertThat(split.parts())
                    .singleElement()
                    .satisfies(p -> assertThat(p.change()).isEqualTo(split.change()));
        }
    }

    @Test
    void between_severalInputs_partsAddUpToTheLastBit() {
        Difference d = between(BASE, manyChanges());

        assertThat(recommended(d).parts()).hasSize(6);
        assertThat(sum(recommended(d))).isEqualTo(recommended(d).change());
        assertThat(sum(asBefore(d))).isEqualTo(asBefore(d).change());
        assertThat(sum(Objects.requireNonNull(d.recommended())))
                .isEqualTo(d.recommended().change());
    }

    @Test
    void between_moreInputsThanAllOrdersTake_partsAddUp() {
        Case b = manyChanges();
        for (Key key : List.of(Key.TAKE_OFF, Key.CHANGE_HOURS, Key.CHECK, Key.TREAT_HOURS)) {
            b = with(b, key, "firm-drive", 0.27);
        }
        Difference d = between(BASE, b);

        assertThat(recommended(d).parts()).hasSize(10);
        assertThat(sum(recommended(d))).isEqualTo(recommended(d).change());
        assertThat(part(recommended(d), Key.TREAT_HOURS)).isZero();
    }

    @Test
    void between_inputThatChangesNothing_getsNothing() {
        Difference d = between(BASE, with(manyChanges(), Key.TREAT_HOURS, "firm-drive", 7));

        assertThat(d.inputs()).extracting(c -> c.input().key()).contains(Key.TREAT_HOURS);
        assertThat(part(recommended(d), Key.TREAT_HOURS)).isZero();
        assertThat(part(asBefore(d), Key.TREAT_HOURS)).isZero();
    }

    /** Wage and burden count only as wage · (1 + burden): both are raised so that they raise it by a fifth. */
    @Test
    void between_interchangeableInputs_getEqualParts() {
        Case b = with(with(BASE, Key.WAGE, SmallCase.CREW, 21 * 1.2), Key.BURDEN, SmallCase.CREW, 1.18 * 1.2 - 1);
        Split split = asBefore(between(BASE, b));

        assertThat(split.change()).isNotCloseTo(0, within(1.0));
        assertThat(part(split, Key.WAGE)).isCloseTo(part(split, Key.BURDEN), within(1e-8));
    }

    @Test
    void between_defaultThatMovesWithAnother_isToldButNoPart() {
        Difference d = between(BASE, with(BASE, Key.WAGE, SmallCase.CREW, 30));

        assertThat(d.inputs())
                .extracting(c -> c.input().path(), Changed::follows)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple("money.shopRate", true),
                        org.assertj.core.groups.Tuple.tuple("crews.north.wage", false));
        assertThat(recommended(d).parts()).hasSize(1);
    }

    @Test
    void between_statedAndLeftToItsDefault_isAnInput() {
        Case a = with(BASE, Key.BURDEN, SmallCase.CREW, 0.6);
        Difference d = between(a, without(a, Key.BURDEN));

        Changed burden = d.inputs().stream()
                .filter(c -> c.input().key() == Key.BURDEN)
                .findFirst()
                .orElseThrow();
        assertThat(Objects.requireNonNull(burden.before()).origin()).isEqualTo(Origin.STATED);
        assertThat(Objects.requireNonNull(burden.after()).origin()).isEqualTo(Origin.DEFAULT);
        assertThat(part(recommended(d), Key.BURDEN)).isEqualTo(recommended(d).change());
    }

    @Test
    void between_sharesOfFixes_goTogether() {
        Difference d = between(BASE, fix(fix(BASE, 0, Key.FIX_SHARE, 0.2), 1, Key.FIX_SHARE, 0.6));

        assertThat(recommended(d).parts())
                .singleElement()
                .satisfies(p -> assertThat(p.inputs()).hasSize(2));
    }

    @Test
    void between_meterPastTheOldTrade_goesWithIt() {
        Case b = with(with(BASE, Key.HOURS_NOW, SmallCase.RIDER, 2400), Key.KEEP_UNTIL, SmallCase.RIDER, 3500);
        Case c = with(with(BASE, Key.HOURS_NOW, SmallCase.RIDER, 500), Key.KEEP_UNTIL, SmallCase.RIDER, 2500);

        assertThat(recommended(between(BASE, b)).parts()).hasSize(1);
        assertThat(recommended(between(BASE, c)).parts()).hasSize(2);
    }

    @Test
    void between_otherPackagesConsidered_isOnePartOfItsOwn() {
        Case.WheelPackage firm = new Case.WheelPackage("firm", "firm-drive", "air-caster");
        Case b = with(SmallCase.considering(BASE, List.of(firm), List.of(When.NOW)), Key.BILLING, SmallCase.CREW, 140);
        Difference d = between(BASE, b);

        assertThat(d.others())
                .extracting(OtherChange::path)
                .containsExactly("machines.rider.consider", "machines.rider.when");
        assertThat(recommended(d).parts()).extracting(Part::kind).containsExactly(Part.Kind.INPUTS, Part.Kind.OTHER);
        assertThat(sum(recommended(d))).isEqualTo(recommended(d).change());
    }

    @Test
    void between_choiceNoLongerConsidered_hasNoSavingToFollow() {
        Case none = SmallCase.considering(BASE, List.of(), List.of());
        MachineDifference m = between(BASE, none).machines().get(0);

        assertThat(Objects.requireNonNull(m.before()).carried()).isFalse();
        assertThat(m.asBefore()).isNull();
        assertThat(Objects.requireNonNull(m.recommended()).after()).isZero();
    }

    @Test
    void between_machineMore_isAPartOfTheFleet() {
        Case two = SmallCase.machines(BASE, all -> {
            Case.Machine m = all.get(0);
            Case.Machine twin = new Case.Machine(
                    "twin", m.kind(), m.crew(), m.isNew(), m.numbers(), m.carries(), m.consider(), m.when(), Map.of());
            return List.of(m, twin);
        });
        Split more = Objects.requireNonNull(
                between(BASE, with(two, Key.WAGE, SmallCase.CREW, 25)).recommended());
        Split less = Objects.requireNonNull(between(two, BASE).recommended());

        assertThat(more.parts()).extracting(Part::kind).containsExactly(Part.Kind.INPUTS, Part.Kind.ADDED);
        assertThat(sum(more)).isEqualTo(more.change());
        assertThat(less.parts()).singleElement().satisfies(p -> {
            assertThat(p.kind()).isEqualTo(Part.Kind.REMOVED);
            assertThat(p.machine()).isEqualTo("twin");
            assertThat(p.change()).isEqualTo(less.change());
        });
    }

    @Test
    void between_backwards_isTheSameWithTheOtherSign() {
        Split there = recommended(between(BASE, manyChanges()));
        Split back = recommended(between(manyChanges(), BASE));

        for (Key key : List.of(Key.WAGE, Key.BILLING, Key.PRICE, Key.FLATS_PER_SEASON)) {
            assertThat(part(there, key)).isCloseTo(-part(back, key), within(1e-8));
        }
    }

    @Test
    void between_twoCurrencies_isRefused() {
        Case.Heading h = BASE.heading();
        Case.Heading other = new Case.Heading(h.title(), null, h.prepared(), h.asOf(), "CAD", false);
        Case b = new Case(
                other, BASE.season(), BASE.money(), BASE.crews(), BASE.assemblies(), BASE.packages(), BASE.machines());

        assertThatThrownBy(() -> between(BASE, b)).hasMessage("USD and CAD can't be compared");
    }
}
