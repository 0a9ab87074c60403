package footing.io.trial;

import footing.core.trial.RunPlan;
import footing.core.trial.Side;
import footing.io.sheet.CsvTable;
import footing.io.words.TrialCautions;
import java.io.IOException;
import java.io.Writer;

/**
 * A plan as a sheet to take along and fill in: comma-separated values that {@link TrialFile} reads back. The cautions
 * stand above the heading, led by a number sign.
 *
 * @param measure what to write down at each run
 */
public record RunSheet(RunPlan plan, Measure measure, String a, String b, boolean metric) {
    /**
     * Writes the sheet and leaves the writer open.
     *
     * @throws IOException if the writer does
     */
    public void write(Writer to) throws IOException {
        for (String caution : TrialCautions.of(measure.kind())) {
            to.write("# " + caution + "\r\n");
        }
        String unit = measure.shown(metric).unit();
        try (CsvTable sheet = new CsvTable(to)) {
            sheet.text("order")
                    .text("surface")
                    .text("pair")
                    .text("side")
                    .text("lane")
                    .text("direction");
            sheet.text(unit.isEmpty() ? measure.key() : measure.key() + " (" + unit + ")");
            sheet.text(metric ? "pressure (kPa)" : "pressure (psi)").text("moisture (%)");
            sheet.text("operator").text("note").end();
            for (RunPlan.Planned run : plan.runs()) {
                sheet.number((double) run.order()).text(run.surface()).number((double) run.pair());
                sheet.text(run.side() == Side.A ? a : b).number((double) run.lane());
                sheet.text(run.outward() ? "out" : "back");
                for (int blank = 0; blank < 5; blank++) {
                    sheet.text("");
                }
                sheet.end();
            }
        }
    }
}
