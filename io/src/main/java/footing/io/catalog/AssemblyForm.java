package footing.io.catalog;

import static footing.io.form.Field.may;
import static footing.io.form.Field.must;

import footing.core.fleet.Case;
import footing.core.fleet.Key;
import footing.core.fleet.Kind;
import footing.core.fleet.Numbers;
import footing.core.fleet.Origin;
import footing.core.fleet.Place;
import footing.core.fleet.Position;
import footing.io.form.BodyFields;
import footing.io.form.Field;
import footing.io.form.Found;
import footing.io.form.GroupForm;
import footing.io.form.KeyFields;
import footing.io.form.NumberForm;
import footing.io.form.Problems;
import footing.io.form.TextForm;
import footing.io.form.Tie;
import footing.io.form.WordForm;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** One assembly as files state it: what stands under its id, and how it is read. */
public final class AssemblyForm {
    private static final Field TREATS = may("treats", TextForm.id("the id of an air assembly"));
    private static final Field TREAT_PRICE = may("treatPrice", new NumberForm(Key.TREAT_PRICE));

    private AssemblyForm() {}

    /** The keys of an assembly and others beside them. */
    public static GroupForm with(Field... others) {
        List<Field> fields = new ArrayList<>();
        fields.add(must("kind", WordForm.of(words(Kind.values()))));
        fields.add(must("position", WordForm.of(words(Position.values()))));
        fields.add(may("size", TextForm.text("24x12.00-12")));
        fields.add(TREATS);
        fields.addAll(KeyFields.of(Place.ASSEMBLY));
        fields.addAll(BodyFields.of(Place.ASSEMBLY));
        fields.addAll(List.of(others));
        return new GroupForm(fields, List.of(new Tie.Together(TREATS, TREAT_PRICE)));
    }

    /** The assembly; null if its kind or position can't be told. */
    public static Case.@Nullable Assembly read(String id, Found found, Origin origin) {
        Optional<Kind> kind = word(Kind.values(), found.text("kind"));
        Optional<Position> position = word(Position.values(), found.text("position"));
        if (kind.isEmpty() || position.isEmpty()) {
            return null;
        }
        Numbers numbers = found.numbers(Place.ASSEMBLY, origin);
        return new Case.Assembly(
                id,
                kind.get(),
                position.get(),
                found.text("size"),
                found.text("treats"),
                numbers,
                BodyFields.read(found, Place.ASSEMBLY, origin));
    }

    /** Whether what it says of treating makes sense beside the assembly it treats. */
    public static void checkTreats(
            Case.Assembly assembly, Case.@Nullable Assembly treated, Found found, Problems problems) {
        Found treats = found.get("treats");
        String id = treated == null ? "" : treated.id();
        if (assembly.treats() == null) {
            if (found.has("treatHours")) {
                problems.warn(found.get("treatHours").at(), "", "nothing is treated, so this changes nothing", "");
            }
        } else if (assembly.kind() != Kind.SEALANT && assembly.kind() != Kind.FOAM) {
            String message =
                    "a tire is treated in place with sealant or foam; this assembly is " + word(assembly.kind());
            problems.error(treats.at(), assembly.treats(), message, "leave treats and treatPrice out");
        } else if (treated != null && treated.id().equals(assembly.id())) {
            problems.error(treats.at(), id, "an assembly can't be made from itself", "name the air assembly");
        } else if (treated != null && treated.position() != assembly.position()) {
            String message =
                    "that is a " + word(treated.position()) + " assembly, this one a " + word(assembly.position());
            problems.error(treats.at(), id, message, "name an assembly of the same position");
        } else if (treated != null && !(treated.kind().holdsAir() && treated.kind() != assembly.kind())) {
            String message = word(assembly.kind()) + " can't be put into a tire that is " + word(treated.kind());
            problems.error(treats.at(), id, message, "name an air assembly");
        } else if (treated != null && sizesDiffer(assembly, treated)) {
            problems.warn(treats.at(), id, "that assembly has another size", "treating a tire doesn't change its size");
        }
    }

    private static boolean sizesDiffer(Case.Assembly one, Case.Assembly other) {
        return one.size() != null && other.size() != null && !one.size().equals(other.size());
    }

    /** A constant as files write it. */
    public static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }

    /** The constant a file means. */
    public static <E extends Enum<E>> Optional<E> word(E[] constants, @Nullable String text) {
        return Arrays.stream(constants).filter(c -> word(c).equals(text)).findFirst();
    }

    private static String[] words(Enum<?>[] constants) {
        return Arrays.stream(constants).map(AssemblyForm::word).toArray(String[]::new);
    }
}
