package footing.io.proposal;

/** Invented fleets, made of the examples. */
final class Fleets {
    private static final String MOWER = "  - {id: mower, crew: me, hoursNow: 0, keepUntil: 2000,";

    private Fleets() {}

    private static String one(String from, String to) {
        String text = Printed.example("one-machine.yaml");
        if (!text.contains(from)) {
            throw new AssertionError("the example has no '" + from + "'");
        }
        return text.replace(from, to);
    }

    /** A machine with nothing to change to. */
    static String onePackage() {
        return one("carries: on-air}", "carries: on-air, consider: [on-air]}");
    }

    /** A machine that never goes flat and is traded before anything wears out. */
    static String nothingPays() {
        return one(MOWER, MOWER.replace("2000", "300")).replace("{low: 1, likely: 3, high: 6}, carries", "0, carries");
    }

    /** The example's crews with so many machines, alike but for their hours. */
    static String of(int machines) {
        String text = Printed.example("quillbrook.yaml");
        StringBuilder fleet = new StringBuilder(text.substring(0, text.indexOf("\nmachines:") + 11));
        for (int i = 1; i <= machines; i++) {
            fleet.append("  - {id: M")
                    .append(i)
                    .append(", kind: 60 in riding mower, crew: estates, hoursNow: ")
                    .append(7 * i)
                    .append(", keepUntil: 2100, hoursPerYear: 700, crewOutput: 0.5 %,")
                    .append(" flatsPerSeason: {low: 3, likely: 6, high: 11}, carries: air-24,")
                    .append(" consider: [air-24, air-24-s, sealant-24, airless-24]}\n");
        }
        return fleet.toString();
    }
}
