package footing.web.trial;

import footing.core.trial.PlanAdvice;
import footing.core.trial.Power;
import footing.core.trial.TrialKind;
import footing.io.form.Problem;
import footing.io.trial.Measure;
import footing.io.trial.TrialReading;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The form that begins a trial: what it states, or what is wrong with it by the names of its boxes. */
final class StartForm {
    static final int MOST_RUNS = 400;

    private static final int LONGEST = 200;
    private static final int USUAL_PULLS = 9;
    private static final Pattern BARE = Pattern.compile("\\d{1,6}(?:\\.\\d{1,6})?");
    private static final Pattern SHARE = Pattern.compile("(\\d{1,2}(?:\\.\\d{1,6})?) ?%");
    private static final Pattern COUNT = Pattern.compile("\\d{1,3}");
    private static final List<String> OF_A_SIDE = List.of("name", "machine", "pressure", "mass", "operator");

    private final Map<String, String> form;
    private final boolean metric;
    private final Map<String, String> faults = new LinkedHashMap<>();

    private StartForm(Map<String, String> form, boolean metric) {
        this.form = form;
        this.metric = metric;
    }

    /**
     * What came of a form.
     *
     * @param setup what it states, as far as it can be read
     * @param faults what is wrong, by the name of the box; empty if it can begin
     */
    record Stated(Setup setup, Map<String, String> faults) {}

    static Stated read(Map<String, String> form, boolean metric, long seed) {
        StartForm typed = new StartForm(form, metric);
        Setup setup = typed.setup(seed);
        typed.check(setup);
        return new Stated(setup, typed.faults);
    }

    private Setup setup(long seed) {
        String judge = text("judge");
        if (Setup.measured(judge).isEmpty() && !judge.equals(Setup.OPPOSED)) {
            faults.put("judge", "Choose what each run gives.");
        }
        Map<String, String> a = side("a");
        Map<String, String> b = side("b");
        String margin = BARE.matcher(text("margin")).matches() ? text("margin") + " %" : text("margin");
        List<String> surfaces = parts("surfaces");
        Setup setup = new Setup(
                judge,
                metric,
                title(judge, a, b),
                a,
                b,
                margin,
                parts("held"),
                surfaces.isEmpty() ? List.of("") : surfaces,
                1,
                seed,
                LocalDate.now(ZoneId.systemDefault()).toString(),
                text("card"),
                text("ring"));
        return setup.withPairs(pairs(setup));
    }

    private String title(String judge, Map<String, String> a, Map<String, String> b) {
        String what = Setup.measured(judge)
                .map(Measure::words)
                .map(footing.io.words.Lists::capital)
                .orElse("Opposed pulls");
        String own = text("title");
        return own.isEmpty()
                ? what + ", " + a.getOrDefault("name", "") + " against " + b.getOrDefault("name", "")
                : own;
    }

    private Map<String, String> side(String key) {
        Map<String, String> side = new LinkedHashMap<>();
        for (String field : OF_A_SIDE) {
            String typed = text(key + "." + field);
            if (BARE.matcher(typed).matches() && field.equals("pressure")) {
                typed += metric ? " kPa" : " psi";
            } else if (BARE.matcher(typed).matches() && field.equals("mass")) {
                typed += metric ? " kg" : " lb";
            }
            if (!typed.isEmpty()) {
                side.put(field, typed);
            }
        }
        return side;
    }

    private int pairs(Setup setup) {
        String typed = text("pairs");
        int pairs = typed.isEmpty() ? advised(setup) : COUNT.matcher(typed).matches() ? Integer.parseInt(typed) : 0;
        int most = MOST_RUNS / 2 / setup.surfaces().size();
        if (pairs < 1 || pairs > most) {
            faults.put("pairs", "From 1 to " + most + " pairs on each surface would fit.");
            return 1;
        }
        return pairs;
    }

    /** As many as the margin needs where single runs scatter as is usual. */
    static int advised(Setup setup) {
        if (setup.opposed()) {
            return USUAL_PULLS;
        }
        Matcher m = SHARE.matcher(setup.margin().isEmpty() ? "10 %" : setup.margin());
        double margin = m.matches() ? Double.parseDouble(m.group(1)) / 100 : 0.1;
        TrialKind kind = setup.kind();
        int pairs = margin > 0 ? PlanAdvice.fromRuns(margin, kind.usualSpread()).pairs() : Power.MOST_PAIRS;
        return Math.min(pairs, MOST_RUNS / 2 / setup.surfaces().size());
    }

    private List<String> parts(String name) {
        List<String> parts = new ArrayList<>();
        Arrays.stream(text(name).split(",", -1))
                .map(String::strip)
                .filter(s -> !s.isEmpty())
                .distinct()
                .limit(20)
                .forEach(parts::add);
        return parts;
    }

    private void check(Setup setup) {
        for (String side : List.of("a", "b")) {
            if (text(side + ".name").isEmpty()) {
                faults.put(side + ".name", "Name what is compared.");
            }
        }
        if (faults.isEmpty() && text("a.name").equals(text("b.name"))) {
            faults.put("b.name", "The two things need names that differ.");
        }
        if (setup.hasPhotos()
                && !setup.card().isEmpty()
                && PhotoSizes.card(setup).isEmpty()) {
            faults.put("card", PhotoSizes.ADVICE);
        }
        if (setup.hasPhotos()
                && !setup.ring().isEmpty()
                && PhotoSizes.ring(setup).isEmpty()) {
            faults.put("ring", PhotoSizes.RING_ADVICE);
        }
        if (faults.isEmpty()) {
            readAsFile(setup);
        }
    }

    /** With a made-up run of each surface and side, the file's reader says what is wrong with the rest. */
    private void readAsFile(Setup setup) {
        String unit = setup.unit();
        String value = unit.isEmpty() ? "1" : "1 " + unit;
        List<Map<String, String>> runs = new ArrayList<>();
        for (Planned run : Planned.of(setup).stream().limit(MOST_RUNS).toList()) {
            Map<String, String> cells = run.cells();
            cells.put(setup.judge(), setup.opposed() ? "even" : value);
            runs.add(cells);
        }
        if (TrialText.of(setup, runs).read() instanceof TrialReading.Refused refused) {
            for (Problem problem : refused.problems()) {
                String box = problem.path().startsWith("runs")
                        ? "surfaces"
                        : problem.path().startsWith("heldEqual") ? "held" : problem.path();
                faults.putIfAbsent(box, footing.io.words.Lists.capital(problem.said()) + ".");
            }
        }
    }

    private String text(String name) {
        return clean(form.getOrDefault(name, ""));
    }

    /** On one line, without blanks around it, and of a bearable length. */
    static String clean(String typed) {
        String line = typed.replaceAll("\\p{Cntrl}+", " ").strip();
        return line.length() > LONGEST ? line.substring(0, LONGEST) : line;
    }
}
