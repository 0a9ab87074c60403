package footing.web.bay;

import footing.core.fleet.Case;
import footing.core.fleet.Measure;
import footing.core.fleet.Origin;
import footing.core.fleet.Place;
import footing.core.fleet.Seat;
import footing.core.fleet.WheelFacts;
import footing.io.edit.MeasureEdit;
import footing.io.edit.Standing;
import footing.io.edit.TapeText;
import footing.io.words.MeasureWords;
import footing.web.answer.FieldView;
import java.util.Locale;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * Makes boxes for measures. What stands in the case file is shown as it is written there, to the last digit.
 *
 * @param si whether a bare number is in millimeters, kilograms and kilopascals
 */
record MeasureFields(Standing standing, boolean si) {
    private static final String UNKNOWN = "not measured";

    FieldView ofMachine(Case.Machine machine, Measure m) {
        String path = MeasureEdit.path(m, machine.id());
        OptionalDouble known = machine.measures().get(m);
        return field(path, m, known, "typical of its class, not measured");
    }

    FieldView ofWheel(WheelFacts wheel, Measure m) {
        String path = MeasureEdit.path(m, wheel.id());
        String from = wheel.isNominal(m)
                ? "by the size on its sidewall, not measured"
                : wheel.measures().origin(m) == Origin.TYPICAL
                        ? "typical, not measured"
                        : wheel.treats() == null ? "" : "as on " + wheel.treats();
        return field(path, m, wheel.get(m), from);
    }

    FieldView empty(String path, Measure m) {
        return field(path, m, "", UNKNOWN);
    }

    private FieldView field(String path, Measure m, OptionalDouble known, String from) {
        String file = standing.isGroup(path) ? path + ".load" : path;
        return standing.value(file)
                .map(written -> field(path, m, written, FieldView.YOURS))
                .orElseGet(() -> known.isEmpty()
                        ? empty(path, m)
                        : field(path, m, TapeText.written(m, known.getAsDouble(), si), from));
    }

    private FieldView field(String path, Measure m, String value, String provenance) {
        return FieldView.of(path, MeasureWords.label(m), TapeText.unit(m, si), value, MeasureWords.how(m), provenance);
    }

    FieldView size(Case.Assembly assembly) {
        String path = MeasureEdit.owner(Place.ASSEMBLY, assembly.id()) + ".size";
        String size = assembly.size() == null ? "" : assembly.size();
        return FieldView.of(
                path, "Size", "", size, "as on the sidewall, such as 24x12.00-12", provenance(!size.isEmpty()));
    }

    FieldView seat(Place place, String owner, @Nullable Seat seat) {
        String value = seat == null ? "" : seat.name().toLowerCase(Locale.ROOT);
        String path = MeasurePanel.seatPath(place, owner);
        String from = seat != null && !standing.has(path) ? "as on the wheel it is made of" : provenance(seat != null);
        return FieldView.of(path, "Seat of the lug nuts", "", value, "cone, flat or ball", from);
    }

    private static String provenance(boolean known) {
        return known ? FieldView.YOURS : UNKNOWN;
    }
}
