package footing.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import footing.cli.text.Letters;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class CompareTest {
    @TempDir
    Path folder;

    private String changed(String file, String... replacements) throws IOException {
        String text = Files.readString(Path.of(file));
        for (int i = 0; i < replacements.length; i += 2) {
            assertThat(text).contains(replacements[i]);
            text = text.replace(replacements[i], replacements[i + 1]);
        }
        Path path = folder.resolve("after.yaml");
        Files.writeString(path, text);
        return path.toString();
    }

    private static Run compare(String before, String after, String... options) {
        List<String> args = new ArrayList<>(List.of("compare", before, after, "--futures", "300"));
        args.addAll(List.of(options));
        return Run.of(args.toArray(String[]::new));
    }

    @Test
    void compare_twoVersions_saysWhatChangedAndWhatItDid() throws IOException {
        String after = changed(
                Run.NINE_MACHINES,
                "wage: 21.40",
                "wage: 24",
                "price: 655",
                "price: 540",
                "asOf: 2027-02-15",
                "asOf: 2027-03-01",
                "carries: air-24-s, worn: {drive: 300",
                "carries: air-24, worn: {drive: 300");
        Run run = compare(Run.NINE_MACHINES, after);

        assertThat(run.code()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(run.lines()).allSatisfy(l -> assertThat(l).hasSizeLessThanOrEqualTo(80));
        assertThat(run.out())
                .contains("What is recommended saved")
                .containsPattern("paid per hour and person \\(crew estates\\) +21.40 -> 24\\n")
                .containsPattern("price each, ready to bolt on \\(24x12 N12 airless drives\\) +655 -> 540\\n")
                .contains("The date of the case was 2027-02-15 and is 2027-03-01.")
                .contains("Machine C1: what it carries now was air drives and solid casters and is")
                .containsPattern("\\n  dates, lists and packages +[+-]\\d")
                .contains("order with airless drives and solid casters");
    }

    /** Each rounded by at most half a unit, as are the parts not shown. */
    @Test
    void compare_shownParts_addUpToTheShownChangeButForRounding() throws IOException {
        String after = changed(Run.NINE_MACHINES, "wage: 21.40", "wage: 24", "price: 655", "price: 540");
        String out = compare(Run.NINE_MACHINES, after).out();
        String all = out.substring(out.indexOf("all machines"), out.indexOf("\n\nE1"));

        Matcher figure = Pattern.compile("(?m)([+-][\\d,]+|0)$").matcher(all);
        List<Double> figures = new ArrayList<>();
        while (figure.find()) {
            figures.add(Double.parseDouble(figure.group().replace(",", "")));
        }
        double parts = figures.stream().skip(1).mapToDouble(x -> x).sum();
        assertThat(figures).hasSizeGreaterThan(2);
        assertThat(parts).isCloseTo(figures.get(0), within(0.5 * (figures.size() + 1)));
    }

    @Test
    void compare_json_isOneDocumentWhosePartsAddUp() throws IOException {
        String after = changed(Run.NINE_MACHINES, "wage: 21.40", "wage: 24", "billing: 174", "billing: 190");
        Run run = compare(Run.NINE_MACHINES, after, "--json");

        assertThat(run.err()).isEmpty();
        JsonNode json = JsonMapper.shared().readTree(run.out());
        assertThat(json.get("format").asString()).isEqualTo("footing-comparison/1");
        assertThat(json.get("futures").asInt()).isEqualTo(300);
        assertThat(json.get("inputs").findValuesAsString("input"))
                .containsExactly("crews.estates.wage", "crews.estates.billing");
        for (JsonNode place : List.of(json.get("fleet"), json.get("machines").get(0))) {
            JsonNode split = place.get("recommended");
            double sum = 0;
            for (JsonNode part : split.get("parts")) {
                sum += part.get("change").asDouble();
            }
            assertThat(sum).isEqualTo(split.get("change").asDouble()).isNotZero();
        }
    }

    @Test
    void compare_theSame_saysSo() {
        Run run = compare(Run.ONE_MACHINE, Run.ONE_MACHINE);

        assertThat(run.out()).contains("Both say the same").doesNotContain("What it did", "What changed");
    }

    @Test
    void compare_longNames_fitIn80Columns() throws IOException {
        String id = "the-very-long-name-of-a-thing-that-somebody-typed-with-no-thought-of-it";
        String before = Files.readString(Path.of(Run.ONE_MACHINE))
                .replace("mower,", id + ",")
                .replace("  me:", "  " + id + ":")
                .replace("crew: me", "crew: " + id);
        Path first = folder.resolve("first.yaml");
        Files.writeString(first, before);
        String after =
                changed(first.toString(), "wage: 30", "wage: 50", "low: 450, likely: 650", "low: 350, likely: 450");

        for (Letters letters : Letters.values()) {
            Run run = Run.in(folder, "", letters, "compare", first.toString(), after, "--futures", "100");
            assertThat(run.code()).isZero();
            assertThat(run.lines()).allSatisfy(l -> assertThat(l).hasSizeLessThanOrEqualTo(80));
        }
    }

    @Test
    void compare_oneFromStandardInput_isRead() throws IOException {
        String text = Files.readString(Path.of(Run.ONE_MACHINE)).replace("wage: 30", "wage: 31");
        Run run = Run.in(folder, text, Letters.ASCII, "compare", Run.ONE_MACHINE, "-", "--futures", "50");

        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("30 -> 31");
        assertThat(compare("-", "-").code()).isEqualTo(2);
    }

    @Test
    void compare_whatCantBeCompared_isRefused() throws IOException {
        String euros = changed(Run.ONE_MACHINE, "asOf:", "currency: EUR\nasOf:");

        assertThat(compare(Run.ONE_MACHINE, euros))
                .satisfies(r -> assertThat(r.code()).isEqualTo(2))
                .satisfies(r -> assertThat(r.err()).contains("one case is in USD, the other in EUR"));
        assertThat(compare(Run.ONE_MACHINE, "no-such.yaml").err()).contains("there is no file no-such.yaml");
        assertThat(Run.of("compare", Run.ONE_MACHINE, Run.ONE_MACHINE, "--futures", "1")
                        .code())
                .isEqualTo(2);
    }

    @Test
    void compare_stopped_printsBothAnswersAndEndsWithOne() throws IOException {
        String after = changed(Run.ONE_MACHINE, "wage: 30", "wage: 50", "billing: 75", "billing: 90");
        Stop stop = new Stop();
        stop.ask();
        Run run = Run.in(folder, "", Letters.ASCII, stop, "compare", Run.ONE_MACHINE, after, "--futures", "50");

        assertThat(run.code()).isEqualTo(Answering.STOPPED);
        assertThat(run.out()).contains("Stopped before the changes were split").contains("mower\n  ");
    }
}
