package footing.io.interview;

import java.math.BigDecimal;

/** Writes the machines: one entry for each of those alike. */
final class MachinesText {
    private static final BigDecimal FEW = new BigDecimal("0.1");

    private static final String WORN = "guess: reckoned from the meter and the life of a set; ask when they were new";
    private final Given given;
    private final CaseLines lines;
    private final Packages packages;

    MachinesText(Given given, CaseLines lines, Packages packages) {
        this.given = given;
        this.lines = lines;
        this.packages = packages;
    }

    void write() {
        int alike = given.number("alike").intValueExact();
        lines.comment(0, "How many alike: " + alike + " (" + Remark.of(given, "alike") + ").");
        lines.line(0, "machines:");
        for (int i = 1; i <= alike; i++) {
            if (i > 1) {
                lines.comment(2, "Like m1: what is a guess there is a guess here. Put in what you know of this one.");
            }
            machine("m" + i, i == 1);
        }
    }

    private void machine(String id, boolean remarks) {
        CaseLines to = remarks ? lines : CaseLines.withoutRemarks();
        to.line(2, "- id: " + id);
        heading(to);
        hours(to);
        work(to);
        flats(to);
        ground(to);
        if (!remarks) {
            lines.add(to);
        }
    }

    private void heading(CaseLines to) {
        to.line(4, "kind: " + CaseLines.quoted(given.text("kind")), Remark.of(given, "kind"));
        to.line(4, "crew: " + CrewText.CREW);
        boolean order = given.is("owned", "order");
        if (order) {
            to.line(4, "new: true", Remark.of(given, "owned", "about to be bought"));
        }
        String on = given.text("driveKind") + " drives and " + given.text("casterKind") + " casters";
        boolean yours = given.isYours("driveKind") && given.isYours("casterKind");
        String carries = yours
                ? Remark.YOURS + ": " + on
                : on + "; " + Remark.of(given, given.isYours("driveKind") ? "casterKind" : "driveKind");
        to.line(4, "carries: " + packages.carried(), carries);
    }

    private void hours(CaseLines to) {
        boolean order = given.is("owned", "order");
        to.line(4, "hoursNow: " + given.text("hoursNow"), order ? "a new one" : owned());
        to.line(4, "keepUntil: " + given.text("keepUntil"), Remark.of(given, "keepUntil"));
        to.line(4, "hoursPerYear: " + given.text("hoursPerYear"), Remark.of(given, "hoursPerYear"));
        if (!order) {
            to.comment(4, "Hours on the sets.");
            to.line(4, "worn:");
            to.line(6, "drive: " + worn("drive"), WORN);
            to.line(6, "caster: " + worn("caster"), WORN);
        }
    }

    private String owned() {
        String hours = Remark.of(given, "hoursNow");
        return given.isYours("owned") ? hours : hours + "; that it is owned: " + Remark.of(given, "owned");
    }

    private String worn(String position) {
        double hours = given.number("hoursNow").doubleValue() % new Ground(given).hoursHere(position);
        return Plain.number(Math.floor(hours));
    }

    private void work(CaseLines to) {
        boolean yours = given.isYours("others");
        String share = Plain.share(CrewText.output(given));
        String words = switch (given.text("others")) {
            case "wait" -> "all wait";
            case "half" -> "about half gets done meanwhile";
            default -> "they keep going";
        };
        String meaning = yours
                ? words + " is yours; that this is " + share + " of the crew's mowing is a guess"
                : "share of the crew's mowing it does; " + Remark.of(given, "others");
        to.line(4, "crewOutput: " + share, meaning);
    }

    private void flats(CaseLines to) {
        BigDecimal likely = given.number("flats");
        boolean none = likely.compareTo(FEW) < 0;
        BigDecimal n = none ? new BigDecimal("0.5") : likely;
        String three =
                Plain.three(Plain.number(Plain.part(n, "0.5")), Plain.number(n), Plain.number(Plain.part(n, "2")));
        String whose = given.isYours("flats")
                ? Remark.YOURS + (none ? ": none last season, read as one in two seasons, since one proves little" : "")
                : Remark.of(given, "flats") + "; where it mows, " + given.text("where") + ": "
                        + Remark.of(given, "where");
        to.comment(
                4,
                "Flats of this one in a season on air tires: a good year, the usual, a bad year; half and twice the"
                        + " usual (" + Remark.PRACTICE + "; ask for more than one season).");
        to.line(4, "flatsPerSeason: " + three, whose);
        String end = switch (given.text("flatsEnd")) {
            case "drives" -> "{drive: 80 %, caster: 20 %}";
            case "casters" -> "{drive: 20 %, caster: 80 %}";
            default -> "{drive: 60 %, caster: 40 %}";
        };
        String whoseEnd =
                given.isYours("flatsEnd") ? "which end is yours; the shares are a guess" : Remark.of(given, "flatsEnd");
        to.line(given.isYours("flatsEnd"), 4, "flatsAt: " + end, whoseEnd);
    }

    private void ground(CaseLines to) {
        to.line(
                4,
                "groundWear: " + new Ground(given).wear() + " %",
                Remark.of(given, "pavement", "of every life left by pavement and curbs"));
    }
}
