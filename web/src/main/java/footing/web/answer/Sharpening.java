package footing.web.answer;

import footing.core.fleet.Case;
import footing.core.fleet.Key;
import footing.io.edit.CaseEdit;
import footing.io.edit.Edited;
import footing.io.form.Written;
import footing.io.words.Naming;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * A form of 'sharpen it' as it was sent.
 *
 * @param typed what stood in its boxes
 * @param what it changes, in words
 */
record Sharpening(Map<String, String> typed, String what, Function<String, Edited> change) {
    private static final String NOTHING = "nothing";

    /** The change a form asks for; empty if there is no such form. */
    static Optional<Sharpening> of(String form, Case stated, Map<String, String> sent) {
        Map<String, String> typed = new LinkedHashMap<>();
        sent.forEach((name, value) -> typed.put(name, value.strip()));
        return switch (form) {
            case "tax" -> Optional.of(tax(stated, typed));
            case "loan" -> Optional.of(loan(stated, typed));
            case "spare" -> spare(stated, typed);
            case "units" -> Optional.of(units(typed));
            default -> Optional.empty();
        };
    }

    Edited edit(String text) {
        return change.apply(text);
    }

    private static Sharpening tax(Case stated, Map<String, String> typed) {
        String rate = typed.getOrDefault("rate", "");
        if (rate.isEmpty()) {
            return without(typed, "no tax", "money.tax", stated.money().tax() != null);
        }
        Map<String, String> values = new LinkedHashMap<>();
        values.put("money.tax.rate", rate);
        values.put("money.tax.schedule", "[" + typed.getOrDefault("schedule", "") + "]");
        return new Sharpening(typed, "tax at " + rate, text -> CaseEdit.set(text, values));
    }

    private static Sharpening loan(Case stated, Map<String, String> typed) {
        String rate = typed.getOrDefault("rate", "");
        if (rate.isEmpty()) {
            return without(typed, "cash, no loan", "money.loan", stated.money().loan() != null);
        }
        Map<String, String> values = new LinkedHashMap<>();
        values.put("money.loan.rate", rate);
        values.put("money.loan.months", typed.getOrDefault("months", ""));
        if (!typed.getOrDefault("down", "").isEmpty()) {
            values.put("money.loan.down", typed.get("down"));
        }
        values.put("money.loan.for", typed.getOrDefault("for", "new").equals("all") ? "all" : "new");
        return new Sharpening(typed, "a loan at " + rate, text -> CaseEdit.set(text, values));
    }

    private static Sharpening without(Map<String, String> typed, String what, String path, boolean isStated) {
        return new Sharpening(
                typed, what, text -> isStated ? CaseEdit.remove(text, path) : CaseEdit.set(text, path + ".rate", ""));
    }

    private static Sharpening units(Map<String, String> typed) {
        String units = typed.getOrDefault("units", "us").equals("si") ? "si" : "us";
        return new Sharpening(typed, "units: " + units, text -> CaseEdit.set(text, "units", units));
    }

    /** A spare on the trailer takes its share of the flats; every other fix keeps its part of the rest. */
    private static Optional<Sharpening> spare(Case stated, Map<String, String> typed) {
        String crew = typed.getOrDefault("crew", NOTHING);
        Optional<Case.Crew> found =
                stated.crews().stream().filter(c -> c.id().equals(crew)).findFirst();
        if (found.isEmpty()) {
            return Optional.empty();
        }
        List<Case.Fix> fixes = found.get().fixes();
        String at = "crews." + crew + ".fixes[";
        double rest = 1 - share(typed.getOrDefault("share", ""));
        Map<String, String> values = new LinkedHashMap<>();
        for (int i = 0; i < fixes.size(); i++) {
            double before =
                    fixes.get(i).numbers().get(Key.FIX_SHARE).orElseThrow().likely();
            values.put(at + i + "].share", Written.number(100 * before * rest) + " %");
        }
        String cost = typed.getOrDefault("cost", "");
        values.put(
                at + fixes.size() + "]",
                "{name: " + SharpenView.SPARE_FIX + ", share: " + typed.getOrDefault("share", "") + ", delay: "
                        + typed.getOrDefault("delay", "") + (cost.isEmpty() ? "" : ", cost: " + cost) + "}");
        return Optional.of(new Sharpening(
                typed, "a spare on the trailer of " + Naming.crew(crew), text -> CaseEdit.set(text, values)));
    }

    /** A share as typed; 0 where it is none, which the reader of the case then refuses in its own words. */
    private static double share(String typed) {
        try {
            double percent = Double.parseDouble(typed.replace("%", "").strip());
            return percent > 0 && percent < 100 ? percent / 100 : 0;
        } catch (NumberFormatException e) {
            return 0;
        }
    }
}
