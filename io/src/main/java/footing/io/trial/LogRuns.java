package footing.io.trial;

import footing.core.signal.AccelerationUnit;
import footing.core.signal.Finding;
import footing.core.signal.Log;
import footing.core.signal.Pull;
import footing.core.signal.Ride;
import footing.core.trial.TrialKind;
import footing.io.form.Found;
import footing.io.form.Problems;
import footing.io.form.Quantity;
import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;

/** Values of runs that were logged by an instrument. */
final class LogRuns {
    private final Beside beside;
    private final Measure measure;
    private final @Nullable String stated;
    private final Problems problems;
    private final List<StatedTrial.LogNote> notes = new ArrayList<>();

    /** {@code stated} is the unit the trial file states, null if it doesn't. */
    LogRuns(Beside beside, Measure measure, @Nullable String stated, Problems problems) {
        this.beside = beside;
        this.measure = measure;
        this.stated = stated;
        this.problems = problems;
    }

    /** True if a log holds what is judged. */
    boolean give() {
        return measure.quantity() == Quantity.FORCE || measure.quantity() == Quantity.ACCELERATION;
    }

    List<StatedTrial.LogNote> notes() {
        return notes;
    }

    /** The judged value of the log a run names; null if there is none, with what is wrong reported. */
    @Nullable
    Double value(int run, Found named) {
        String name = named.text();
        if (name == null) {
            return null;
        }
        LogFile.Read read = read(name, named);
        if (read == null) {
            return null;
        }
        String unit = read.unit() != null ? read.unit() : stated;
        return measure.kind() == TrialKind.PULL
                ? pull(run, read.log(), unit, named)
                : ride(run, read.log(), unit, named);
    }

    private LogFile.@Nullable Read read(String name, Found named) {
        Path path = beside.file(name);
        if (path == null) {
            problems.error(named.at(), name, "there is no such file beside the trial file", "check its name");
            return null;
        }
        Problems inLog = new Problems(name);
        try (Reader reader = Files.newBufferedReader(path, StandardCharsets.ISO_8859_1)) {
            LogFile.Read read = new LogFile(measure.kind() == TrialKind.PULL ? 1 : 3, inLog).read(reader);
            problems.addAll(inLog);
            return read;
        } catch (IOException e) {
            problems.error(named.at(), name, "this log can't be read", "check that it may be opened");
            return null;
        }
    }

    private @Nullable Double pull(int run, Log log, @Nullable String unit, Found named) {
        var force = unit == null ? null : Quantity.FORCE.unit(unit).orElse(null);
        if (force == null) {
            problems.error(
                    named.at(),
                    named.text() + "",
                    "the unit of its force isn't stated",
                    "try: logUnit: lbf at the top");
            return null;
        }
        Pull pull = Pull.of(log);
        note(run, named, pull.findings());
        if (measure == Measure.PEAK) {
            return force.toOwn(pull.peak());
        }
        Double steady = pull.steady();
        if (steady == null) {
            problems.error(
                    named.at(),
                    named.text() + "",
                    "the pull ends before the wheel slipped for a second",
                    "repeat the run, or judge: peak");
            return null;
        }
        return force.toOwn(steady);
    }

    private @Nullable Double ride(int run, Log log, @Nullable String unit, Found named) {
        AccelerationUnit taken = Arrays.stream(AccelerationUnit.values())
                .filter(u -> u.written().equals(unit))
                .findFirst()
                .orElse(null);
        AccelerationUnit first = taken == null ? AccelerationUnit.METERS_PER_SECOND_SQUARED : taken;
        Ride.Reading reading = Ride.of(log, first, OptionalInt.empty());
        if (taken == null && reading instanceof Ride.WrongUnit seen) {
            reading = Ride.of(log, seen.found().unit(), OptionalInt.empty());
        }
        if (reading instanceof Ride.Measured measured) {
            boolean unchecked = measured.ride().findings().contains(new Finding.UnitUnchecked());
            if (taken == null && unchecked) {
                error(
                        named,
                        "neither its unit is stated nor gravity in it to tell it by",
                        "try: logUnit: m/s2 at the top");
                return null;
            }
            note(run, named, measured.ride().findings());
            return axis(measured.ride());
        }
        refuse(reading, named);
        return null;
    }

    private double axis(Ride ride) {
        return switch (measure) {
            case FORE_AND_AFT -> ride.x().rms();
            case SIDEWAYS -> ride.y().rms();
            case ALL_AXES -> ride.total();
            default -> ride.z().rms();
        };
    }

    private void refuse(Ride.Reading reading, Found named) {
        if (reading instanceof Ride.WrongUnit wrong) {
            String mean =
                    footing.io.form.Written.number(Math.rint(100 * wrong.found().mean()) / 100);
            String seen = wrong.found().unit().written();
            error(named, "its values look like " + seen + ": gravity reads " + mean, "try: logUnit: " + seen);
        } else if (reading instanceof Ride.TooSlow slow) {
            error(
                    named,
                    "only " + Math.round(slow.rate()) + " samples a second",
                    "50 a second are the least; 100 are better");
        } else {
            error(named, "shorter than two seconds without a gap", "log the whole run");
        }
    }

    private void error(Found named, String message, String advice) {
        problems.error(named.at(), named.text() + "", message, advice);
    }

    private void note(int run, Found named, List<Finding> findings) {
        findings.forEach(f -> notes.add(new StatedTrial.LogNote(run, named.text() + "", f)));
    }
}
