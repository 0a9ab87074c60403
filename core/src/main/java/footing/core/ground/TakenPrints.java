package footing.core.ground;

import footing.core.fleet.Case;
import footing.core.fleet.Measure;
import footing.core.fleet.Measures;
import footing.core.fleet.WheelFacts;
import footing.core.quantity.Pressure;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * Puts prints taken in trials in the place of what a case states, or of what is usual: the mean of those of an assembly
 * taken at the pressure it is run at and under alike loads. Its shape exponent is that of the mean area in the mean
 * rectangle. What was taken at another pressure changes nothing.
 *
 * <p>Alike is a pressure within {@value #SAME_PSI} psi, as good as a gauge is read, and a load within
 * {@value #SAME_LOAD} of the middle one; common practice, no source.
 */
public final class TakenPrints {
    private static final double SAME_PSI = 0.5;
    private static final double SAME_LOAD = 0.05;
    private static final double NEARLY = 1e-6;

    private final Case stated;
    private final List<Unused> unused = new ArrayList<>();

    private TakenPrints(Case stated) {
        this.stated = stated;
    }

    /** Why prints change nothing. */
    public enum Why {
        /** No assembly of the case has this id. */
        UNKNOWN_ASSEMBLY,
        /** The load they were taken under was not noted. */
        NO_LOAD,
        /** The load is far from that of the others. */
        OTHER_LOAD,
        /** The pressure they were taken at was not noted. */
        NO_PRESSURE,
        /** The case doesn't say at which pressure the tire is run. */
        NOT_RUN_AT,
        /** They were taken at another pressure than the tire is run at. */
        OTHER_PRESSURE
    }

    /** How many prints of an assembly change nothing, and why. */
    public record Unused(String assembly, int count, Why why) {}

    /** The case with what prints say, and those that say nothing. */
    public record Placed(Case stated, List<Unused> unused) {
        public Placed {
            unused = List.copyOf(unused);
        }
    }

    /** Places them; the case stays as it is where there are none. */
    public static Placed into(Case stated, List<TakenPrint> prints) {
        Map<String, List<TakenPrint>> byAssembly = new LinkedHashMap<>();
        prints.forEach(p -> byAssembly
                .computeIfAbsent(p.assembly(), id -> new ArrayList<>())
                .add(p));
        TakenPrints placing = new TakenPrints(stated);
        Case placed = stated;
        for (var entry : byAssembly.entrySet()) {
            Measures measures = placing.measures(entry.getKey(), entry.getValue());
            placed = measures == null ? placed : placed.with(entry.getKey(), measures);
        }
        return new Placed(placed, placing.unused);
    }

    private @Nullable Measures measures(String id, List<TakenPrint> all) {
        Case.Assembly assembly = stated.assemblies().stream()
                .filter(a -> a.id().equals(id))
                .findFirst()
                .orElse(null);
        if (assembly == null) {
            unused.add(new Unused(id, all.size(), Why.UNKNOWN_ASSEMBLY));
            return null;
        }
        List<TakenPrint> fit = new ArrayList<>();
        Map<Why, Integer> others = new EnumMap<>(Why.class);
        OptionalDouble runAt = runAt(assembly);
        for (TakenPrint print : all) {
            Why why = unfit(print, assembly.kind().holdsAir(), runAt);
            if (why == null) {
                fit.add(print);
            } else {
                others.merge(why, 1, Integer::sum);
            }
        }
        List<TakenPrint> alike = alike(fit);
        if (alike.size() < fit.size()) {
            others.put(Why.OTHER_LOAD, fit.size() - alike.size());
        }
        others.forEach((why, count) -> unused.add(new Unused(id, count, why)));
        return alike.isEmpty() ? null : assembly.measures().withPrint(mean(alike), printed(alike));
    }

    /** Sealant leaves the pressure of the tire that it is poured into. */
    private OptionalDouble runAt(Case.Assembly assembly) {
        String treats = assembly.treats();
        Case.Assembly treated = treats == null ? null : stated.assembly(treats);
        return WheelFacts.of(assembly, treated).get(Measure.PRESSURE);
    }

    private static @Nullable Why unfit(TakenPrint print, boolean air, OptionalDouble runAt) {
        if (print.load() == null) {
            return Why.NO_LOAD;
        }
        if (!air) {
            return null;
        }
        Pressure inflation = print.inflation();
        if (inflation == null) {
            return Why.NO_PRESSURE;
        }
        if (runAt.isEmpty()) {
            return Why.NOT_RUN_AT;
        }
        double apart = Math.abs(inflation.psi() - new Pressure(runAt.getAsDouble()).psi());
        return apart <= SAME_PSI + NEARLY ? null : Why.OTHER_PRESSURE;
    }

    private static List<TakenPrint> alike(List<TakenPrint> prints) {
        double[] loads =
                prints.stream().mapToDouble(TakenPrints::kilograms).sorted().toArray();
        if (loads.length == 0) {
            return prints;
        }
        double middle = loads[loads.length / 2];
        return prints.stream()
                .filter(p -> Math.abs(kilograms(p) / middle - 1) <= SAME_LOAD + NEARLY)
                .toList();
    }

    private static double kilograms(TakenPrint print) {
        return print.load() == null ? 0 : print.load().kilograms();
    }

    private static Map<Measure, Double> mean(List<TakenPrint> prints) {
        double length = mean(prints, p -> p.outline().length().meters());
        double width = mean(prints, p -> p.outline().width().meters());
        double area = mean(prints, p -> p.outline().area().squareMeters());
        Map<Measure, Double> mean = new EnumMap<>(Measure.class);
        mean.put(Measure.PRINT_LENGTH, length);
        mean.put(Measure.PRINT_WIDTH, width);
        mean.put(Measure.PRINT_SHAPE, SuperEllipse.shapeOf(Math.min(1, area / (length * width))));
        mean.put(Measure.PRINT_LOAD, mean(prints, TakenPrints::kilograms));
        double[] inflations = prints.stream()
                .map(TakenPrint::inflation)
                .flatMap(java.util.stream.Stream::ofNullable)
                .mapToDouble(Pressure::pascals)
                .toArray();
        Arrays.stream(inflations).average().ifPresent(p -> mean.put(Measure.PRINT_PRESSURE, p));
        return mean;
    }

    private static double mean(List<TakenPrint> prints, ToDoubleFunction<TakenPrint> of) {
        return prints.stream().mapToDouble(of).average().orElseThrow();
    }

    private static Measures.Printed printed(List<TakenPrint> prints) {
        List<String> days = prints.stream()
                .map(p -> p.taken().day())
                .filter(d -> !d.isEmpty())
                .distinct()
                .sorted()
                .toList();
        List<String> trials =
                prints.stream().map(p -> p.taken().trial()).distinct().toList();
        return new Measures.Printed(prints.get(0).assembly(), prints.size(), days, trials);
    }
}
