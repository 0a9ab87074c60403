package footing.core.compare;

import static org.assertj.core.api.Assertions.assertThat;

import footing.core.answer.Options;
import footing.core.answer.SmallCase;
import footing.core.answer.Watch;
import footing.core.answer.Workers;
import footing.core.fleet.Case;
import footing.core.fleet.Measure;
import footing.core.fleet.Measures;
import footing.core.fleet.Seat;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class MeasureChangeTest {
    private static final Case BASE = SmallCase.build();

    private static Case measured(Measures measures) {
        return new Case(
                BASE.heading(),
                BASE.season(),
                BASE.money(),
                BASE.crews(),
                BASE.assemblies(),
                BASE.packages(),
                List.of(SmallCase.measured(measures, null)));
    }

    private static Difference between(Case before, Case after) {
        return Difference.between(before, after, Options.usual().withFutures(50), Workers.one(), Watch.NOBODY);
    }

    @Test
    void between_measureStatedAndAnotherChanged_listsBothAndMovesNoMoney() {
        Measures was = Measures.NONE.with(Measure.GATE, 1.2).with(Measure.WHEELBASE, 1.3);
        Measures is =
                was.with(Measure.GATE, 1.1).with(Measure.DECK_HEIGHT, 0.08).with(Seat.CONE);
        Difference d = between(measured(was), measured(is));
        String id = BASE.machines().get(0).id();

        assertThat(d.measures())
                .containsExactly(
                        new MeasureChange(id, Measure.DECK_HEIGHT, OptionalDouble.empty(), OptionalDouble.of(0.08)),
                        new MeasureChange(id, Measure.GATE, OptionalDouble.of(1.2), OptionalDouble.of(1.1)));
        assertThat(d.measures().get(1).path()).isEqualTo("machines." + id + ".gate");
        assertThat(d.others()).containsExactly(new OtherChange("machines." + id + ".hub.drive.seat", "", "cone"));
        Split money = java.util.Objects.requireNonNull(d.recommended());
        assertThat(money.change()).isZero();
        assertThat(money.parts()).isEmpty();
    }

    @Test
    void between_sameMeasures_listsNone() {
        Measures same = Measures.NONE.with(Measure.GATE, 1.2);

        assertThat(between(measured(same), measured(same)).measures()).isEmpty();
    }
}
