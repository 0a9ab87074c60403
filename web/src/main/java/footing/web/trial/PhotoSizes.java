package footing.web.trial;

import footing.core.quantity.Length;
import footing.core.trial.TrialKind;
import footing.io.form.Quantity;
import footing.io.photo.Card;
import footing.io.photo.TurfAsked;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Sizes of what lies on the photos of a trial, as one writes them. */
final class PhotoSizes {
    static final String ADVICE =
            "A size would fit, such as 11x8.5in, or letter, tabloid, a4, a3; with 'beside' behind it if it lies beside"
                    + " the print.";
    static final String RING_ADVICE = "Two radii would fit, the smaller first, such as 2-9 in.";

    private static final String NUMBER = "(\\d{1,4}(?:\\.\\d{1,4})?)";
    private static final Pattern SIZE = Pattern.compile(NUMBER + " ?[x×] ?" + NUMBER + " ?([a-z]{1,2})");
    private static final Pattern RING = Pattern.compile(NUMBER + " ?(?:-|to) ?" + NUMBER + " ?([a-z]{1,2})");
    private static final String BESIDE = " beside";
    private static final Map<String, String> SHEETS =
            Map.of("letter", "11x8.5in", "tabloid", "17x11in", "a4", "297x210mm", "a3", "420x297mm");

    private PhotoSizes() {}

    /** Where none is stated: a letter or A4 sheet under the print, a frame of two feet or 60 cm around the turf. */
    static String usual(TrialKind kind, boolean metric) {
        if (kind == TrialKind.PIVOT) {
            return metric ? "60x60cm" : "24x24in";
        }
        return metric ? "a4" : "letter";
    }

    /** Empty if it is no size that can be used. */
    static Optional<Card> card(Setup setup) {
        String typed = setup.card().isEmpty() ? usual(setup.kind(), setup.metric()) : setup.card();
        boolean beside = typed.endsWith(BESIDE) && setup.kind() == TrialKind.PRINT;
        String size =
                beside ? typed.substring(0, typed.length() - BESIDE.length()).strip() : typed;
        Matcher m = SIZE.matcher(SHEETS.getOrDefault(size, size));
        return lengths(m)
                .filter(l -> Card.isUsable(l[0]) && Card.isUsable(l[1]))
                .map(l -> new Card(l[0], l[1], beside ? Card.Place.BESIDE : Card.Place.UNDER));
    }

    /** Empty if none is stated, and if it is none that can be used. */
    static Optional<TurfAsked.Ring> ring(Setup setup) {
        return lengths(RING.matcher(setup.ring()))
                .filter(l -> l[1].meters() > l[0].meters() && Card.isUsable(l[1]))
                .map(l -> new TurfAsked.Ring(l[0], l[1]));
    }

    private static Optional<Length[]> lengths(Matcher m) {
        if (!m.matches()) {
            return Optional.empty();
        }
        return Quantity.LENGTH.unit(m.group(3)).map(u -> new Length[] {
            new Length(u.toOwn(Double.parseDouble(m.group(1)))), new Length(u.toOwn(Double.parseDouble(m.group(2))))
        });
    }
}
