package footing.web.answer;

import footing.core.fleet.Case;
import footing.core.fleet.Dimension;
import footing.core.fleet.Key;
import footing.io.form.Written;
import footing.io.words.Naming;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What sharpens an answer beyond the usual questions: tax, cash or a note, spare wheels; and the units.
 *
 * @param values what stands in each box, by form and name, such as {@code tax.rate}
 * @param faults what is wrong with a form as it was sent, by form
 */
record SharpenView(
        boolean taxed,
        boolean loaned,
        boolean si,
        List<Spare> spares,
        Map<String, String> values,
        Map<String, List<String>> faults) {
    static final String SPARE_FIX = "swap in the spare";

    /** A crew, and whether it is stated to carry a spare. */
    record Spare(String crew, boolean carried) {
        public String name() {
            return Naming.crew(crew);
        }
    }

    static SharpenView of(Case stated, @Nullable String machine) {
        Case.Tax tax = stated.money().tax();
        Case.Loan loan = stated.money().loan();
        Map<String, String> values = new java.util.LinkedHashMap<>();
        if (tax != null) {
            tax.numbers().get(Key.TAX_RATE).ifPresent(r -> values.put("tax.rate", share(r.likely())));
            values.put(
                    "tax.schedule",
                    tax.schedule().stream().map(SharpenView::share).collect(Collectors.joining(", ")));
        }
        if (loan != null) {
            loan.numbers().get(Key.LOAN_RATE).ifPresent(r -> values.put("loan.rate", share(r.likely())));
            loan.numbers().get(Key.LOAN_MONTHS).ifPresent(r -> values.put("loan.months", Written.number(r.likely())));
            loan.numbers().get(Key.LOAN_DOWN).ifPresent(r -> values.put("loan.down", share(r.likely())));
            values.put("loan.for", loan.newOnly() ? "new" : "all");
        }
        return new SharpenView(
                tax != null, loan != null, stated.heading().si(), spares(stated, machine), values, Map.of());
    }

    private static List<Spare> spares(Case stated, @Nullable String machine) {
        return stated.crews().stream()
                .filter(c -> machine == null || stated.machine(machine).crew().equals(c.id()))
                .map(c -> new Spare(
                        c.id(), c.fixes().stream().anyMatch(f -> f.name().equals(SPARE_FIX))))
                .toList();
    }

    private static String share(double x) {
        return Written.value(Dimension.SHARE, x);
    }

    /** The same with a form as it was sent. */
    SharpenView refused(String form, Map<String, String> typed, List<String> wrong) {
        Map<String, String> all = new java.util.LinkedHashMap<>(values);
        typed.forEach((name, value) -> all.put(form + "." + name, value));
        return new SharpenView(taxed, loaned, si, spares, all, Map.of(form, wrong));
    }

    public String value(String name) {
        return values.getOrDefault(name, "");
    }

    public List<String> wrong(String form) {
        return faults.getOrDefault(form, List.of());
    }
}
