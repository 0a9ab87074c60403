package footing.io.trial;

import static footing.io.form.Field.may;
import static footing.io.form.Field.must;

import footing.core.trial.TrialKind;
import footing.io.form.Field;
import footing.io.form.GroupForm;
import footing.io.form.MeasureForm;
import footing.io.form.Quantity;
import footing.io.form.TextForm;
import footing.io.form.WordForm;
import java.util.List;

/** Keys of trials whose runs may be photos: prints of tires, and torn turf. */
final class PhotoFields {
    private static final MeasureForm LENGTH = MeasureForm.of(Quantity.LENGTH);
    private static final MeasureForm LOAD = MeasureForm.of(Quantity.MASS);
    private static final GroupForm SIZE = GroupForm.of(must("width", LENGTH), must("height", LENGTH));
    static final PlacesForm CORNERS = new PlacesForm(4, true);
    /** Of a print. */
    static final PlacesForm BORDER = new PlacesForm(12, false);
    /** Of the ground to be judged. */
    static final PlacesForm GROUND = new PlacesForm(3, false);

    private PhotoFields() {}

    /** The card that gives the scale, alike on all photos of a trial. */
    static List<Field> ofFile(TrialKind kind) {
        return switch (kind) {
            case PRINT -> List.of(may("sheet", SIZE), may("card", SIZE), may("rolled", WordForm.of("short", "long")));
            case PIVOT ->
                List.of(may("frame", SIZE), may("ring", GroupForm.of(must("inner", LENGTH), must("outer", LENGTH))));
            default -> List.of();
        };
    }

    /** What a print is of, so that it can stand in a case. */
    static List<Field> ofSide(TrialKind kind) {
        return kind == TrialKind.PRINT
                ? List.of(may("assembly", TextForm.id("drive24-air")), may("atLoad", LOAD))
                : List.of();
    }

    static List<Field> ofRun(TrialKind kind) {
        TextForm photo = TextForm.text("photos/print-1.jpg");
        return switch (kind) {
            case PRINT ->
                List.of(may("photo", photo), may("corners", CORNERS), may("border", BORDER), may("atLoad", LOAD));
            case PIVOT ->
                List.of(
                        may("photo", photo),
                        may("corners", CORNERS),
                        may("border", GROUND),
                        may("photoBefore", photo),
                        may("cornersBefore", CORNERS),
                        may("borderBefore", GROUND));
            default -> List.of();
        };
    }
}
