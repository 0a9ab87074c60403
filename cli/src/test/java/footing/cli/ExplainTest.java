package footing.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.json.JsonMapper;

class ExplainTest {
    private static final Pattern VALUE = Pattern.compile("(-?[0-9.]+)(?: USD| USD/h| h)?$");

    /** A printed line of the tree: how deep it stands, its rule, its value, the lines below. */
    private record Node(int depth, String label, double value, List<Node> parts) {
        double again() {
            if (parts.isEmpty()) {
                return value;
            }
            double result = parts.get(0).again();
            for (Node part : parts.subList(1, parts.size())) {
                double next = part.again();
                result = label.contains("= sum of")
                        ? result + next
                        : label.contains("= the first minus")
                                ? result - next
                                : label.contains("= product of") ? result * next : result / next;
            }
            return result;
        }
    }

    /** Reads the tree back from what is printed. */
    private static Node read(Run run) {
        Node root = new Node(-1, "= sum of", 0, new ArrayList<>());
        List<Node> path = new ArrayList<>(List.of(root));
        String label = "";
        for (String line :
                run.out().substring(run.out().indexOf("\n\n") + 2).lines().toList()) {
            if (line.isBlank()) {
                break;
            }
            Matcher value = VALUE.matcher(line);
            boolean isSource = line.strip().startsWith("[") || line.strip().endsWith("]");
            if (isSource || !value.find()) {
                label = isSource ? "" : line;
                continue;
            }
            String text = line.substring(0, value.start());
            String whole = text.isBlank() ? label : text;
            int depth = (whole.length() - whole.stripLeading().length()) / 2;
            Node node = new Node(depth, whole, Double.parseDouble(value.group(1)), new ArrayList<>());
            while (path.get(path.size() - 1).depth() >= depth) {
                path.remove(path.size() - 1);
            }
            path.get(path.size() - 1).parts().add(node);
            path.add(node);
        }
        return root.parts().get(0);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "saving",
                "cost",
                "startCost",
                "renewals",
                "repairs",
                "crewTime",
                "lostWork",
                "upkeep",
                "tradeIn",
                "costPerFlat",
                "chance",
                "breakEvenPrice"
            })
    void explain_figure_canBeReckonedAgainToTheCentFromItsLeaves(String figure) {
        Run run = Run.of("explain", Run.NINE_MACHINES, "E2", "airless-24", figure, "--futures", "400", "--all");
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isZero();
        Node tree = read(run);
        assertThat(tree.parts()).isNotEmpty();
        assertThat(tree.again()).isCloseTo(tree.value(), within(0.005));
    }

    /** Lines with a value at their end, by depth; what a product is made of stands in between without one. */
    private static void addUp(List<String> lines) {
        Pattern sum = Pattern.compile("^( *)(\\S.*?)  +(-?[0-9,]+\\.[0-9]{2})$");
        List<Node> path = new ArrayList<>(List.of(new Node(-1, "", 0, new ArrayList<>())));
        List<Node> all = new ArrayList<>();
        for (String line : lines) {
            Matcher m = sum.matcher(line);
            if (m.find()) {
                double value = Double.parseDouble(m.group(3).replace(",", ""));
                Node node = new Node(m.group(1).length() / 2, m.group(2), value, new ArrayList<>());
                while (path.get(path.size() - 1).depth() >= node.depth()) {
                    path.remove(path.size() - 1);
                }
                path.get(path.size() - 1).parts().add(node);
                path.add(node);
                all.add(node);
            }
        }
        assertThat(all.stream().filter(n -> !n.parts().isEmpty()))
                .hasSizeGreaterThan(4)
                .allSatisfy(n -> {
                    double others =
                            n.parts().stream().skip(1).mapToDouble(Node::value).sum();
                    double first = n.parts().get(0).value();
                    assertThat(n.label().endsWith("= sum of") ? first + others : first - others)
                            .isCloseTo(n.value(), within(0.001));
                });
    }

    @Test
    void explain_short_addsUpToTheCentInFarFewerLines() {
        Run few = Run.of("explain", Run.NINE_MACHINES, "E2", "airless-24", "saving", "--futures", "400");
        Run all = Run.of("explain", Run.NINE_MACHINES, "E2", "airless-24", "saving", "--futures", "400", "--all");

        assertThat(few.out().lines().count()).isLessThan(all.out().lines().count() / 3);
        assertThat(few.out().lines().findFirst())
                .isEqualTo(all.out().lines().findFirst().map(l -> l.strip()));
        addUp(few.out().lines().toList());
    }

    @Test
    void explain_saving_isTheAnswersOwn() {
        String[] asked = {"--futures", "400", "--seed", "7"};
        double mean = JsonMapper.shared()
                .readTree(Run.of(
                                "assess",
                                Run.NINE_MACHINES,
                                "--quick",
                                "--json",
                                "--machine",
                                "E1",
                                asked[0],
                                asked[1],
                                asked[2],
                                asked[3])
                        .out())
                .at("/machines/0/entries/4/saving/mean")
                .asDouble();
        Run run = Run.of(
                "explain",
                Run.NINE_MACHINES,
                "E1",
                "airless-24",
                "saving",
                "--all",
                asked[0],
                asked[1],
                asked[2],
                asked[3]);
        assertThat(read(run).value()).isCloseTo(mean, within(0.005));
    }

    @Test
    void explain_worn_needsNoOptionIfThereIsNoOther() {
        Run now = Run.of("explain", Run.NINE_MACHINES, "E2", "airless-24", "startCost", "--all", "--futures", "50");
        Run worn = Run.of(
                "explain",
                Run.NINE_MACHINES,
                "E2",
                "airless-24",
                "startCost",
                "--all",
                "--futures",
                "50",
                "--when",
                "worn");
        assertThat(read(now).value()).isPositive();
        assertThat(read(worn).value()).isZero();
        Run none = Run.of("explain", Run.NINE_MACHINES, "E1", "airless-24", "saving", "--when", "worn");
        assertThat(none.code()).isEqualTo(2);
        assertThat(none.err()).contains("only now");
    }

    @Test
    void explain_unknownNames_areCodeTwoWithAdvice() {
        assertThat(Run.of("explain", Run.NINE_MACHINES, "E2", "airless-24", "savings")
                        .err())
                .contains("did you mean \"saving\"");
        assertThat(Run.of("explain", Run.NINE_MACHINES, "E2", "airless-20", "saving")
                        .err())
                .contains("air-24-s")
                .contains("did you mean");
        Run run = Run.of("explain", Run.NINE_MACHINES, "EE2", "airless-24", "saving");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(Run.of("explain", Run.NINE_MACHINES, "E2", "airless-24", "saving", "--when", "later")
                        .code())
                .isEqualTo(2);
    }
}
