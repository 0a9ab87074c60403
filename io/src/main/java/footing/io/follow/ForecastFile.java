package footing.io.follow;

import footing.core.follow.Band;
import footing.core.follow.Bands;
import footing.core.follow.Forecast;
import footing.core.future.Followed;
import footing.io.answer.JsonText;
import footing.io.form.FileText;
import footing.io.form.Problem;
import footing.io.form.Problems;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/**
 * The forecasts kept of a case, oldest first, as one JSON document beside it:
 *
 * <pre>
 * { "format": "footing-forecast/1", "forecasts": [
 *     { "made", "asOf", "seed", "futures", "currency",
 *       "machines": [ { "id", "hoursNow", "wheels", "when", "drive", "caster", "driveBefore", "casterBefore",
 *                       "hours": [..], "flats": {"low": [..], "mean": [..], "high": [..]},
 *                       "sets", "downHours", "paid": the same } ],
 *       "fleet": { "hours", "flats", "sets", "downHours", "paid" } } ] }
 * </pre>
 *
 * Hours count from asOf; every figure is what is due by then in all, money at the prices of the day.
 */
public final class ForecastFile {
    public static final String FORMAT = "footing-forecast/1";

    private static final double ROUNDED = 1000;

    private ForecastFile() {}

    /** What came of reading: forecasts, or why there are none. */
    public record Kept(List<Forecast> forecasts, List<Problem> problems) {
        public Kept {
            forecasts = List.copyOf(forecasts);
            problems = List.copyOf(problems);
        }
    }

    /** Where the forecasts of a case file lie: {@code mine.yaml} has {@code mine.forecast.json} beside it. */
    public static Path beside(Path caseFile) {
        String name = String.valueOf(caseFile.getFileName());
        int dot = name.lastIndexOf('.');
        return caseFile.resolveSibling((dot > 0 ? name.substring(0, dot) : name) + ".forecast.json");
    }

    /**
     * Reads a file; none is the same as one without forecasts.
     *
     * @throws IOException if the file is there and can't be read
     */
    public static Kept read(Path file) throws IOException {
        if (!Files.exists(file)) {
            return new Kept(List.of(), List.of());
        }
        Problems problems = new Problems(String.valueOf(file.getFileName()));
        String text = FileText.read(file, problems);
        return text == null ? new Kept(List.of(), problems.errors()) : read(text, problems);
    }

    /** Reads a text of the format. */
    public static Kept read(String text, String name) {
        return read(text, new Problems(name));
    }

    private static Kept read(String text, Problems problems) {
        List<Forecast> forecasts = new ForecastReader(problems).read(FileText.tree(text, problems));
        return problems.hasErrors() ? new Kept(List.of(), problems.errors()) : new Kept(forecasts, List.of());
    }

    /** These and one more, which takes the place of one made on the same day of a case of the same day. */
    public static List<Forecast> with(List<Forecast> kept, Forecast one) {
        List<Forecast> all = new ArrayList<>(kept);
        all.removeIf(f -> f.made().equals(one.made()) && f.asOf().equals(one.asOf()));
        all.add(one);
        all.sort(Comparator.comparing(Forecast::made).thenComparing(Forecast::asOf));
        return all;
    }

    /** Writes the document and leaves the writer open. */
    public static void write(List<Forecast> forecasts, Writer to) {
        try (JsonText json = new JsonText(to)) {
            json.object(() -> {
                json.text("format", FORMAT);
                json.objects("forecasts", forecasts, f -> forecast(json, f));
            });
        }
    }

    private static void forecast(JsonText json, Forecast f) {
        json.text("made", f.made().toString());
        json.text("asOf", f.asOf().toString());
        json.whole("seed", f.seed());
        json.whole("futures", f.futures());
        json.text("currency", f.currency());
        json.objects("machines", f.machines(), m -> machine(json, m));
        json.object("fleet", () -> bands(json, f.fleet()));
    }

    private static void machine(JsonText json, Forecast.Machine m) {
        json.text("id", m.id());
        json.number("hoursNow", m.hoursNow());
        json.text("wheels", m.plan().wheels());
        json.text("when", m.plan().when().name().toLowerCase(Locale.ROOT));
        json.text("drive", m.plan().drive());
        json.text("caster", m.plan().caster());
        json.text("driveBefore", m.plan().driveBefore());
        json.text("casterBefore", m.plan().casterBefore());
        bands(json, m.bands());
    }

    private static void bands(JsonText json, Bands bands) {
        json.array("hours", () -> bands.hours().forEach(h -> json.number(rounded(h))));
        for (Followed what : Followed.values()) {
            json.object(name(what), () -> {
                numbers(json, "low", bands.of(what), Band::low);
                numbers(json, "mean", bands.of(what), Band::mean);
                numbers(json, "high", bands.of(what), Band::high);
            });
        }
    }

    private static void numbers(JsonText json, String name, List<Band> bands, ToDoubleFunction<Band> of) {
        json.array(name, () -> bands.forEach(b -> json.number(rounded(of.applyAsDouble(b)))));
    }

    private static double rounded(double x) {
        return Math.rint(x * ROUNDED) / ROUNDED;
    }

    /** What is followed, as JSON names it. */
    public static String name(Followed what) {
        return switch (what) {
            case FLATS -> "flats";
            case SETS -> "sets";
            case DOWN_HOURS -> "downHours";
            case PAID -> "paid";
        };
    }
}
