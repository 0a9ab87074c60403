package footing.io.trial;

import footing.core.ground.PrintOutline;
import footing.core.trial.Bout;
import footing.core.trial.Condition;
import footing.core.trial.Conditions;
import footing.core.trial.Contender;
import footing.core.trial.Goal;
import footing.core.trial.Margin;
import footing.core.trial.Question;
import footing.core.trial.Run;
import footing.core.trial.Side;
import footing.core.trial.Trial;
import footing.core.trial.TrialKind;
import footing.io.form.Found;
import footing.io.form.MeasureForm;
import footing.io.form.Problems;
import footing.io.form.Quantity;
import footing.io.photo.PrintSeen;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Turns a checked file into a trial, and checks what only several values together can get wrong. */
final class TrialReader {
    private final Found file;
    private final Problems problems;
    private final TrialKind kind;
    private final Measure measure;
    private final LogRuns logs;
    private final PhotoRuns photos;
    private final PrintRuns prints;

    TrialReader(Found file, @Nullable Path folder, Problems problems) {
        this.file = file;
        this.problems = problems;
        kind = file.node() == null ? TrialKind.PULL : TrialForm.kindOf(file.node());
        measure = TrialForm.judged(file, kind);
        Beside beside = new Beside(folder);
        logs = new LogRuns(beside, measure, file.text("logUnit"), problems);
        photos = new PhotoRuns(file, kind, beside, problems);
        prints = new PrintRuns(file);
    }

    /** The trial; null if there is none, with what is wrong reported. */
    @Nullable
    StatedTrial read() {
        List<Found> items = file.get("runs").items();
        boolean bouts = items.stream().anyMatch(r -> r.has("winner"));
        List<Run> runs = new ArrayList<>();
        List<Bout> pulls = new ArrayList<>();
        for (int i = 0; i < items.size(); i++) {
            if (bouts) {
                pulls.add(bout(i + 1, items.get(i)));
            } else {
                Run run = run(i + 1, items.get(i));
                if (run != null) {
                    runs.add(run);
                }
            }
        }
        checkSurfaces(items);
        if (problems.hasErrors()) {
            return null;
        }
        Trial trial = new Trial(question(), contender("a"), contender("b"), runs, pulls);
        boolean metric = "si".equals(file.text("units"));
        String title = file.text("title");
        var evidence = new StatedTrial.Evidence(logs.notes(), photos.measured(), photos.doubts(), prints.all());
        return new StatedTrial(title == null ? "" : title, file.text("note"), metric, measure, trial, evidence);
    }

    private Question question() {
        String better = file.text("better");
        Goal goal = better == null ? measure.goal() : better.equals("more") ? Goal.MORE : Goal.LESS;
        List<String> held = new ArrayList<>();
        for (Found item : file.get("heldEqual").items()) {
            String text = item.text();
            if (text != null) {
                held.add(text);
            }
        }
        return new Question(kind, goal, margin(), held);
    }

    private Margin margin() {
        Found stated = file.get("margin");
        var node = stated.node();
        if (node == null) {
            return Margin.USUAL;
        }
        Double value = MarginForm.isShare(node) ? stated.share() : value(stated, measure);
        return value == null ? Margin.USUAL : new Margin(value, MarginForm.isShare(node) && !measure.isShare());
    }

    private Contender contender(String key) {
        Found side = file.get(key);
        String name = side.text("name");
        return new Contender(name == null ? key : name, conditions(side));
    }

    private @Nullable Run run(int order, Found run) {
        String side = run.text("side");
        if (side == null) {
            missing(run, "side", "missing; every run belongs to a or b", "try: side: a");
        }
        PrintSeen seen = kind == TrialKind.PRINT && run.has("photo") ? photos.print(order, run) : null;
        Double value = judged(order, run, seen);
        if (side == null || value == null) {
            return null;
        }
        if (kind == TrialKind.PRINT) {
            prints.take(run, seen);
        }
        return new Run(order, side(side), value, surface(run), run.text("lane"), conditions(run));
    }

    /** The judged value: as written, else of a log, else of a photo. */
    private @Nullable Double judged(int order, Found run, @Nullable PrintSeen seen) {
        if (run.has(measure.key())) {
            return value(run.get(measure.key()), measure);
        }
        if (run.has("log") && logs.give()) {
            return logs.value(order, run.get("log"));
        }
        if (run.has("photo")) {
            return kind == TrialKind.PIVOT ? photos.torn(order, run) : seen == null ? null : judged(seen);
        }
        String example = measure.key() + ": " + TrialForm.value(measure).example();
        missing(run, measure.key(), "missing; the trial judges " + measure.words(), "try: " + example);
        return null;
    }

    private @Nullable Double judged(PrintSeen seen) {
        PrintOutline print = seen.print();
        if (print == null) {
            return null;
        }
        return switch (measure) {
            case LONG -> print.length();
            case WIDE -> print.width();
            case SHAPE -> print.shape();
            default -> print.area();
        };
    }

    private Bout bout(int order, Found run) {
        String winner = run.text("winner");
        if (winner == null) {
            missing(run, "winner", "missing; the other runs are opposed pulls", "try: winner: even");
        }
        return new Bout(order, winner == null || winner.equals("even") ? null : side(winner), surface(run));
    }

    private void missing(Found run, String key, String message, String advice) {
        problems.error(run.at().key(run.at().line(), key), "", message, advice);
    }

    /** A surface on some runs only is one that was forgotten on the others. */
    private void checkSurfaces(List<Found> runs) {
        long with = runs.stream().filter(r -> r.has("surface")).count();
        if (with > 0 && with < runs.size()) {
            for (Found run : runs) {
                if (!run.has("surface")) {
                    missing(run, "surface", "missing; the other runs name theirs", "name it on every run or on none");
                }
            }
        }
    }

    private static Side side(String word) {
        return word.equals("a") ? Side.A : Side.B;
    }

    private static String surface(Found run) {
        String surface = run.text("surface");
        return surface == null ? "" : surface;
    }

    private static @Nullable Double value(Found at, Measure measure) {
        if (measure.isShare()) {
            return at.share();
        }
        return TrialForm.value(measure) instanceof MeasureForm form ? form.value(at.node()) : CountForm.read(at.node());
    }

    private static Conditions conditions(Found at) {
        Map<Condition, Double> measured = new EnumMap<>(Condition.class);
        put(
                measured,
                Condition.PRESSURE,
                MeasureForm.of(Quantity.PRESSURE).value(at.get("pressure").node()));
        put(measured, Condition.MOISTURE, at.get("moisture").share());
        put(
                measured,
                Condition.SPEED,
                MeasureForm.of(Quantity.SPEED).value(at.get("speed").node()));
        put(
                measured,
                Condition.MASS,
                MeasureForm.of(Quantity.MASS).value(at.get("mass").node()));
        put(
                measured,
                Condition.TREAD,
                MeasureForm.of(Quantity.LENGTH).value(at.get("tread").node()));
        Map<Condition, String> named = new EnumMap<>(Condition.class);
        put(named, Condition.OPERATOR, at.text("operator"));
        put(named, Condition.MACHINE, at.text("machine"));
        put(named, Condition.DIRECTION, at.text("direction"));
        put(named, Condition.DAY, at.text("day"));
        return new Conditions(measured, named);
    }

    private static <T> void put(Map<Condition, T> to, Condition condition, @Nullable T value) {
        if (value != null) {
            to.put(condition, value);
        }
    }
}
