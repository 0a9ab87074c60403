package footing.io.follow;

import footing.core.fleet.When;
import footing.core.follow.Band;
import footing.core.follow.Bands;
import footing.core.follow.Forecast;
import footing.core.future.Followed;
import footing.io.form.At;
import footing.io.form.Found;
import footing.io.form.Node;
import footing.io.form.Problems;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Reads forecasts. The program wrote them, so the first thing that can't be ends the reading, with its place. */
final class ForecastReader {
    private static final String ADVICE = "take back the file as it was written, or delete it and keep a new forecast";

    private final Problems problems;

    private static final class Spoiled extends Exception {
        private static final long serialVersionUID = 1;

        private final transient At at;
        private final String read;

        Spoiled(Found found, String message) {
            super(message, null, false, false);
            at = found.at();
            read = found.shown();
        }
    }

    ForecastReader(Problems problems) {
        this.problems = problems;
    }

    List<Forecast> read(@Nullable Node root) {
        List<Forecast> forecasts = new ArrayList<>();
        if (root == null) {
            return forecasts;
        }
        try {
            Found all = new Found(root, At.TOP);
            if (!text(all, "format").equals(ForecastFile.FORMAT)) {
                throw new Spoiled(all.get("format"), "is not " + ForecastFile.FORMAT);
            }
            for (Found f : all.get("forecasts").items()) {
                forecasts.add(forecast(f));
            }
        } catch (Spoiled e) {
            problems.error(e.at, e.read, String.valueOf(e.getMessage()), ADVICE);
        }
        return forecasts;
    }

    private static Forecast forecast(Found f) throws Spoiled {
        List<Forecast.Machine> machines = new ArrayList<>();
        for (Found m : f.get("machines").items()) {
            machines.add(new Forecast.Machine(text(m, "id"), number(m.get("hoursNow")), plan(m), bands(m)));
        }
        return new Forecast(
                date(f, "made"),
                date(f, "asOf"),
                (long) number(f.get("seed")),
                (int) number(f.get("futures")),
                text(f, "currency"),
                machines,
                bands(f.get("fleet")));
    }

    private static Forecast.Plan plan(Found m) throws Spoiled {
        String word = text(m, "when").toUpperCase(Locale.ROOT);
        When when = Arrays.stream(When.values())
                .filter(w -> w.name().equals(word))
                .findFirst()
                .orElseThrow(() -> new Spoiled(m.get("when"), "is neither now nor worn"));
        return new Forecast.Plan(
                text(m, "wheels"),
                when,
                text(m, "drive"),
                text(m, "caster"),
                text(m, "driveBefore"),
                text(m, "casterBefore"));
    }

    private static Bands bands(Found f) throws Spoiled {
        Map<Followed, List<Band>> due = new EnumMap<>(Followed.class);
        for (Followed what : Followed.values()) {
            due.put(what, due(f.get(ForecastFile.name(what))));
        }
        try {
            return new Bands(numbers(f.get("hours")), due);
        } catch (IllegalArgumentException e) {
            throw new Spoiled(f, String.valueOf(e.getMessage()));
        }
    }

    private static List<Band> due(Found f) throws Spoiled {
        List<Double> low = numbers(f.get("low"));
        List<Double> mean = numbers(f.get("mean"));
        List<Double> high = numbers(f.get("high"));
        if (low.size() != mean.size() || low.size() != high.size()) {
            throw new Spoiled(f, "low, mean and high are not of one length");
        }
        List<Band> bands = new ArrayList<>();
        for (int i = 0; i < low.size(); i++) {
            try {
                bands.add(new Band(low.get(i), mean.get(i), high.get(i)));
            } catch (IllegalArgumentException e) {
                throw new Spoiled(f, String.valueOf(e.getMessage()));
            }
        }
        return bands;
    }

    private static List<Double> numbers(Found f) throws Spoiled {
        List<Double> numbers = new ArrayList<>();
        for (Found item : f.items()) {
            numbers.add(number(item));
        }
        return numbers;
    }

    private static double number(Found f) throws Spoiled {
        if (f.node() instanceof Node.Scalar scalar) {
            try {
                double value = Double.parseDouble(scalar.text());
                if (Math.abs(value) < Double.POSITIVE_INFINITY) {
                    return value;
                }
            } catch (NumberFormatException e) {
                throw new Spoiled(f, "is no number");
            }
        }
        throw new Spoiled(f, "a number is due");
    }

    private static String text(Found f, String name) throws Spoiled {
        String text = f.text(name);
        if (text == null) {
            throw new Spoiled(f.get(name), "a text is due");
        }
        return text;
    }

    private static LocalDate date(Found f, String name) throws Spoiled {
        LocalDate date = f.date(name);
        if (date == null) {
            throw new Spoiled(f.get(name), "a date is due");
        }
        return date;
    }
}
