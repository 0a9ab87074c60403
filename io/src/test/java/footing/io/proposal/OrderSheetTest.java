package footing.io.proposal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import footing.core.answer.Answer;
import footing.core.fleet.Position;
import footing.core.fleet.ResolvedMachine;
import footing.io.words.Advice;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class OrderSheetTest {
    private static Answer answer;
    private static OrderSheet order;

    @BeforeAll
    static void answerTheExample() {
        answer = Printed.answer(Printed.example("quillbrook.yaml"), 600, true);
        order = new OrderSheet(answer);
    }

    private static double total(Table table) {
        return Objects.requireNonNull(
                table.rows().get(table.rows().size() - 1).get(4).number());
    }

    private static double start(List<Advice> some) {
        return some.stream().mapToDouble(a -> a.machine().choice().startCost()).sum();
    }

    @Test
    void now_total_isTheStartCostOfTheClearAdvice() {
        List<Advice> clear =
                Advice.all(answer).stream().filter(a -> a.verb().changes()).toList();
        assertThat(total(order.now())).isCloseTo(start(clear), within(1e-9));
    }

    @Test
    void ifTaken_linesAddUp_toTheStartCostOfTheTossUps() {
        List<Advice> leaning = Advice.all(answer).stream()
                .filter(a -> !a.verb().changes() && a.leansToChange())
                .toList();
        Table table = order.ifTaken();
        double lines = table.rows().subList(0, table.rows().size() - 1).stream()
                .mapToDouble(r -> Objects.requireNonNull(r.get(4).number()))
                .sum();
        assertThat(total(table)).isCloseTo(start(leaning), within(1e-9));
        assertThat(lines).isCloseTo(total(table), within(0.01));
    }

    @Test
    void nextSets_carriedSet_isDueAtTheMiddleOfItsLife() {
        ResolvedMachine s2 = answer.machine("S2").machine();
        Optional<NextSet> drives = NextSet.of(s2, answer.machine("S2").carried(), Position.DRIVE);
        assertThat(drives.orElseThrow().after()).isCloseTo(640 - 410, within(1e-9));
        assertThat(drives.orElseThrow().price()).isEqualTo(104);
        assertThat(drives.orElseThrow().changes()).isFalse();
    }

    @Test
    void nextSets_setDueShortlyBeforeTheTrade_isRunOut() {
        ResolvedMachine s3 = answer.machine("S3").machine();
        assertThat(NextSet.of(s3, answer.machine("S3").carried(), Position.DRIVE))
                .hasValueSatisfying(n -> assertThat(n.after()).isCloseTo(640 - 260, within(1e-9)));
        ResolvedMachine e3 = answer.machine("E3").machine();
        assertThat(NextSet.of(e3, answer.machine("E3").carried(), Position.CASTER))
                .isEmpty();
    }

    @Test
    void nextSets_rows_comeByDate() {
        List<String> dates =
                order.nextSets().rows().stream().map(r -> r.get(0).shown()).toList();
        assertThat(dates).hasSizeGreaterThan(8).isSorted();
    }

    @Test
    void prices_ofTheCatalog_sayThatTheyAreTypicalAndOfWhen() {
        Answer typical = Printed.answer(Printed.example("from-the-catalog.yaml"), 200, true);
        Table sets = new OrderSheet(typical).nextSets();
        assertThat(sets.rows())
                .isNotEmpty()
                .allSatisfy(r -> assertThat(r.get(7).shown())
                        .matches("typical, not a quote, of \\d{4}-\\d\\d-\\d\\d|yours, as of .*"));
        assertThat(sets.rows().toString()).contains("typical, not a quote, of ");
    }

    @Test
    void spares_wheelsThatCanGoFlat_areCountedOverTheirMachines() {
        Table spares = order.spares();
        assertThat(spares.rows())
                .isNotEmpty()
                .allSatisfy(r -> assertThat(r.get(0).shown()).matches("(Air|Sealant) .*"));
        double drives = spares.rows().stream()
                .filter(r -> r.get(0).shown().startsWith("Air drives, 20x10"))
                .mapToDouble(r -> Objects.requireNonNull(r.get(1).number()))
                .sum();
        assertThat(drives).isEqualTo(8);
    }
}
