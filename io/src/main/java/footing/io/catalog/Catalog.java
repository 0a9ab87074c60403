package footing.io.catalog;

import footing.core.fleet.Case;
import footing.core.fleet.Measures;
import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Assemblies and classes of machines by id.
 *
 * @param currency ISO 4217, of every price
 */
public record Catalog(String title, String currency, Map<String, Article> articles, Map<String, MachineClass> classes) {
    public static final Catalog NONE = new Catalog("", "", Map.of(), Map.of());

    public Catalog {
        articles = Collections.unmodifiableMap(new LinkedHashMap<>(articles));
        classes = Collections.unmodifiableMap(new LinkedHashMap<>(classes));
    }

    /** An assembly on offer: as quoted on a day, or typical of that time. */
    public record Article(Case.Assembly assembly, LocalDate date, boolean quoted) {}

    /**
     * Machines of one sort: sizes usual on them, hours a year and the hour meter at which they are usually traded, and
     * the upper end of what they weigh and how fast they go.
     */
    public record MachineClass(
            String id,
            String name,
            List<String> driveSizes,
            List<String> casterSizes,
            double hoursPerYear,
            double keepUntil,
            Measures measures) {
        public MachineClass {
            driveSizes = List.copyOf(driveSizes);
            casterSizes = List.copyOf(casterSizes);
        }
    }

    /** Typical figures by size that come with the program: no quotes. */
    public static Catalog starter() {
        return Starter.CATALOG;
    }
}
