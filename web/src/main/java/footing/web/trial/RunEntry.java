package footing.web.trial;

import footing.io.trial.TrialReading;
import footing.io.words.Lists;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * A run as a form sends it.
 *
 * @param fault why it can't be taken, in words; empty if it can
 */
record RunEntry(String sentAs, String place, String made, Map<String, String> cells, String fault) {
    private static final Pattern BARE = Pattern.compile("-?\\d{1,9}(?:\\.\\d{0,9})?");
    private static final Pattern SHARE = Pattern.compile("\\d{1,3}(?:\\.\\d{1,6})?");

    /** Of one width, so that texts stand in the order of time. */
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern(
                    "uuuu-MM-dd'T'HH:mm:ss.SSS'Z'", Locale.ROOT)
            .withZone(ZoneOffset.UTC);

    static RunEntry of(Map<String, String> form, Setup setup) {
        String place = form.getOrDefault("place", "");
        Planned planned = Planned.of(setup).stream()
                .filter(p -> p.place().equals(place))
                .findFirst()
                .orElse(null);
        Map<String, String> cells = new LinkedHashMap<>();
        if (planned != null) {
            cells.putAll(planned.cells());
            cells.put(setup.judge(), value(form, setup));
            put(cells, "moisture", share(typed(form, "moisture")));
            put(cells, "note", typed(form, "note"));
        }
        String sentAs = form.getOrDefault("sentAs", "");
        String fault = planned == null ? "Choose which run it is." : fault(setup, cells);
        return new RunEntry(sentAs, place, made(form.getOrDefault("made", "")), cells, fault);
    }

    private static String value(Map<String, String> form, Setup setup) {
        if (setup.opposed()) {
            return typed(form, Setup.OPPOSED);
        }
        String number = typed(form, "value").replace(',', '.').replace('\u2212', '-');
        boolean bare = BARE.matcher(number).matches();
        String digits = number.endsWith(".") ? number.substring(0, number.length() - 1) : number;
        return bare ? (digits + " " + setup.unit()).strip() : number;
    }

    private static String share(String typed) {
        String number = typed.replace(',', '.');
        return SHARE.matcher(number).matches() ? number + " %" : typed;
    }

    private static String typed(Map<String, String> form, String name) {
        return StartForm.clean(form.getOrDefault(name, ""));
    }

    private static void put(Map<String, String> cells, String key, String value) {
        if (!value.isEmpty()) {
            cells.put(key, value);
        }
    }

    /** What the reader of trial files says of this run alone. */
    private static String fault(Setup setup, Map<String, String> cells) {
        if (cells.getOrDefault(setup.judge(), "").isEmpty()) {
            return setup.opposed() ? "Say who won." : "Enter what the run gave.";
        }
        TrialReading reading = TrialText.of(setup, List.of(cells)).read();
        return reading instanceof TrialReading.Refused refused
                ? Lists.capital(refused.problems().get(0).said()) + "."
                : "";
    }

    /** The sender's clock if it tells a time that can be, else this machine's. */
    static String made(String sent) {
        try {
            Instant at = Instant.parse(sent);
            int year = at.atZone(ZoneOffset.UTC).getYear();
            if (year >= 2000 && year < 2200) {
                return CLOCK.format(at);
            }
        } catch (DateTimeException e) {
            // Sent without scripts, or by a clock that tells none.
        }
        return CLOCK.format(Instant.now());
    }
}
