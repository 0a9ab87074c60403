package footing.core.fleet;

import static org.assertj.core.api.Assertions.assertThat;

import footing.core.answer.SmallCase;
import footing.core.chance.Spread;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A case with one number changed: that number, what is reckoned from it where nobody stated that, and no other. */
class MovedTest {
    static Stream<Case> cases() {
        return Stream.of(SmallCase.build(), SmallCase.buying());
    }

    private static Map<Input, InForce> numbers(Case c) {
        Map<Input, InForce> all = new LinkedHashMap<>();
        new Values(c, c.machine(SmallCase.RIDER)).all().forEach(i -> all.put(i.input(), i));
        return all;
    }

    @ParameterizedTest
    @MethodSource("cases")
    void with_everyNumberInForce_changesThatOneAndWhatFollows(Case c) {
        Map<Input, InForce> before = numbers(c);
        assertThat(before).hasSizeGreaterThan(90);
        for (InForce changed : before.values()) {
            Spread to = Spread.of(0.123456);
            Map<Input, InForce> after = numbers(c.with(changed.input(), to));
            assertThat(after.keySet()).isEqualTo(before.keySet());
            after.forEach((input, now) -> {
                InForce then = before.get(input);
                if (input.equals(changed.input())) {
                    assertThat(now.value()).isEqualTo(to);
                } else if (!now.equals(then)) {
                    assertThat(now.origin()).as(input.path()).isEqualTo(Origin.DEFAULT);
                }
            });
        }
    }

    @Test
    void with_numberOfUse_keepsItsOrigin() {
        Case c = SmallCase.build();
        Input stated = Input.of(Key.WAGE, SmallCase.CREW);
        Input guessed = Input.of(Key.BURDEN, SmallCase.CREW);
        assertThat(numbers(c.with(stated, Spread.of(30))))
                .extractingByKey(stated)
                .extracting(InForce::origin)
                .isEqualTo(Origin.STATED);
        assertThat(numbers(c))
                .extractingByKey(guessed)
                .extracting(InForce::origin)
                .isEqualTo(Origin.DEFAULT);
    }

    @Test
    void with_caseItself_staysAsItWas() {
        Case c = SmallCase.build();
        c.with(Input.of(Key.WAGE, SmallCase.CREW), Spread.of(99));
        assertThat(c).isEqualTo(SmallCase.build());
    }

    @ParameterizedTest
    @MethodSource("cases")
    void all_everyInput_hasItsOwnPath(Case c) {
        assertThat(numbers(c).keySet().stream().map(Input::path)).doesNotHaveDuplicates();
    }
}
