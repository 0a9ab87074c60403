package footing.io.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import footing.core.answer.Answer;
import footing.io.words.Advice;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class AfterListTest {
    private static final Answer ANSWER = Printed.answer(Printed.example("quillbrook.yaml"), 600, true);

    private static List<String> column(Table table, int i) {
        return table.rows().stream().map(r -> r.get(i).shown()).toList();
    }

    @Test
    void of_example_isAboutTheMachinesThatChange() {
        Table list = AfterList.of(ANSWER);
        Set<String> machines =
                column(list, 2).stream().filter(m -> !m.equals("all")).collect(Collectors.toSet());
        Set<String> changing = Advice.all(ANSWER).stream()
                .filter(a -> a.verb().changes())
                .map(Advice::id)
                .collect(Collectors.toSet());
        assertThat(machines).isNotEmpty().isEqualTo(changing);
    }

    @Test
    void of_example_comesByDateAndBeginsAtTheCase() {
        List<String> dates = column(AfterList.of(ANSWER), 0);
        assertThat(dates).isSorted();
        assertThat(dates.get(0)).isEqualTo("2027-02-15");
    }

    @Test
    void of_example_tightensLugNutsAtTwoAndTenHours() {
        Table list = AfterList.of(ANSWER);
        List<String> nuts = list.rows().stream()
                .filter(r -> r.get(3).shown().toLowerCase(Locale.ROOT).contains("lug nuts"))
                .map(r -> r.get(1).shown())
                .toList();
        assertThat(nuts).containsExactly("2 h", "10 h");
    }

    @Test
    void of_example_hasTheDatesOfTheLoan() {
        Table list = AfterList.of(ANSWER);
        assertThat(list.rows())
                .anySatisfy(r -> {
                    assertThat(r.get(0).shown()).isEqualTo("2027-03-15");
                    assertThat(r.get(3).shown()).startsWith("First payment");
                })
                .anySatisfy(r -> {
                    assertThat(r.get(0).shown()).isEqualTo("2030-02-15");
                    assertThat(r.get(3).shown()).startsWith("Last payment");
                });
    }

    @Test
    void of_example_saysOfEveryLineWhereItComesFrom() {
        assertThat(column(AfterList.of(ANSWER), 5))
                .allMatch(b -> b.equals(AfterList.PRACTICE) || b.equals("the case") || b.startsWith("middle of"));
    }

    @Test
    void of_anything_neverCallsASlopeSafe() {
        assertThat(AfterList.of(ANSWER).rows()).allSatisfy(r -> {
            String what = r.get(3).shown();
            assertThat(!what.contains("slope") || what.contains("no sign that any slope is safe"))
                    .isTrue();
        });
    }

    @Test
    void of_answerWithoutChange_isEmpty() {
        assertThat(AfterList.of(Printed.answer(Fleets.nothingPays(), 100, true)).isEmpty())
                .isTrue();
    }
}
