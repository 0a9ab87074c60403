package footing.cli.house;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.properties.HasParameterTypes;
import com.tngtech.archunit.lang.ArchRule;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.text.MessageFormat;
import java.text.NumberFormat;
import java.time.Clock;
import java.time.format.DateTimeFormatter;
import java.util.Calendar;
import java.util.Date;
import java.util.Formatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.Timer;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.ForkJoinTask;
import java.util.concurrent.ThreadLocalRandom;

/** What keeps the calculation pure: the same case and seed give the same answer on every machine, at any time. */
final class CoreRules {

    private static final String CORE = "footing.core..";
    private static final String CONSTRUCTOR = "<init>";

    /** A list of what is allowed, since what is not has no end: frameworks, files, SQL, network, logging. */
    static final ArchRule CORE_LEANS_ON_FEW = classes()
            .that()
            .resideInAPackage(CORE)
            .should()
            .onlyDependOnClassesThat(resideInAnyPackage(
                            CORE,
                            "java.lang..",
                            "java.math",
                            "java.nio.charset",
                            "java.text",
                            "java.time..",
                            "java.util",
                            "java.util.concurrent..",
                            "java.util.function",
                            "java.util.regex",
                            "java.util.stream",
                            "org.hipparchus..",
                            "org.jspecify.annotations")
                    .or(readAResource()))
            .because("core computes: files, SQL, network, logging and frameworks belong to the modules around it;"
                    + " of java.io it may use the three classes it takes to read a table of its own");

    static final ArchRule CORE_STARTS_NO_THREADS = noClasses()
            .that()
            .resideInAPackage(CORE)
            .should()
            .dependOnClassesThat()
            .belongToAnyOf(
                    Thread.class,
                    ThreadGroup.class,
                    Timer.class,
                    CompletableFuture.class,
                    Executors.class,
                    ForkJoinTask.class)
            .orShould()
            .dependOnClassesThat()
            .areAssignableTo(ExecutorService.class)
            .because("one runner decides about threads; a calculation gives the same answer on any number of them");

    static final ArchRule CORE_LEAVES_THE_SYSTEM_ALONE = noClasses()
            .that()
            .resideInAPackage(CORE)
            .should()
            .accessTargetWhere(describe("touches System or Runtime (but for arraycopy)", CoreRules::touchesTheSystem))
            .because("output, environment and properties differ by machine; core takes values and gives values");

    static final ArchRule CORE_ASKS_NO_CLOCK = noClasses()
            .that()
            .resideInAPackage(CORE)
            .should()
            .accessTargetWhere(describe("asks for the time", CoreRules::asksForTheTime))
            .because("the day of a case is stated in it, and an answer must not change overnight");

    static final ArchRule CORE_DRAWS_BY_KEY_ONLY = noClasses()
            .that()
            .resideInAPackage(CORE)
            .should()
            .accessTargetWhere(describe("draws from a generator of the JDK", CoreRules::drawsAtRandom))
            .because("a draw is named by seed and key, so that a comparison meets the same futures");

    static final ArchRule CORE_HAS_NO_DEFAULT_LOCALE = noClasses()
            .that()
            .resideInAPackage(CORE)
            .should()
            .accessTargetWhere(describe("uses the default locale", CoreRules::usesTheDefaultLocale))
            .because("a number must read the same on a German machine; name the locale, or let io format");

    static final List<ArchRule> ALL = List.of(
            CORE_LEANS_ON_FEW,
            CORE_STARTS_NO_THREADS,
            CORE_LEAVES_THE_SYSTEM_ALONE,
            CORE_ASKS_NO_CLOCK,
            CORE_DRAWS_BY_KEY_ONLY,
            CORE_HAS_NO_DEFAULT_LOCALE);

    /** Methods that fall back to the default locale unless a parameter names one. */
    private static final Map<Class<?>, Set<String>> BY_LOCALE = Map.of(
            String.class, Set.of("format", "formatted", "toLowerCase", "toUpperCase"),
            Formatter.class, Set.of(CONSTRUCTOR),
            MessageFormat.class, Set.of(CONSTRUCTOR, "format"),
            DecimalFormat.class, Set.of(CONSTRUCTOR),
            DecimalFormatSymbols.class, Set.of(CONSTRUCTOR, "getInstance"),
            NumberFormat.class,
                    Set.of(
                            "getInstance",
                            "getNumberInstance",
                            "getIntegerInstance",
                            "getPercentInstance",
                            "getCurrencyInstance",
                            "getCompactNumberInstance"),
            DateTimeFormatter.class, Set.of("ofPattern", "ofLocalizedDate", "ofLocalizedTime", "ofLocalizedDateTime"),
            ResourceBundle.class, Set.of("getBundle"));

    private CoreRules() {}

    private static DescribedPredicate<JavaClass> readAResource() {
        return JavaClass.Predicates.belongToAnyOf(InputStream.class, IOException.class, UncheckedIOException.class);
    }

    private static boolean touchesTheSystem(JavaAccess<?> access) {
        JavaClass owner = access.getTargetOwner();
        return owner.isEquivalentTo(Runtime.class)
                || owner.isEquivalentTo(ProcessBuilder.class)
                || (owner.isEquivalentTo(System.class) && !access.getName().equals("arraycopy"));
    }

    private static boolean asksForTheTime(JavaAccess<?> access) {
        JavaClass owner = access.getTargetOwner();
        boolean now = owner.getPackageName().startsWith("java.time")
                && access.getName().equals("now");
        boolean clock = owner.isEquivalentTo(Clock.class) && !access.getName().equals("fixed");
        boolean old = owner.isAssignableTo(Calendar.class) || owner.isAssignableTo(Date.class);
        boolean ticks = owner.isEquivalentTo(System.class)
                && Set.of("currentTimeMillis", "nanoTime").contains(access.getName());
        return now || clock || old || ticks;
    }

    private static boolean drawsAtRandom(JavaAccess<?> access) {
        JavaClass owner = access.getTargetOwner();
        return owner.isAssignableTo(Random.class)
                || owner.isEquivalentTo(SplittableRandom.class)
                || owner.isEquivalentTo(ThreadLocalRandom.class)
                || (owner.isEquivalentTo(Math.class) && access.getName().equals("random"))
                || (owner.isEquivalentTo(UUID.class) && access.getName().equals("randomUUID"));
    }

    private static boolean usesTheDefaultLocale(JavaAccess<?> access) {
        JavaClass owner = access.getTargetOwner();
        if (owner.isEquivalentTo(Locale.class)) {
            return access.getName().equals("getDefault");
        }
        boolean byLocale = BY_LOCALE.entrySet().stream()
                .anyMatch(entry ->
                        owner.isEquivalentTo(entry.getKey()) && entry.getValue().contains(access.getName()));
        return byLocale && access.getTarget() instanceof HasParameterTypes call && !namesALocale(call);
    }

    private static boolean namesALocale(HasParameterTypes call) {
        return call.getRawParameterTypes().stream()
                .anyMatch(type -> type.isEquivalentTo(Locale.class) || type.isEquivalentTo(DecimalFormatSymbols.class));
    }
}
