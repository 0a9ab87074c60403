package footing.io.casefile;

import static footing.io.form.Field.may;
import static footing.io.form.Field.must;

import footing.core.fleet.Key;
import footing.core.fleet.Place;
import footing.io.form.BodyFields;
import footing.io.form.Field;
import footing.io.form.FlagForm;
import footing.io.form.GroupForm;
import footing.io.form.KeyFields;
import footing.io.form.ListForm;
import footing.io.form.NamedForm;
import footing.io.form.NumberForm;
import footing.io.form.ShapeForm;
import footing.io.form.TextForm;
import footing.io.form.Tie;
import footing.io.form.WordForm;
import java.util.ArrayList;
import java.util.List;

/** What a case file holds of one machine, key by key. */
final class MachineForm {
    private static final ListForm ASSEMBLIES = ListForm.distinct(TextForm.id("the id of an assembly"), CaseForm.MOST);
    private static final ShapeForm CONSIDER = new ShapeForm(
            WordForm.of("fits"),
            ListForm.distinct(TextForm.id("the id of a package"), CaseForm.MOST),
            GroupForm.of(must("drive", ASSEMBLIES), must("caster", ASSEMBLIES)));

    static final GroupForm MACHINE = new GroupForm(
            fields(),
            List.of(new Tie.OneOf(
                    may("flatsPerSeason", new NumberForm(Key.FLATS_PER_SEASON)),
                    may("flatsPer1000h", new NumberForm(Key.FLATS_PER_1000H)))));

    private MachineForm() {}

    private static List<Field> fields() {
        List<Field> fields = new ArrayList<>();
        fields.add(must("id", TextForm.id("E1")));
        fields.add(may("kind", TextForm.text("60 in riding mower")));
        fields.add(must("crew", TextForm.id("the id of a crew")));
        fields.add(must("carries", TextForm.id("the id of a package")));
        fields.add(may("new", new FlagForm()));
        fields.add(may("consider", CONSIDER));
        fields.add(may("when", ListForm.distinct(WordForm.of("now", "worn"), 2)));
        fields.add(may(
                "upcharge",
                new NamedForm(new NumberForm(Key.UPCHARGE), 0, CaseForm.MOST, TextForm.id("the id of a package"))));
        fields.addAll(KeyFields.of(Place.MACHINE));
        fields.addAll(BodyFields.of(Place.MACHINE));
        return fields;
    }
}
