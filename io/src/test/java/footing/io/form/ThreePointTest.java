package footing.io.form;

import static org.assertj.core.api.Assertions.assertThat;

import footing.core.fleet.Chance;
import footing.core.fleet.Key;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What an error says would work does work. */
class ThreePointTest {
    private static final Pattern RANGE = Pattern.compile("try: (low|likely|high) from (.*) to (.*)");
    private static final List<String> NAMES = ThreePoint.NAMES;

    @Test
    void advice_rangeForOneValue_isFeasibleAtBothEnds() {
        SplittableRandom random = new SplittableRandom(7);
        int ranges = 0;
        for (int i = 0; i < 5000; i++) {
            Key key = List.of(Key.MAKE_UP_LATER, Key.LIFE, Key.DELAY).get(random.nextInt(3));
            String unit = key == Key.MAKE_UP_LATER ? " %" : key == Key.DELAY ? " min" : "";
            double[] x = random.doubles(3, 1, 100).sorted().toArray();
            x[0] = random.nextInt(4) == 0 ? 0 : x[0];
            x[2] = random.nextInt(4) == 0 ? 100 : x[2];
            String[] texts =
                    Arrays.stream(x).mapToObj(v -> Written.number(v) + unit).toArray(String[]::new);
            ranges += checkEnds(key, texts) ? 1 : 0;
        }
        assertThat(ranges).isGreaterThan(1000);
    }

    private static boolean checkEnds(Key key, String[] texts) {
        Matcher m = RANGE.matcher(advice(key, texts));
        if (!m.matches()) {
            return false;
        }
        for (String end : List.of(m.group(2), m.group(3))) {
            String[] changed = texts.clone();
            changed[NAMES.indexOf(m.group(1))] = end;
            assertThat(advice(key, changed))
                    .as("%s in %s", end, String.join(", ", texts))
                    .isEmpty();
        }
        return true;
    }

    private static String advice(Key key, String... texts) {
        List<Node.Entry> entries = java.util.stream.IntStream.range(0, 3)
                .mapToObj(
                        i -> new Node.Entry(new Node.Scalar(1, NAMES.get(i), true), new Node.Scalar(1, texts[i], true)))
                .toList();
        Problems problems = new Problems("x");
        var unused = new NumberForm(key).read(new Node.Mapping(1, entries), At.TOP, problems);
        return problems.errors().stream().map(Problem::advice).findFirst().orElse("");
    }

    @Test
    void examples_ofEveryKey_passTheirOwnForm() {
        for (Key key : Key.values()) {
            Problems problems = new Problems("x");
            NumberForm form = new NumberForm(key);
            form.check(new Node.Scalar(1, form.example(), true), new At(1, key.key()), problems);
            if (key.chance() != Chance.NONE) {
                Node tree = FileText.tree(NumberForm.threePointExample(key), problems);
                form.check(java.util.Objects.requireNonNull(tree), new At(1, key.key()), problems);
            }
            assertThat(problems.errors()).isEmpty();
        }
    }
}
