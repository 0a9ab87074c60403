package footing.core.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class SplitTest {
    @Test
    void toTheCent_anySplit_isWholeCentsThatAddUp() {
        SplittableRandom random = new SplittableRandom(7);
        for (int n = 1; n < 40; n++) {
            List<Part> parts = new ArrayList<>();
            for (int i = 0; i < n; i++) {
                parts.add(new Part(Part.Kind.ADDED, List.of(), "m" + i, random.nextDouble(-900, 900)));
            }
            double change = parts.stream().mapToDouble(Part::change).sum();
            Split split = Split.settled(1234.565, 1234.565 + change, parts);
            Split printed = split.toTheCent();
            long cents = 0;
            for (Part part : printed.parts()) {
                double exact = split.parts().stream()
                        .filter(part::sameCause)
                        .findFirst()
                        .orElseThrow()
                        .change();
                assertThat(part.change()).isCloseTo(exact, within(0.005 * (n + 3)));
                assertThat(100 * part.change()).isCloseTo(Math.rint(100 * part.change()), within(1e-9));
                cents += Math.round(100 * part.change());
            }
            assertThat(cents).isEqualTo(Math.round(100 * printed.change()));
            assertThat(printed.change()).isCloseTo(split.change(), within(0.01 + 1e-9));
        }
    }
}
