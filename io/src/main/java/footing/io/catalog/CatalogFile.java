package footing.io.catalog;

import static footing.io.form.Field.may;
import static footing.io.form.Field.must;

import footing.core.chance.Spread;
import footing.core.fleet.Case;
import footing.core.fleet.Key;
import footing.core.fleet.Measure;
import footing.core.fleet.Origin;
import footing.core.fleet.Place;
import footing.io.form.At;
import footing.io.form.BodyFields;
import footing.io.form.CurrencyForm;
import footing.io.form.DateForm;
import footing.io.form.Field;
import footing.io.form.FileText;
import footing.io.form.Found;
import footing.io.form.GroupForm;
import footing.io.form.ListForm;
import footing.io.form.NamedForm;
import footing.io.form.Node;
import footing.io.form.NumberForm;
import footing.io.form.Problems;
import footing.io.form.TextForm;
import footing.io.form.WordForm;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Reads a catalog: YAML or JSON of the format {@value #FORMAT}. */
public final class CatalogFile {
    public static final String FORMAT = "footing-catalog/1";
    static final int MOST = 2000;

    private static final Field DATE = may("date", new DateForm());
    private static final Field BASIS = may("basis", WordForm.of("typical", "quoted"));

    private static final GroupForm MACHINE_CLASS = machineClass();

    /** What a catalog holds; date and basis stand for all articles that state none of their own. */
    public static final GroupForm FORM = GroupForm.of(
            must("format", WordForm.of(FORMAT)),
            must("title", TextForm.text("Spring price list")),
            may("note", TextForm.text("as quoted by phone")),
            may("currency", new CurrencyForm()),
            must("date", DATE.form()),
            must("basis", BASIS.form()),
            may(
                    "assemblies",
                    new NamedForm(
                            AssemblyForm.with(DATE, BASIS, may("note", TextForm.text("pair price halved"))),
                            1,
                            MOST,
                            TextForm.id("drive24-air"))),
            may("classes", new NamedForm(MACHINE_CLASS, 1, MOST, TextForm.id("rider-60"))));

    private CatalogFile() {}

    private static GroupForm machineClass() {
        List<Field> fields = new ArrayList<>(List.of(
                must("name", TextForm.text("60 in riding mower")),
                must("drive", ListForm.distinct(TextForm.text("24x12.00-12"), MOST)),
                must("caster", ListForm.distinct(TextForm.text("13x6.50-6"), MOST)),
                must("hoursPerYear", new NumberForm(Key.HOURS_PER_YEAR)),
                must("keepUntil", new NumberForm(Key.KEEP_UNTIL)),
                may("note", TextForm.text("common practice, no source"))));
        fields.addAll(
                BodyFields.of(Measure.MACHINE_MASS, Measure.OPERATOR_MASS, Measure.FRONT_SHARE, Measure.TOP_SPEED));
        return GroupForm.of(fields);
    }

    /** The catalog in a text, as far as it could be read; what is wrong is reported. */
    public static Catalog read(String text, Problems problems) {
        Node root = FileText.tree(text, problems);
        if (root == null) {
            return Catalog.NONE;
        }
        FORM.check(root, At.TOP, problems);
        if (problems.isTooLarge()) {
            return Catalog.NONE;
        }
        Found found = new Found(root, At.TOP);
        Map<String, Catalog.Article> articles = articles(found, problems);
        checkTreats(found, articles, problems);
        String title = found.text("title");
        String currency = found.text("currency");
        return new Catalog(title == null ? "" : title, currency == null ? "USD" : currency, articles, classes(found));
    }

    private static Map<String, Catalog.Article> articles(Found found, Problems problems) {
        Map<String, Catalog.Article> articles = new LinkedHashMap<>();
        found.get("assemblies").named().forEach((id, part) -> {
            String basis = part.has("basis") ? part.text("basis") : found.text("basis");
            LocalDate date = part.has("date") ? part.date("date") : found.date("date");
            boolean quoted = "quoted".equals(basis);
            Case.Assembly assembly = AssemblyForm.read(id, part, quoted ? Origin.STATED : Origin.TYPICAL);
            if (assembly != null && date != null) {
                AssemblyGeometry.check(assembly, part, problems);
                articles.put(id, new Catalog.Article(assembly, date, quoted));
            }
        });
        return articles;
    }

    private static void checkTreats(Found found, Map<String, Catalog.Article> articles, Problems problems) {
        Map<String, Found> parts = found.get("assemblies").named();
        parts.forEach((id, part) -> {
            String treats = part.text("treats");
            if (treats != null && !parts.containsKey(treats)) {
                problems.unknown(part.get("treats").at(), treats, "no assembly of this catalog", parts.keySet());
            }
            Catalog.Article article = articles.get(id);
            if (article != null) {
                AssemblyForm.checkTreats(article.assembly(), assembly(articles, treats), part, problems);
            }
        });
    }

    private static Case.@Nullable Assembly assembly(Map<String, Catalog.Article> articles, @Nullable String id) {
        Catalog.Article article = id == null ? null : articles.get(id);
        return article == null ? null : article.assembly();
    }

    private static Map<String, Catalog.MachineClass> classes(Found found) {
        Map<String, Catalog.MachineClass> classes = new LinkedHashMap<>();
        found.get("classes").named().forEach((id, part) -> {
            String name = part.text("name");
            Spread hours = part.get("hoursPerYear").number(Key.HOURS_PER_YEAR);
            Spread keep = part.get("keepUntil").number(Key.KEEP_UNTIL);
            if (name != null && hours != null && keep != null) {
                classes.put(
                        id,
                        new Catalog.MachineClass(
                                id,
                                name,
                                texts(part.get("drive")),
                                texts(part.get("caster")),
                                hours.likely(),
                                keep.likely(),
                                BodyFields.read(part, Place.MACHINE, Origin.TYPICAL)));
            }
        });
        return classes;
    }

    private static List<String> texts(Found list) {
        return list.items().stream()
                .map(Found::text)
                .filter(java.util.Objects::nonNull)
                .toList();
    }
}
