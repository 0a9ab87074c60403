package footing.io.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import footing.core.answer.Answer;
import footing.core.answer.MachineAnswer;
import footing.core.fleet.InForce;
import footing.core.fleet.Origin;
import footing.core.fleet.Place;
import footing.io.words.Origins;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The numbers side by side, against the list of all numbers in force. */
class AssumptionGridTest {
    private static Answer answer;
    private static Collection<InForce> all;

    @BeforeAll
    static void answerTheExample() {
        answer = Printed.answer(Printed.example("quillbrook.yaml"), 100, true);
        all = Origins.inForce(
                answer.of(), answer.machines().stream().map(MachineAnswer::id).toList());
    }

    /** Cells between the first column and the last, which hold no numbers. */
    private static List<String> numbers(List<Table> tables) {
        return tables.stream()
                .flatMap(t -> t.rows().stream())
                .flatMap(r -> r.subList(1, r.size() - 1).stream())
                .map(Cell::shown)
                .filter(s -> !s.isEmpty())
                .toList();
    }

    private static List<InForce> at(Place... places) {
        return all.stream()
                .filter(n -> Set.of(places).contains(n.input().key().place()))
                .toList();
    }

    private static long guesses(List<InForce> numbers) {
        return numbers.stream().filter(n -> n.origin().isGuess()).count();
    }

    @Test
    void grids_example_holdEveryNumberOnceWithItsMark() {
        check(AssumptionGrid.crews(answer), at(Place.CREW, Place.FULL_WEEK));
        check(List.of(AssumptionGrid.fixes(answer)), at(Place.FIX));
        check(AssumptionGrid.wheels(answer), at(Place.ASSEMBLY));
        check(AssumptionGrid.machines(answer), at(Place.MACHINE));
        assertThat(Assumptions.money(answer).rows()).hasSameSizeAs(at(Place.MONEY, Place.LOAN, Place.TAX));
    }

    private static void check(List<Table> tables, List<InForce> numbers) {
        List<String> shown = numbers(tables);
        assertThat(shown).hasSameSizeAs(numbers);
        assertThat(shown.stream().filter(s -> s.endsWith(" *"))).hasSize((int) guesses(numbers));
    }

    @Test
    void grids_guess_hasItsReasonAtTheEndOfItsLine() {
        Stream<Table> tables = Stream.of(AssumptionGrid.crews(answer), AssumptionGrid.machines(answer))
                .flatMap(List::stream);
        assertThat(tables.flatMap(t -> t.rows().stream())).allSatisfy(row -> {
            boolean guessed = row.subList(1, row.size() - 1).stream()
                    .anyMatch(c -> c.shown().endsWith(" *"));
            assertThat(!row.get(row.size() - 1).shown().isEmpty()).isEqualTo(guessed);
        });
    }

    @Test
    void wheels_manyOfThem_areSharedOutOverTables() {
        long wheels = at(Place.ASSEMBLY).stream()
                .map(n -> n.input().owner())
                .distinct()
                .count();
        List<Table> tables = AssumptionGrid.wheels(answer);
        assertThat(tables).hasSizeGreaterThan(1);
        assertThat(tables.stream().mapToInt(t -> t.columns().size() - 2).sum()).isEqualTo((int) wheels);
        assertThat(all).anyMatch(n -> n.origin() == Origin.STATED);
    }
}
