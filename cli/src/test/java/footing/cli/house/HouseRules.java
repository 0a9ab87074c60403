package footing.cli.house;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import footing.cli.Main;
import java.util.List;
import org.jspecify.annotations.NullMarked;

/** How the modules may lean on each other, and what holds in all of them. */
final class HouseRules {

    static final ArchRule CORE_STANDS_ALONE = noClasses()
            .that()
            .resideInAPackage("footing.core..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("footing.io..", "footing.web..", "footing.cli..")
            .because("the calculation is read and tested without files, pages and commands");

    static final ArchRule IO_SEES_CORE_ONLY = noClasses()
            .that()
            .resideInAPackage("footing.io..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("footing.web..", "footing.cli..")
            .because("page and command line read and write the same files by the same code");

    static final ArchRule WEB_DOES_NOT_SEE_CLI = noClasses()
            .that()
            .resideInAPackage("footing.web..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("footing.cli..")
            .because("the page is started by a command and must not know which");

    static final ArchRule PACKAGES_HAVE_NO_CYCLES = slices().matching("footing.(**)")
            .should()
            .beFreeOfCycles()
            .because("a package in a cycle can be neither understood nor changed by itself");

    static final ArchRule NAMES_SAY_WHAT_A_CLASS_DOES = noClasses()
            .should()
            .haveNameMatching(".*[.$]((\\w*(Util|Utils|Manager|Helper|Impl))|Base|Base[A-Z]\\w*)")
            .because("such a name fits any class, so that the next thing without a place lands there");

    static final ArchRule PACKAGES_ARE_NULL_MARKED = classes()
            .should(liveInANullMarkedPackage())
            .because(
                    "NullAway looks into marked packages only; package-info.java marks them and says what lives there");

    static final ArchRule ONLY_MAIN_EXITS = noClasses()
            .that()
            .doNotHaveFullyQualifiedName(Main.class.getName())
            .should()
            .callMethod(System.class, "exit", int.class)
            .orShould()
            .callMethod(Runtime.class, "exit", int.class)
            .orShould()
            .callMethod(Runtime.class, "halt", int.class)
            .because("a command answers with an exit code, and a test or a server must outlive it");

    static final List<ArchRule> ALL = List.of(
            CORE_STANDS_ALONE,
            IO_SEES_CORE_ONLY,
            WEB_DOES_NOT_SEE_CLI,
            PACKAGES_HAVE_NO_CYCLES,
            NAMES_SAY_WHAT_A_CLASS_DOES,
            PACKAGES_ARE_NULL_MARKED,
            ONLY_MAIN_EXITS);

    private HouseRules() {}

    private static ArchCondition<JavaClass> liveInANullMarkedPackage() {
        return new ArchCondition<>("live in a package that package-info.java marks @NullMarked") {
            @Override
            public void check(JavaClass item, ConditionEvents events) {
                if (!item.getPackage().isAnnotatedWith(NullMarked.class)) {
                    events.add(SimpleConditionEvent.violated(item, item.getName() + " lives in an unmarked package"));
                }
            }
        };
    }
}
