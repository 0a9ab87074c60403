package footing.core.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import footing.core.answer.SmallCase;
import footing.core.chance.Spread;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What a stated case becomes: defaults filled in, entries listed, everything one machine's question needs. */
class ResolverTest {
    private static final Case CASE = SmallCase.build();

    private static ResolvedMachine resolved(Case c) {
        return Resolver.resolve(c, c.machine(SmallCase.RIDER));
    }

    private static ResolvedAssembly assembly(String id) {
        ResolvedAssembly found = resolved(CASE).assemblies().get(id);
        if (found == null) {
            throw new AssertionError("no assembly " + id);
        }
        return found;
    }

    private static Case.Machine machine(Numbers numbers, boolean fresh, List<When> when, Map<String, Double> upcharge) {
        Case.Machine m = CASE.machine(SmallCase.RIDER);
        return new Case.Machine(m.id(), m.kind(), m.crew(), fresh, numbers, m.carries(), m.consider(), when, upcharge);
    }

    private static ResolvedMachine with(Case.Machine m) {
        return Resolver.resolve(SmallCase.machines(CASE, all -> List.of(m)), m);
    }

    @Test
    void resolve_moneyNotStated_takesTheDefaults() {
        Terms terms = resolved(CASE).terms();
        assertThat(terms.discountRate()).isEqualTo(0.08);
        assertThat(terms.inflation()).isEqualTo(0.025);
        assertThat(terms.shopRate()).isCloseTo(21 * 1.18, within(1e-12));
        assertThat(terms.loanApplies()).isFalse();
        assertThat(terms.taxRate()).isZero();
    }

    @Test
    void resolve_crewNotStated_takesTheDefaults() {
        ResolvedCrew crew = resolved(CASE).crew();
        assertThat(crew.hourlyCost()).isCloseTo(21 * 1.18, within(1e-12));
        assertThat(crew.overtimePremium()).isEqualTo(0.5);
        assertThat(crew.variableCost()).isEqualTo(0.15);
        assertThat(crew.day()).isEqualTo(9);
        assertThat(crew.makeUpToday()).isEqualTo(0.5);
        assertThat(crew.fixes()).extracting(ResolvedCrew.ResolvedFix::sealable).containsExactly(true, true, false);
        assertThat(crew.fixes()).extracting(ResolvedCrew.ResolvedFix::output).containsOnly(0.0);
    }

    @Test
    void resolve_fullWeeksWithoutNumbers_areAsOtherWeeks() {
        Case.Crew crew = CASE.crew(SmallCase.CREW);
        Case.FullWeek bare = new Case.FullWeek(crew.fullWeeks().get(0).days(), Numbers.NONE);
        Case.Crew changed = new Case.Crew(crew.id(), crew.numbers(), List.of(bare), crew.fixes());
        Case c = new Case(
                CASE.heading(),
                CASE.season(),
                CASE.money(),
                List.of(changed),
                CASE.assemblies(),
                CASE.packages(),
                CASE.machines());
        ResolvedCrew.FullWeeks weeks = resolved(c).crew().fullWeeks().get(0);
        assertThat(weeks.makeUpToday()).isEqualTo(0.5);
        assertThat(weeks.makeUpLater()).isEqualTo(resolved(c).crew().makeUpLater());
    }

    @Test
    void resolve_assembliesNotStated_takeTheDefaultsOfTheirKind() {
        ResolvedAssembly air = assembly("air-drive");
        assertThat(air.renewalPrice()).isEqualTo(air.tirePrice()).isEqualTo(165);
        assertThat(air.flatFactor()).isEqualTo(Spread.of(1));
        assertThat(air.ruinFactor()).isEqualTo(Spread.of(1));
        assertThat(air.check()).isEqualTo(5 / 60.0);
        ResolvedAssembly sealed = assembly("sealed-drive");
        assertThat(sealed.flatFactor()).isEqualTo(Spread.of(0.3));
        assertThat(sealed.renewalPrice()).isEqualTo(185);
        assertThat(sealed.treatHours()).isEqualTo(0.5);
        ResolvedAssembly firm = assembly("firm-drive");
        assertThat(firm.renewalPrice())
                .isEqualTo(firm.price())
                .isEqualTo(firm.tirePrice())
                .isEqualTo(720);
        assertThat(firm.flatFactor()).isEqualTo(Spread.of(0));
        assertThat(firm.ruinFactor()).isEqualTo(Spread.of(0.15));
        assertThat(firm.check()).isEqualTo(1 / 60.0);
        assertThat(List.of(air, sealed, firm)).allSatisfy(a -> {
            assertThat(a.changeHours()).isEqualTo(1);
            assertThat(a.checkEvery()).isEqualTo(50);
            assertThat(a.scrapFee()).isIn(0.0, 6.0);
        });
    }

    @Test
    void resolve_machineNotStated_takesTheDefaults() {
        ResolvedMachine m = resolved(CASE);
        assertThat(m.hoursLeft()).isEqualTo(2000);
        assertThat(m.flatsAt()).containsExactly(0.6, 0.4);
        assertThat(m.wornTireEffect()).isEqualTo(1);
        assertThat(m.groundWear()).isEqualTo(1);
        assertThat(m.counts()).containsExactly(2, 2);
        assertThat(m.noNewSetWithin()).isEqualTo(0.4);
        assertThat(m.runOut()).isEqualTo(100);
        assertThat(m.relevel()).isCloseTo(1 / 3.0, within(1e-15));
        assertThat(m.worn()).containsExactly(210.0, 300.0);
    }

    @Test
    void resolve_flatsPerThousandHours_becomeFlatsASeason() {
        Numbers other = SmallCase.build().machine(SmallCase.RIDER).numbers();
        Map<Key, Numbers.Stated> stated = new java.util.TreeMap<>(other.stated());
        stated.remove(Key.FLATS_PER_SEASON);
        Numbers numbers = new Numbers(stated).with(Key.FLATS_PER_1000H, Spread.of(8));
        assertThat(with(machine(numbers, false, List.of(), Map.of())).flatsPerSeason())
                .isEqualTo(Spread.of(8 * 0.45));
    }

    @Test
    void resolve_machineOwned_comparesEveryPackageNowAndWorn() {
        assertThat(resolved(CASE).entries())
                .extracting(e -> e.id() + " " + e.when())
                .containsExactly(
                        "plain NOW",
                        "sealed NOW",
                        "sealed WORN",
                        "firm NOW",
                        "firm WORN",
                        "firm-all NOW",
                        "firm-all WORN",
                        "twin NOW",
                        "twin WORN");
    }

    @Test
    void resolve_machineNew_comparesNowWithItsUpcharge() {
        ResolvedMachine m =
                with(machine(CASE.machine(SmallCase.RIDER).numbers(), true, List.of(), Map.of("firm", 905.0)));
        assertThat(m.entries()).extracting(ResolvedMachine.Entry::when).containsOnly(When.NOW);
        assertThat(m.entries().get(2).upcharge()).hasValue(905);
        assertThat(m.entries().get(1).upcharge()).isEmpty();
    }

    @Test
    void resolve_loanForNewMachines_appliesToThemOnly() {
        Case.Loan loan =
                new Case.Loan(Numbers.of(Map.of(Key.LOAN_RATE, Spread.of(0.05), Key.LOAN_MONTHS, Spread.of(24))), true);
        for (boolean fresh : new boolean[] {true, false}) {
            Case c = new Case(
                    CASE.heading(),
                    CASE.season(),
                    new Case.Money(Numbers.NONE, loan, null),
                    CASE.crews(),
                    CASE.assemblies(),
                    CASE.packages(),
                    List.of(machine(CASE.machine(SmallCase.RIDER).numbers(), fresh, List.of(), Map.of())));
            assertThat(resolved(c).terms().loanApplies()).isEqualTo(fresh);
            assertThat(resolved(c).terms().loan()).hasValue(new Terms.Loan(0.05, 24, 0));
        }
    }

    @Test
    void resolve_noHoursLeft_isRefused() {
        Case spent = SmallCase.with(CASE, Key.KEEP_UNTIL, SmallCase.RIDER, 300);
        assertThatIllegalArgumentException().isThrownBy(() -> resolved(spent)).withMessageContaining("no hours left");
    }

    @Test
    void crew_unknownId_isRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CASE.crew("south"))
                .withMessageContaining("south");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CASE.assembly("gold"))
                .withMessageContaining("gold");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CASE.machine("x9"))
                .withMessageContaining("x9");
    }
}
