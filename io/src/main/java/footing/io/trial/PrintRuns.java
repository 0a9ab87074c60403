package footing.io.trial;

import footing.core.ground.Print;
import footing.core.ground.PrintOutline;
import footing.core.ground.SuperEllipse;
import footing.core.ground.TakenPrint;
import footing.core.quantity.Area;
import footing.core.quantity.Length;
import footing.core.quantity.Mass;
import footing.core.quantity.Pressure;
import footing.io.form.Found;
import footing.io.form.MeasureForm;
import footing.io.form.Quantity;
import footing.io.photo.PrintSeen;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Prints that runs measured in full, for the ground: by rule (length and width, with the area or the exponent), or on a
 * photo without doubt. A value written in a run counts before one read off its photo.
 */
final class PrintRuns {
    private final Found file;
    private final List<TakenPrint> prints = new ArrayList<>();

    PrintRuns(Found file) {
        this.file = file;
    }

    List<TakenPrint> all() {
        return prints;
    }

    /** Keeps the print of a run, if it was measured in full. */
    void take(Found run, @Nullable PrintSeen seen) {
        PrintOutline photo = seen != null && seen.isSure() ? seen.print() : null;
        Found side = file.get(run.text("side") + "");
        String assembly = side.has("assembly") ? side.text("assembly") : side.text("name");
        TakenPrint.Outline outline = outline(run, photo);
        if (assembly == null || outline == null) {
            return;
        }
        Double load = either(run, side, "atLoad", Quantity.MASS);
        Double inflation = either(run, side, "pressure", Quantity.PRESSURE);
        String day = run.has("day") ? run.text("day") : side.text("day");
        String title = file.text("title");
        prints.add(new TakenPrint(
                assembly,
                outline,
                load == null ? null : new Mass(load),
                inflation == null ? null : new Pressure(inflation),
                new TakenPrint.Taken(title == null ? "" : title, day == null ? "" : day)));
    }

    private static TakenPrint.@Nullable Outline outline(Found run, @Nullable PrintOutline photo) {
        Double length = own(run, Measure.LONG, photo == null ? null : photo.length());
        Double width = own(run, Measure.WIDE, photo == null ? null : photo.width());
        if (length == null || width == null) {
            return null;
        }
        Double area = own(run, Measure.AREA, null);
        if (area == null && run.has(Measure.SHAPE.key())) {
            Double shape = CountForm.read(run.get(Measure.SHAPE.key()).node());
            area = shape == null || !(shape >= 1) ? null : SuperEllipse.area(length, width, shape);
        } else if (area == null && photo != null) {
            area = photo.area();
        }
        double covered = area == null ? SuperEllipse.area(length, width, Print.USUAL_SHAPE) : area;
        return new TakenPrint.Outline(new Length(length), new Length(width), new Area(covered));
    }

    private static @Nullable Double own(Found run, Measure measure, @Nullable Double otherwise) {
        Quantity quantity = measure.quantity();
        Double stated = quantity == null
                ? null
                : MeasureForm.of(quantity).value(run.get(measure.key()).node());
        return stated == null ? otherwise : stated;
    }

    private static @Nullable Double either(Found run, Found side, String key, Quantity quantity) {
        Found at = run.has(key) ? run : side;
        return MeasureForm.of(quantity).value(at.get(key).node());
    }
}
