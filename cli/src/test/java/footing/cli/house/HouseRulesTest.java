package footing.cli.house;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class HouseRulesTest {

    private static final JavaClasses HOUSE = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("footing");

    static Stream<ArchRule> rules() {
        return Stream.of(HouseRules.ALL, CoreRules.ALL).flatMap(List::stream);
    }

    @ParameterizedTest
    @MethodSource("rules")
    void rule_onTheWholeHouse_holds(ArchRule rule) {
        rule.check(HOUSE);
    }

    @Test
    void house_asImported_hasAllModulesAndNoTests() {
        var packages = HOUSE.stream().map(JavaClass::getPackageName).toList();
        for (var module : List.of("core", "io", "web", "cli")) {
            assertThat(packages).anyMatch(name -> (name + ".").startsWith("footing." + module + "."));
        }
        assertThat(packages).noneMatch(name -> name.contains("specimen"));
    }
}
