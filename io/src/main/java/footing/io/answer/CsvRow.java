package footing.io.answer;

import footing.core.answer.EntryAnswer;
import footing.core.answer.Estimate;
import footing.core.answer.Saving;
import footing.core.future.Counts;
import footing.core.future.Parts;
import footing.io.form.Written;
import java.util.List;
import java.util.StringJoiner;
import org.jspecify.annotations.Nullable;

/** A row of comma-separated values after RFC 4180: lines end in CR LF, quotes within quoted cells are doubled. */
final class CsvRow {
    private static final List<String> NAMES = List.of(
            "machine",
            "crew",
            "carried",
            "package",
            "when",
            "recommended",
            "verdict",
            "startCost",
            "neverFitted",
            "cost.mean",
            "cost.standardError",
            "cost.p10",
            "cost.p50",
            "cost.p90",
            "parts.purchase",
            "parts.renewals",
            "parts.repairs",
            "parts.crewTime",
            "parts.lostWork",
            "parts.upkeep",
            "parts.tradeIn",
            "counts.flats",
            "counts.sets",
            "counts.downHours",
            "counts.displacedHours",
            "counts.lostHours",
            "saving.mean",
            "saving.standardError",
            "saving.p10",
            "saving.p50",
            "saving.p90",
            "saving.chance",
            "levels.parts.mean",
            "levels.parts.chance",
            "levels.partsAndTime.mean",
            "levels.partsAndTime.chance",
            "levels.all.mean",
            "levels.all.chance",
            "overNext.package",
            "overNext.when",
            "overNext.mean",
            "overNext.standardError",
            "overNext.chance",
            "paybackHours",
            "breakEvenFlats.at",
            "breakEvenFlats.now",
            "breakEvenPrice",
            "monthly.payment",
            "monthly.avoided",
            "monthly.months");

    private final StringJoiner cells = new StringJoiner(",", "", "\r\n");

    static String names() {
        CsvRow row = new CsvRow();
        NAMES.forEach(row::text);
        return row.line();
    }

    String line() {
        return cells.toString();
    }

    /** A text cell. One that a spreadsheet would take for a formula is led by an apostrophe. */
    CsvRow text(String value) {
        boolean formula = !value.isEmpty() && "=+-@\t\r\n|".indexOf(value.charAt(0)) >= 0;
        String safe = formula ? "'" + value : value;
        boolean quoted = formula || safe.chars().anyMatch(c -> c == ',' || c == '"' || c == '\r' || c == '\n');
        cells.add(quoted ? "\"" + safe.replace("\"", "\"\"") + "\"" : safe);
        return this;
    }

    /** A number with a decimal point, to 12 digits; empty if there is none. */
    CsvRow number(@Nullable Double value) {
        if (value != null && Math.abs(value) < Double.POSITIVE_INFINITY) {
            cells.add(Written.number(value));
        } else {
            cells.add("");
        }
        return this;
    }

    CsvRow estimate(Estimate e) {
        return number(e.mean())
                .number(e.standardError())
                .number(e.p10())
                .number(e.p50())
                .number(e.p90());
    }

    CsvRow saving(Saving s) {
        number(s.mean()).number(s.standardError());
        return number(s.p10()).number(s.p50()).number(s.p90()).number(s.chance());
    }

    CsvRow parts(Parts p) {
        number(p.purchase()).number(p.renewals()).number(p.repairs()).number(p.crewTime());
        return number(p.lostWork()).number(p.upkeep()).number(p.tradeIn());
    }

    CsvRow counts(Counts c) {
        number(c.flats()).number(c.sets()).number(c.downHours());
        return number(c.displacedHours()).number(c.lostHours());
    }

    CsvRow overNext(EntryAnswer.@Nullable OverNext next) {
        if (next == null) {
            return text("").text("").number(null).number(null).number(null);
        }
        text(next.entry().id()).text(MachineJson.when(next.entry()));
        return number(next.mean()).number(next.standardError()).number(next.chance());
    }
}
