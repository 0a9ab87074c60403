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
                        : label.contains("= first less")
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
        Run run = Run.of("explain", Run.NINE_MACHINES, "E2", "airless-24", figure, "--futures", "400");
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isZero();
        Node tree = read(run);
        assertThat(tree.parts()).isNotEmpty();
        assertThat(tree.again()).isCloseTo(tree.value(), within(0.005));
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
                "explain", Run.NINE_MACHINES, "E1", "airless-24", "saving", asked[0], asked[1], asked[2], asked[3]);
        assertThat(read(run).value()).isCloseTo(mean, within(0.005));
    }

    @Test
    void explain_worn_needsNoOptionIfThereIsNoOther() {
        Run now = Run.of("explain", Run.NINE_MACHINES, "E2", "airless-24", "startCost", "--futures", "50");
        Run worn = Run.of(
                "explain", Run.NINE_MACHINES, "E2", "airless-24", "startCost", "--futures", "50", "--when", "worn");
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
