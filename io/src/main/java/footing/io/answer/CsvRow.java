package footing.io.answer;

import footing.core.answer.EntryAnswer;
import footing.core.answer.Estimate;
import footing.core.answer.Saving;
import footing.core.future.Counts;
import footing.core.future.Parts;
import footing.io.sheet.CsvTable;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A row of the table, its cells from left to right. */
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

    private final CsvTable table;

    CsvRow(CsvTable table) {
        this.table = table;
    }

    CsvRow names() {
        NAMES.forEach(table::text);
        return this;
    }

    void end() {
        table.end();
    }

    CsvRow text(String value) {
        table.text(value);
        return this;
    }

    CsvRow number(@Nullable Double value) {
        table.number(value);
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
