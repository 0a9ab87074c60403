package footing.cli.house;

import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Each rule is shown a specimen that breaks it, so that one which can't fail is noticed. */
class HouseRulesFailureTest {

    private static final JavaClasses SPECIMENS = new ClassFileImporter()
            .importPackages(
                    "footing.core.specimen",
                    "footing.core.unmarked",
                    "footing.io.specimen",
                    "footing.web.specimen",
                    "footing.cli.specimen");

    private static final Map<ArchRule, List<String>> CULPRITS = Map.ofEntries(
            entry(HouseRules.CORE_STANDS_ALONE, List.of("io.specimen.Shelf")),
            entry(HouseRules.IO_SEES_CORE_ONLY, List.of("web.specimen.Window")),
            entry(HouseRules.WEB_DOES_NOT_SEE_CLI, List.of("cli.specimen.Door")),
            entry(HouseRules.PACKAGES_HAVE_NO_CYCLES, List.of("Slice core.specimen", "Slice io.specimen")),
            entry(
                    HouseRules.NAMES_SAY_WHAT_A_CLASS_DOES,
                    List.of(
                            "TimeUtil>",
                            "TimeUtils>",
                            "TimeManager>",
                            "TimeHelper>",
                            "TimeImpl>",
                            "BaseTime>",
                            "Names$Base>")),
            entry(HouseRules.PACKAGES_ARE_NULL_MARKED, List.of("footing.core.unmarked.Unmarked")),
            entry(HouseRules.ONLY_MAIN_EXITS, List.of("Door.slam()")),
            entry(
                    CoreRules.CORE_LEANS_ON_FEW,
                    List.of("java.nio.file.Files", "java.util.logging.Logger", "picocli.CommandLine", "java.io.File")),
            entry(
                    CoreRules.CORE_STARTS_NO_THREADS,
                    List.of("java.lang.Thread", "java.util.concurrent.Executors", "java.util.concurrent.ForkJoinPool")),
            entry(
                    CoreRules.CORE_LEAVES_THE_SYSTEM_ALONE,
                    List.of(
                            "java.lang.System.out",
                            "java.lang.System.getenv",
                            "java.lang.Runtime.availableProcessors")),
            entry(
                    CoreRules.CORE_ASKS_NO_CLOCK,
                    List.of("Instant.now", "LocalDate.now", "System.nanoTime", "Clock.systemUTC", "Date.<init>")),
            entry(
                    CoreRules.CORE_DRAWS_BY_KEY_ONLY,
                    List.of("Math.random", "Random.<init>", "ThreadLocalRandom.current", "UUID.randomUUID")),
            entry(
                    CoreRules.CORE_HAS_NO_DEFAULT_LOCALE,
                    List.of(
                            "Locale.getDefault",
                            "String.format(java.lang.String, ",
                            "String.formatted",
                            "String.toLowerCase()",
                            "DecimalFormat.<init>(java.lang.String)",
                            "NumberFormat.getInstance()",
                            "DateTimeFormatter.ofPattern(java.lang.String)")));

    static Stream<Arguments> culprits() {
        return CULPRITS.entrySet().stream().map(entry -> Arguments.of(entry.getKey(), entry.getValue()));
    }

    @ParameterizedTest
    @MethodSource("culprits")
    void rule_onItsSpecimens_namesEachOne(ArchRule rule, List<String> culprits) {
        assertThatThrownBy(() -> rule.check(SPECIMENS))
                .isInstanceOf(AssertionError.class)
                .message()
                .contains(culprits);
    }

    @ParameterizedTest
    @MethodSource("footing.cli.house.HouseRulesTest#rules")
    void rule_anyOfTheHouse_hasSpecimensAndAReason(ArchRule rule) {
        assertThat(CULPRITS).containsKey(rule);
        assertThat(rule.getDescription()).contains(", because ");
    }

    @Test
    void localeRule_onCallsThatNameALocale_isSilent() {
        assertThatThrownBy(() -> CoreRules.CORE_HAS_NO_DEFAULT_LOCALE.check(SPECIMENS))
                .message()
                .doesNotContain("namedLocale");
    }
}
