package footing.io.interview;

import java.math.BigDecimal;

/** Writes the crew. */
final class CrewText {
    static final String CREW = "crew";

    private final Given given;
    private final CaseLines lines;

    CrewText(Given given, CaseLines lines) {
        this.given = given;
        this.lines = lines;
    }

    /** What a crew-hour of mowing brings. */
    static double billing(Given given) {
        double charge = given.number("charge").doubleValue();
        return switch (given.text("chargePer")) {
            case "crew" -> charge;
            case "day" -> charge / given.number("day").doubleValue();
            default -> charge * given.number("people").doubleValue();
        };
    }

    void write() {
        lines.comment(0, "Who mows, what an hour of theirs costs and brings, and what a flat does to their day.");
        lines.line(0, "crews:");
        lines.line(2, CREW + ":");
        writePay();
        writeCatchingUp();
        writeFullWeeks();
        new FixesText(given, lines).write();
    }

    private void writePay() {
        boolean owner = given.is("who", "owner");
        String who = Remark.of(given, "who", owner ? "the owner alone" : "hired people");
        boolean both = owner || (given.isYours("who") && given.isYours("people"));
        lines.line(
                4, "people: " + given.text("people"), both ? who : who + "; how many: " + Remark.of(given, "people"));
        lines.line(4, "wage: " + given.text("wage"), Remark.of(given, "wage", "per paid hour and person"));
        boolean burden = given.isYours("burden") || owner;
        lines.line(burden, 4, "burden: " + given.text("burden"), Remark.of(given, "burden", "on top of the wage"));
        String premium = "overtimePremium: " + Plain.number(CatchingUp.of(given).premium()) + " %";
        String why = owner ? "an owner pays himself none; " : "on top of the wage, for hours made up; ";
        boolean stated = owner || given.isYours("makeUp");
        lines.line(stated, 4, premium, why + Remark.PRACTICE + "; look at the payroll");
        writeBilling();
        boolean day = given.isYours("day");
        lines.line(day, 4, "day: " + given.text("day") + " h", Remark.of(given, "day", "the route day"));
    }

    private void writeBilling() {
        String charge = given.text("charge");
        String words = switch (given.text("chargePer")) {
            case "crew" -> charge + " a crew-hour";
            case "day" -> charge + " a day of " + given.text("day") + " h";
            default -> charge + " a man-hour times " + given.text("people");
        };
        boolean yours = given.isYours("charge") && given.isYours("chargePer");
        lines.line(
                4,
                "billing: " + Plain.number(billing(given)),
                yours
                        ? Remark.of(given, "charge", words)
                        : "charged " + words + "; the amount: " + Remark.of(given, "charge") + "; per what: "
                                + Remark.of(given, "chargePer"));
    }

    private void writeCatchingUp() {
        CatchingUp made = CatchingUp.of(given);
        boolean yours = given.isYours("makeUp");
        lines.comment(
                4,
                "An hour lost to a flat comes back " + made.words() + " (" + Remark.of(given, "makeUp")
                        + "). What that means in hours and shares is a guess in any case:");
        lines.line(
                yours,
                4,
                "makeUpToday: " + Plain.number(made.today()) + " h",
                "slack in a day; " + Remark.PRACTICE + "; ask when they come home");
        lines.line(
                yours,
                4,
                "makeUpLater: " + made.laterText(),
                "share of the rest done another day; " + Remark.PRACTICE + "; count skipped cuts");
    }

    private void writeFullWeeks() {
        int weeks = given.number("fullWeeks").intValueExact();
        if (weeks == 0) {
            lines.comment(4, "No weeks are booked solid (" + Remark.of(given, "fullWeeks") + ").");
            return;
        }
        CatchingUp made = CatchingUp.of(given);
        lines.comment(
                4,
                "Weeks booked solid: " + weeks + " from the first cut on (" + Remark.of(given, "fullWeeks")
                        + "). In them half of the usual is made up (" + Remark.PRACTICE
                        + "; ask what was skipped in spring):");
        lines.line(4, "fullWeeks:");
        lines.line(
                6,
                "- {from: " + given.text("firstCut") + ", to: " + SeasonDays.endOfWeeks(given, weeks)
                        + ", makeUpToday: " + Plain.number(made.today() / 2) + " h, makeUpLater: "
                        + Plain.number(made.likely() / 2) + " %}",
                Remark.PRACTICE);
    }

    /** Percent of the crew's mowing that stops with one mower. */
    static BigDecimal output(Given given) {
        int alike = given.number("alike").intValueExact();
        BigDecimal each = BigDecimal.valueOf(100).divide(BigDecimal.valueOf(alike), 2, java.math.RoundingMode.DOWN);
        if (!given.isYours("others")) {
            boolean alone = given.is("who", "owner");
            return alone ? each : each.min(BigDecimal.valueOf(50));
        }
        return switch (given.text("others")) {
            case "wait" -> BigDecimal.valueOf(100);
            case "half" -> BigDecimal.valueOf(50);
            default -> each.min(BigDecimal.valueOf(25));
        };
    }
}
