package footing.io.casefile;

import footing.core.fitting.Fit;
import footing.core.fitting.FitQuestion;
import footing.core.fitting.Fits;
import footing.core.fleet.Case;
import footing.core.fleet.Measures;
import footing.core.fleet.WheelPair;
import footing.io.form.Found;
import footing.io.form.Problems;
import footing.io.words.FitWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Leaves out what the measures say does not fit, so that it is never recommended. What nobody measured stays in: it may
 * fit, and the money answer is about what may.
 */
final class FittingChoice {
    private final Found machine;
    private final PackageRack packages;
    private final Problems problems;

    FittingChoice(Found machine, PackageRack packages, Problems problems) {
        this.machine = machine;
        this.packages = packages;
        this.problems = problems;
    }

    List<Case.WheelPackage> choose(Measures measures, Case.WheelPackage carries, List<Case.WheelPackage> considered) {
        List<Case.WheelPackage> kept = new ArrayList<>();
        List<String> open = new ArrayList<>();
        boolean asked = "fits".equals(machine.get("consider").text());
        for (Case.WheelPackage p : considered) {
            Optional<Fit> fit = fit(measures, carries, p);
            Fits verdict = fit.map(Fit::verdict).orElse(Fits.CHECK);
            boolean carried = p.id().equals(carries.id());
            if (verdict != Fits.DOES_NOT_FIT || carried) {
                kept.add(p);
            } else if (!asked) {
                warn(p.id(), "does not fit and is left out: " + why(fit), "see what 'footing fit' says of it");
            }
            if (asked && verdict == Fits.CHECK && !carried) {
                open.add(p.id());
            }
        }
        if (!open.isEmpty()) {
            warn(
                    "fits",
                    "not known to fit, and considered all the same: " + String.join(", ", open),
                    "'footing fit' names what would settle it");
        }
        return kept;
    }

    private static String why(Optional<Fit> fit) {
        return fit.stream()
                .flatMap(f -> f.findings().stream())
                .filter(f -> f.verdict() == Fits.DOES_NOT_FIT)
                .map(f -> new FitWords(false).brief(f))
                .findFirst()
                .orElse("");
    }

    private Optional<Fit> fit(Measures measures, Case.WheelPackage carries, Case.WheelPackage wanted) {
        for (Case.WheelPackage p : List.of(carries, wanted)) {
            for (String id : List.of(p.drive(), p.caster())) {
                Optional<Case.Assembly> assembly = packages.named(id);
                String treats = assembly.map(Case.Assembly::treats).orElse(null);
                if (assembly.isEmpty()
                        || (treats != null && packages.named(treats).isEmpty())) {
                    return Optional.empty();
                }
            }
        }
        String id = machine.text("id");
        return Optional.of(Fit.of(new FitQuestion(
                id == null ? "" : id,
                measures,
                WheelPair.of(carries, i -> packages.named(i).orElseThrow()),
                WheelPair.of(wanted, i -> packages.named(i).orElseThrow()))));
    }

    private void warn(String read, String message, String advice) {
        problems.warn(machine.get("consider").at(), read, message, advice);
    }
}
