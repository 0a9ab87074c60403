package footing.cli;

import footing.core.quantity.Length;
import footing.io.form.Quantity;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Lengths on the command line: a number and its unit. */
final class Lengths {
    private static final Pattern WRITTEN = Pattern.compile("([-+]?\\d{1,4}(?:\\.\\d{1,6})?)\\s?([a-z]{1,2})");

    private Lengths() {}

    static Length read(String option, String text) throws BadInput {
        Matcher m = WRITTEN.matcher(text.strip());
        if (m.matches()) {
            var unit = Quantity.LENGTH.unit(m.group(2));
            if (unit.isPresent()) {
                return new Length(unit.get().toOwn(Double.parseDouble(m.group(1))));
            }
        }
        throw new BadInput(option + " '" + text.strip() + "': a length with its unit would fit ("
                + Quantity.LENGTH.unitNames() + ")\n   try: \"3.25 in\"");
    }
}
