package footing.web.trial;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A run as it was written down, in words.
 *
 * @param gave what it gave, with its unit, and what was noted beside it
 * @param look what to look at; empty if nothing
 */
record RunLine(String sentAs, String run, String gave, String look, boolean undone) {
    private static final Set<String> OF_THE_PLAN = Set.of("side", "surface", "lane", "direction");

    /** In the order in which they were made. */
    static List<RunLine> of(Setup setup, List<WrittenRun> runs) {
        Map<String, Planned> plan = new LinkedHashMap<>();
        Planned.of(setup).forEach(p -> plan.put(p.place(), p));
        Map<String, Long> times = runs.stream()
                .filter(r -> !r.undone())
                .collect(Collectors.groupingBy(WrittenRun::place, Collectors.counting()));
        Set<Integer> before = new LinkedHashSet<>();
        List<RunLine> lines = new ArrayList<>();
        for (WrittenRun run : runs) {
            Planned planned = plan.get(run.place());
            String look = look(run, planned, times, before);
            if (planned != null && !run.undone()) {
                before.add(planned.number());
            }
            lines.add(new RunLine(run.sentAs(), run(run, planned), gave(setup, run), look, run.undone()));
        }
        return lines;
    }

    static String run(WrittenRun run, @org.jspecify.annotations.Nullable Planned planned) {
        return planned == null ? "Run " + run.place() : planned.words();
    }

    /** 'airless won' or '462 lbf, moisture 18 %'. */
    static String gave(Setup setup, WrittenRun run) {
        String value = run.cells().getOrDefault(setup.judge(), "");
        String first = !setup.opposed()
                ? value
                : value.equals("even")
                        ? "even"
                        : (value.equals("a") ? setup.a() : setup.b()).getOrDefault("name", "") + " won";
        StringBuilder gave = new StringBuilder(first);
        run.cells().forEach((key, text) -> {
            if (!OF_THE_PLAN.contains(key) && !key.equals(setup.judge())) {
                gave.append(", ").append(key.equals("note") ? "" : key + " ").append(text);
            }
        });
        return gave.toString();
    }

    private static String look(
            WrittenRun run,
            @org.jspecify.annotations.Nullable Planned planned,
            Map<String, Long> times,
            Set<Integer> before) {
        if (run.undone() || planned == null) {
            return "";
        }
        if (times.getOrDefault(run.place(), 0L) > 1) {
            return "written down more than once: take one back";
        }
        int last = before.stream().max(Comparator.naturalOrder()).orElse(0);
        return planned.number() < last ? "made later than its place in the order" : "";
    }
}
