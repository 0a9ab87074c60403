package footing.io.words;

import java.util.List;

/** What to mind where work can hurt someone. Common practice, no source, but where the operator's manual rules. */
public final class Cautions {
    /** In a sentence or two, beside any advice to change. */
    public static final String IN_SHORT =
            "Other wheels can change deck height, pitch and how a machine holds on a slope. Before lifting, mounting or"
                    + " inflating anything, follow the operator's manual: it comes before anything said here.";

    /** One by one, for whoever does the work. */
    public static final List<String> AT_WORK = List.of(
            "The operator's manual, the tire maker's sheet, local rules and the shop's own come before anything said"
                    + " here.",
            "Lift on firm level ground, chocked, on stands rated for the machine, at the points the manual names; key"
                    + " out, and mind the blades.",
            "A tire goes on a rim and is inflated only by somebody trained for it, never above what its sidewall"
                    + " allows: it can burst. Bent or cracked rims are scrap.",
            "Foam-filled and airless wheels can be heavy: two people, or a lift.",
            "Lug nuts by torque wrench to the manual's figure, and again after the first hours: a lost drive wheel can"
                    + " roll a machine over.",
            "Other wheels change the machine's height, deck and grip. Nothing here says that a slope is safe: stay"
                    + " within the manual's limit, and below it until the operator knows the machine on them.");

    private Cautions() {}

    /** True where an answer speaks of other wheels than a machine has. */
    public static boolean apply(List<Advice> machines) {
        return machines.stream().anyMatch(a -> a.verb().changes() || a.leansToChange());
    }
}
