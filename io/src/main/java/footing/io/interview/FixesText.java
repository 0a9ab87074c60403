package footing.io.interview;

import java.math.BigDecimal;

/** Writes what is done about a flat. */
final class FixesText {
    private static final String SECOND = "60 %";

    private final Given given;
    private final CaseLines lines;

    FixesText(Given given, CaseLines lines) {
        this.given = given;
        this.lines = lines;
    }

    void write() {
        lines.comment(
                4,
                "What is done about a flat. share: of all flats. delay: route time until it cuts again, in a good, a"
                        + " usual and a bad case; good is six tenths of the usual, bad is twice ("
                        + Remark.PRACTICE + "; ask for the longest one of last season). cost: out of pocket.");
        if (given.is("second", "no")) {
            lines.comment(
                    4, "No second mower steps in (" + Remark.of(given, "second") + "), else there would be an output.");
        }
        lines.line(4, "fixes:");
        fix("plug", "plug on site", "3", "plugs and cement; " + Remark.PRACTICE + "; ask what a kit costs");
        fix("spare", "spare wheel", "20", "mending the wheel later; " + Remark.PRACTICE + "; ask the shop");
        fix("shop", "to the shop", "25", "parts; " + Remark.PRACTICE + "; ask the shop");
        fix("call", "call-out", given.text("callCost"), Remark.of(given, "callCost", "the call, without the tire"));
    }

    private void fix(String id, String name, String cost, String ofCost) {
        if (given.is(id + "Share", "0 %")) {
            return;
        }
        BigDecimal usual = given.number(id + "Time");
        String delay = Plain.three(
                Plain.minutes(Plain.part(usual, "0.6")), Plain.minutes(usual), Plain.minutes(Plain.part(usual, "2")));
        lines.line(6, "- name: " + name);
        lines.line(8, "share: " + given.text(id + "Share"), Remark.of(given, id + "Share"));
        lines.line(8, "delay: " + delay, Remark.of(given, id + "Time"));
        lines.line(8, "cost: " + cost, ofCost);
        if (id.equals("shop")) {
            lines.line(
                    8,
                    "sealable: false",
                    "what plugs can't mend, sealant can't either; " + Remark.PRACTICE + "; ask the shop");
        } else if (id.equals("call")) {
            lines.line(
                    8,
                    "replaces: tire",
                    "who calls somebody has a torn one; " + Remark.PRACTICE + "; if not, write nothing");
        }
        boolean isLong = id.equals("shop") || id.equals("call");
        if (isLong && given.is("second", "yes")) {
            String how = "a second mower steps in, doing " + SECOND + " of its work";
            lines.line(8, "output: " + SECOND, Remark.of(given, "second", how) + "; the share is a guess");
        }
    }
}
