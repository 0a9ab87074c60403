package footing.io.casefile;

import static org.assertj.core.api.Assertions.assertThat;

import footing.core.fleet.Case;
import footing.core.fleet.ResolvedMachine;
import footing.core.fleet.Resolver;
import footing.core.future.MachineFutures;
import footing.io.form.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Whatever happens to a file, reading it ends in a case that resolves or in problems that help. */
class MutationTest {
    private static final int FILES = 20_000;
    private static final long SEED = 20_270_301;
    private static final String[] NASTY = {
        "1e400",
        "-1e400",
        ".nan",
        ".inf",
        "-0",
        "0",
        "0 %",
        "100 %",
        "1e-400 h",
        "9".repeat(400),
        "0x1F",
        "1_000",
        "{low: 0, likely: 0, high: 0}",
        "{low: 1, likely: 2, high: 1e308}",
        "{low: 1 %, likely: 1 %, high: 99 %}",
        "{learned: x}",
        "[]",
        "{}",
        "null",
        "~",
        "true",
        "\"\"",
        "''",
        "&a x",
        "*a",
        "!!int 3",
        "!x y",
        "<<: {}",
        "\u0000",
        "\uFEFF",
        "\uD800",
        "\u202E",
        "😀",
        "'",
        "\"",
        "[",
        "]",
        "{",
        "}",
        ": ",
        "- ",
        "? ",
        "|",
        ">",
        "%",
        "@",
        "`",
        "#",
        "---",
        "...",
        "%YAML 1.2",
        "%TAG ! x",
        "02-29",
        "9999-12-31",
        "2027-13-01",
        "1 day",
        "\t",
        "{low: 5e-324, likely: 1e-300, high: 1e300}",
        "N1",
        "on-air",
        "air",
        "now",
        "fits",
        "1e999999999",
        "\r",
        "\\",
        "{low: 0.1, likely: 0.2, high: 1e6}",
        "8784",
        "1e6",
        "5e-324",
        "0.00001 %",
        "🛞 h",
        "1e5 h",
        "new",
        "starter",
    };

    @Test
    void read_mutatedFiles_alwaysACaseOrProblems() {
        String small = BrokenCase.base();
        String tiny = Examples.text("../cases/one-machine.yaml");
        String large = Examples.text("../cases/quillbrook.yaml");
        int accepted = 0;
        for (int i = 0; i < FILES; i++) {
            SplittableRandom random = new SplittableRandom(SEED + i);
            String text = i % 40 == 0 ? large : i % 4 == 0 ? small : tiny;
            for (int n = 1 + random.nextInt(3); n > 0; n--) {
                text = mutate(text, random);
            }
            accepted += check(text, SEED + i) ? 1 : 0;
        }
        assertThat(accepted).isBetween(FILES / 50, FILES - FILES / 50);
    }

    /** Two futures of one of its machines, which is what an answer takes again and again. */
    private static void answer(Case c, long seed) {
        List<ResolvedMachine> machines = Resolver.resolve(c);
        if (!machines.isEmpty()) {
            ResolvedMachine machine = machines.get((int) (seed % machines.size()));
            double cost = new MachineFutures(machine, seed).runAll(2).costs(0)[0];
            assertThat(cost).isFinite();
        }
    }

    private static boolean check(String text, long seed) {
        try {
            Reading reading = CaseFile.read(text, "m.yaml");
            reading.found().ifPresent(c -> {
                Defaults.list(c);
                answer(c, seed);
            });
            for (Problem problem : reading.problems()) {
                boolean helps = problem.line() > 0
                        && !problem.message().isBlank()
                        && !problem.advice().isBlank()
                        && problem.toString().lines().count() <= 2;
                if (!helps) {
                    throw new AssertionError(problem);
                }
            }
            assertThat(reading.found().isPresent()).isEqualTo(reading.problems().isEmpty());
            return reading.found().isPresent();
        } catch (RuntimeException | AssertionError | StackOverflowError e) {
            throw new AssertionError("seed " + seed + ":\n" + text, e);
        }
    }

    private static String mutate(String text, SplittableRandom random) {
        if (text.isEmpty()) {
            return NASTY[random.nextInt(NASTY.length)];
        }
        int at = random.nextInt(text.length());
        return switch (random.nextInt(9)) {
            case 0 ->
                text.substring(0, at) + (char) (text.charAt(at) ^ 1 << random.nextInt(8)) + text.substring(at + 1);
            case 1 -> text.substring(0, at);
            case 2 -> text.substring(0, at) + NASTY[random.nextInt(NASTY.length)] + text.substring(at);
            case 3 -> text.substring(0, at) + "[{a: ".repeat(random.nextInt(40)) + text.substring(at);
            case 4, 5 -> lines(text, random);
            default -> token(text, random);
        };
    }

    /** One line left out, said twice, or swapped with another. */
    private static String lines(String text, SplittableRandom random) {
        List<String> lines = new ArrayList<>(text.lines().toList());
        if (lines.isEmpty()) {
            return text;
        }
        int one = random.nextInt(lines.size());
        int other = random.nextInt(lines.size());
        switch (random.nextInt(3)) {
            case 0 -> lines.remove(one);
            case 1 -> lines.add(other, lines.get(one));
            default -> java.util.Collections.swap(lines, one, other);
        }
        return String.join("\n", lines) + "\n";
    }

    /** One word or number replaced by something nasty, or by another one of the file. */
    private static String token(String text, SplittableRandom random) {
        List<int[]> tokens = new ArrayList<>();
        java.util.regex.Matcher m =
                java.util.regex.Pattern.compile("[\\w.%-]+( %| h| min)?").matcher(text);
        while (m.find()) {
            tokens.add(new int[] {m.start(), m.end()});
        }
        if (tokens.isEmpty()) {
            return text;
        }
        int[] one = tokens.get(random.nextInt(tokens.size()));
        int[] other = tokens.get(random.nextInt(tokens.size()));
        String put = random.nextBoolean() ? NASTY[random.nextInt(NASTY.length)] : text.substring(other[0], other[1]);
        return text.substring(0, one[0]) + put + text.substring(one[1]);
    }
}
