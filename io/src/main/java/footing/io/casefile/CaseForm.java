package footing.io.casefile;

import static footing.io.form.Field.may;
import static footing.io.form.Field.must;

import footing.core.fleet.Place;
import footing.io.catalog.AssemblyForm;
import footing.io.form.CurrencyForm;
import footing.io.form.DateForm;
import footing.io.form.DayForm;
import footing.io.form.Field;
import footing.io.form.FlagForm;
import footing.io.form.GroupForm;
import footing.io.form.KeyFields;
import footing.io.form.ListForm;
import footing.io.form.NamedForm;
import footing.io.form.ShareForm;
import footing.io.form.TextForm;
import footing.io.form.WordForm;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** What a case file holds, key by key. */
final class CaseForm {
    /** Far more than any contractor has; bounds what a damaged file can cost. */
    static final int MOST = 1000;

    private static final int MOST_TRIALS = 50;

    private static final TextForm TEXT = TextForm.text("a text");
    private static final GroupForm PREPARED =
            GroupForm.of(may("by", TEXT), may("for", TEXT), may("on", TextForm.text("March 1, 2027")));

    private static final Field LOAN = may("loan", group(Place.LOAN, may("for", WordForm.of("new", "all"))));
    private static final Field TAX = may("tax", group(Place.TAX, must("schedule", ListForm.of(new ShareForm(), MOST))));

    private static final GroupForm SEASON = GroupForm.of(must("start", new DayForm()), must("end", new DayForm()));

    private static final GroupForm FIX = group(
            Place.FIX,
            must("name", TextForm.text("plug on site")),
            may("replaces", WordForm.of("nothing", "tire")),
            may("sealable", new FlagForm()));

    private static final GroupForm FULL_WEEK =
            group(Place.FULL_WEEK, must("from", new DayForm()), must("to", new DayForm()));

    private static final GroupForm CREW = group(
            Place.CREW,
            may("fullWeeks", new ListForm(FULL_WEEK, 0, MOST, false)),
            must("fixes", ListForm.of(FIX, MOST)));

    private static final GroupForm PACKAGE = GroupForm.of(
            must("drive", TextForm.id("the id of a drive assembly")),
            must("caster", TextForm.id("the id of a caster assembly")));

    static final GroupForm CASE = GroupForm.of(
            must("format", WordForm.of(CaseFile.FORMAT)),
            must("title", TextForm.text("Before the spring order")),
            may("note", TEXT),
            may("prepared", PREPARED),
            must("asOf", new DateForm()),
            may("currency", new CurrencyForm()),
            may("units", WordForm.of("us", "si")),
            may("catalog", TextForm.text("starter")),
            may("money", group(Place.MONEY, LOAN, TAX)),
            may("season", SEASON),
            must("crews", named(CREW, "north")),
            may("assemblies", named(AssemblyForm.with(), "drive24-air")),
            must("packages", named(PACKAGE, "on-air")),
            must("machines", ListForm.of(MachineForm.MACHINE, MOST)),
            may("records", TextForm.text("records.csv")),
            may("trials", ListForm.distinct(TextForm.text("trials/pull.yaml"), MOST_TRIALS)));

    private CaseForm() {}

    /** The numeric keys of a place and others beside them. */
    static GroupForm group(Place place, Field... others) {
        List<Field> fields = new ArrayList<>(Arrays.asList(others));
        fields.addAll(KeyFields.of(place));
        return GroupForm.of(fields);
    }

    private static NamedForm named(GroupForm form, String example) {
        return new NamedForm(form, 1, MOST, TextForm.id(example));
    }
}
