package footing.web.trial;

import footing.core.quantity.Length;
import footing.core.trial.TrialKind;
import footing.io.form.Quantity;
import footing.io.photo.Card;
import footing.io.photo.PrintAsked;
import footing.io.photo.SheetSize;
import footing.io.photo.TurfAsked;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Sizes of what lies on the photos of a trial, as one writes them. */
final class PhotoSizes {
    static final String ADVICE =
            "A size would fit, such as 11x8.5in, or letter, tabloid, a4, a3; with 'beside' behind it if it lies beside"
                    + " the print, and 'long' if the tire rolled along its long side.";
    static final String RING_ADVICE = "Two radii would fit, the smaller first, such as 2-9 in.";

    private static final Pattern RING =
            Pattern.compile(SheetSize.NUMBER + " ?(?:-|to) ?" + SheetSize.NUMBER + " ?([a-z]{1,2})");
    private static final Pattern TYPED = Pattern.compile("(.*?)( beside)?( long)?");

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
        Matcher m = TYPED.matcher(typed);
        if (!m.matches() || (m.end(1) < typed.length() && setup.kind() != TrialKind.PRINT)) {
            return Optional.empty();
        }
        boolean beside = m.group(2) != null;
        return SheetSize.read(m.group(1))
                .filter(s -> Card.isUsable(s.width()) && Card.isUsable(s.height()))
                .map(s -> new Card(s.width(), s.height(), beside ? Card.Place.BESIDE : Card.Place.UNDER));
    }

    /** How a tire rolled over what lies on its photo. */
    static PrintAsked.Rolling rolling(Setup setup) {
        return setup.card().endsWith(" long") ? PrintAsked.Rolling.LONG_SIDE : PrintAsked.Rolling.SHORT_SIDE;
    }

    /** Empty if none is stated, and if it is none that can be used. */
    static Optional<TurfAsked.Ring> ring(Setup setup) {
        Matcher m = RING.matcher(setup.ring());
        Quantity.Unit unit = m.matches() ? Quantity.LENGTH.unit(m.group(3)).orElse(null) : null;
        if (unit == null) {
            return Optional.empty();
        }
        Length inner = new Length(unit.toOwn(Double.parseDouble(m.group(1))));
        Length outer = new Length(unit.toOwn(Double.parseDouble(m.group(2))));
        return outer.meters() > inner.meters() && Card.isUsable(outer)
                ? Optional.of(new TurfAsked.Ring(inner, outer))
                : Optional.empty();
    }
}
