package footing.core.fleet;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What wheels are called wherever somebody reads of them: by what they are, not by the id they have in the file. The size
 * is told only where another one in question is of the same kind, the id only where even that tells nothing.
 */
public final class Called {
    private final Case stated;
    private final List<Case.Assembly> inQuestion;

    private Called(Case stated, List<Case.Assembly> inQuestion) {
        this.stated = stated;
        this.inQuestion = inQuestion;
    }

    /** Told apart from all assemblies of a case. */
    public static Called in(Case stated) {
        return new Called(stated, stated.assemblies());
    }

    /** Told apart from some of them only, such as those that may go on one machine. */
    public static Called among(Case stated, Collection<String> ids) {
        return new Called(
                stated,
                stated.assemblies().stream().filter(a -> ids.contains(a.id())).toList());
    }

    /** 'airless drives', '24x12.00-12 air drives', 'air drives (spare-air)'; the id itself if nothing has it. */
    public String assembly(String id) {
        return find(id).map(this::apart).orElse(id);
    }

    /** With the size wherever it is stated: 'air drives, 24x12.00-12'. */
    public String withSize(String id) {
        return find(id).map(this::sized).orElse(id);
    }

    /** 'airless drives and solid casters'; the id itself if no package has it. */
    public String wheels(String packageId) {
        Stream<Case.WheelPackage> ofMachines =
                stated.machines().stream().flatMap(m -> Stream.concat(Stream.of(m.carries()), m.consider().stream()));
        return Stream.concat(stated.packages().stream(), ofMachines)
                .filter(p -> p.id().equals(packageId))
                .findFirst()
                .map(p -> both(p.drive(), p.caster()))
                .orElse(packageId);
    }

    /** The wheels of a package by its two assemblies. */
    public String both(String drive, String caster) {
        return assembly(drive) + " and " + assembly(caster);
    }

    private Optional<Case.Assembly> find(String id) {
        return stated.assemblies().stream().filter(a -> a.id().equals(id)).findFirst();
    }

    private String apart(Case.Assembly a) {
        List<Case.Assembly> alike =
                inQuestion.stream().filter(b -> plain(b).equals(plain(a))).toList();
        if (alike.size() < 2) {
            return plain(a);
        }
        return sharesSize(a, alike) ? plain(a) + " (" + a.id() + ")" : a.size() + " " + plain(a);
    }

    private String sized(Case.Assembly a) {
        String words = plain(a) + (a.size() == null ? "" : ", " + a.size());
        List<Case.Assembly> alike =
                inQuestion.stream().filter(b -> plain(b).equals(plain(a))).toList();
        return alike.size() > 1 && sharesSize(a, alike) ? words + " (" + a.id() + ")" : words;
    }

    private static boolean sharesSize(Case.Assembly a, List<Case.Assembly> alike) {
        String size = a.size();
        return size == null || alike.stream().filter(b -> size.equals(b.size())).count() > 1;
    }

    private static String plain(Case.Assembly a) {
        return kind(a.kind()) + (a.position() == Position.DRIVE ? " drives" : " casters");
    }

    /** The kind as an adjective. */
    public static String kind(Kind kind) {
        return switch (kind) {
            case AIR -> "air";
            case SEALANT -> "sealant";
            case FOAM -> "foam-filled";
            case SOLID -> "solid";
            case AIRLESS -> "airless";
        };
    }
}
