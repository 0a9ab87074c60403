package footing.core.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import footing.core.fleet.Case;
import footing.core.fleet.Key;
import footing.core.fleet.Resolver;
import footing.core.fleet.When;
import footing.core.future.MachineFutures;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every figure worked out again from the leaves of its tree alone, against the answer, to half a cent. */
class ExplainTest {
    private static final int FUTURES = 300;
    private static final double HALF_A_CENT = 0.005;

    /** With treatment, take-offs, sets carried on and worn entries; on a loan with tax; bought new with an upcharge. */
    static Stream<Case> cases() {
        Case c = SmallCase.build();
        Case.Loan loan = new Case.Loan(SmallCase.numbers(Map.of(Key.LOAN_RATE, 0.079, Key.LOAN_MONTHS, 24)), false);
        Case.Tax tax =
                new Case.Tax(SmallCase.numbers(Map.of(Key.TAX_RATE, 0.3)), List.of(0.6, 0.2, 0.1, 0.05, 0.03, 0.02));
        Case taxed = SmallCase.money(c, new Case.Money(c.money().numbers(), loan, tax));
        Case atOnce = SmallCase.money(
                c, new Case.Money(c.money().numbers(), null, new Case.Tax(tax.numbers(), List.of(1.0))));
        return Stream.of(c, taxed, atOnce, SmallCase.buying());
    }

    @ParameterizedTest
    @MethodSource("cases")
    void figure_everyEntryAndFigure_followsFromItsLeaves(Case c) {
        MachineFutures run = new MachineFutures(Resolver.resolve(c).get(0), 1).runAll(FUTURES);
        MachineAnswer answer = new Entries(run, 0.8).answer();
        for (int e = 0; e < answer.entries().size(); e++) {
            EntryAnswer entry = answer.entries().get(e);
            for (String figure : Explain.FIGURES) {
                Explanation tree = explain(c, entry, figure);
                Double expected = figure(answer, entry, breakEvenPrice(run, entry), figure);
                String what = figure + " of " + entry.entry();
                if (expected != null) {
                    assertThat(recomputed(tree)).as(what).isCloseTo(expected, within(HALF_A_CENT));
                }
                assertThat(tree.value()).as(what).isCloseTo(recomputed(tree), within(1e-9));
                assertLeavesTell(tree, what);
            }
        }
    }

    private static Explanation explain(Case c, EntryAnswer entry, String figure) {
        return Explain.figure(
                c, SmallCase.RIDER, entry.entry().id(), entry.entry().when(), figure, 1, FUTURES);
    }

    /** The start cost and what the saving would add to it, by the answer alone. */
    private static @Nullable Double breakEvenPrice(MachineFutures run, EntryAnswer entry) {
        return entry.startCost() == 0
                ? null
                : entry.startCost() + entry.saving().mean() / run.presentValueOfOne();
    }

    private static @Nullable Double figure(MachineAnswer m, EntryAnswer e, @Nullable Double price, String figure) {
        return switch (figure) {
            case "saving" -> e.saving().mean();
            case "cost" -> e.cost().mean();
            case "startCost" -> e.startCost();
            case "purchase" -> e.parts().purchase();
            case "renewals" -> e.parts().renewals();
            case "repairs" -> e.parts().repairs();
            case "crewTime" -> e.parts().crewTime();
            case "lostWork" -> e.parts().lostWork();
            case "upkeep" -> e.parts().upkeep();
            case "tradeIn" -> e.parts().tradeIn();
            case "costPerFlat" ->
                m.costPerFlat() == null ? null : m.costPerFlat().total();
            case "chance" -> e.saving().chance();
            case "monthly" -> e.monthly() == null ? null : e.monthly().payment();
            case "breakEvenPrice" -> price;
            default -> throw new AssertionError("nothing to compare " + figure + " with");
        };
    }

    private static double recomputed(Explanation node) {
        if (node.how() == Explanation.How.LEAF) {
            return node.value();
        }
        double[] parts =
                node.parts().stream().mapToDouble(ExplainTest::recomputed).toArray();
        double value = parts[0];
        for (int i = 1; i < parts.length; i++) {
            value = switch (node.how()) {
                case SUM -> value + parts[i];
                case DIFFERENCE -> value - parts[i];
                case PRODUCT -> value * parts[i];
                case QUOTIENT -> value / parts[i];
                case LEAF -> throw new AssertionError("a leaf with parts");
            };
        }
        return value;
    }

    private static void assertLeavesTell(Explanation node, String what) {
        assertThat(node.label()).as(what).isNotBlank();
        assertThat(node.value()).as(what + ": " + node.label()).isFinite();
        if (node.how() == Explanation.How.LEAF) {
            assertThat(node.source()).as(what + ": " + node.label()).isNotBlank();
        }
        node.parts().forEach(part -> assertLeavesTell(part, what));
    }

    @Test
    void figure_statedAndGuessedNumbers_sayWhichTheyAre() {
        Case c = SmallCase.build();
        EntryAnswer firm = new Entries(new MachineFutures(Resolver.resolve(c).get(0), 1).runAll(FUTURES), 0.8)
                .answer()
                .entries()
                .get(3);
        List<String> sources =
                leaves(explain(c, firm, "startCost")).map(Explanation::source).toList();
        assertThat(firm.entry().id()).isEqualTo("firm");
        assertThat(sources).contains("yours: assemblies.firm-drive.price").anyMatch(s -> s.startsWith("not stated: "));
    }

    private static Stream<Explanation> leaves(Explanation node) {
        return node.parts().isEmpty() ? Stream.of(node) : node.parts().stream().flatMap(ExplainTest::leaves);
    }

    @Test
    void figure_thatDoesNotExist_isRefused() {
        Case c = SmallCase.build();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Explain.figure(c, SmallCase.RIDER, "firm", When.NOW, "luck", 1, 10))
                .withMessageContaining("saving");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Explain.figure(c, SmallCase.RIDER, "gold", When.NOW, "saving", 1, 10));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Explain.figure(c, "tractor", "firm", When.NOW, "saving", 1, 10));
    }

    @Test
    void leaf_withParts_isRefused() {
        Explanation one = Explanation.leaf("one", 1, Explanation.Unit.FACTOR, "by definition");
        assertThatIllegalArgumentException()
                .isThrownBy(() ->
                        new Explanation("two", 2, Explanation.Unit.FACTOR, Explanation.How.LEAF, "", List.of(one)));
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () -> new Explanation("sum", 2, Explanation.Unit.FACTOR, Explanation.How.SUM, "", List.of()));
    }
}
