package footing.io.answer;

import footing.core.answer.EntryAnswer;
import footing.core.answer.Estimate;
import footing.core.future.Counts;
import footing.core.future.Parts;

/** Writes what an answer says of one entry. */
final class EntryJson {
    private final JsonText json;

    EntryJson(JsonText json) {
        this.json = json;
    }

    void write(EntryAnswer e) {
        MachineJson.entry(e.entry(), json);
        json.number("startCost", e.startCost());
        json.number("neverFitted", e.neverFitted());
        json.object("cost", () -> estimate(e.cost()));
        json.object("parts", () -> parts(e.parts()));
        json.object("counts", () -> counts(e.counts()));
        json.object("saving", () -> AnswerJson.saving(e.saving(), json));
        json.objects("levels", e.levels(), this::level);
        json.objectOrNull("overNext", e.overNext(), this::overNext);
        json.number("paybackHours", e.paybackHours());
        json.objectOrNull("breakEvenFlats", e.breakEvenFlats(), this::breakEvenFlats);
        json.number("breakEvenPrice", e.breakEvenPrice());
        json.objectOrNull("monthly", e.monthly(), this::monthly);
        json.objects("yearly", e.yearly().entrySet(), year -> {
            json.whole("year", year.getKey());
            parts(year.getValue());
        });
    }

    private void estimate(Estimate cost) {
        json.number("mean", cost.mean());
        json.number("standardError", cost.standardError());
        json.number("p10", cost.p10());
        json.number("p50", cost.p50());
        json.number("p90", cost.p90());
    }

    private void parts(Parts parts) {
        json.number("purchase", parts.purchase());
        json.number("renewals", parts.renewals());
        json.number("repairs", parts.repairs());
        json.number("crewTime", parts.crewTime());
        json.number("lostWork", parts.lostWork());
        json.number("upkeep", parts.upkeep());
        json.number("tradeIn", parts.tradeIn());
    }

    private void counts(Counts counts) {
        json.number("flats", counts.flats());
        json.number("sets", counts.sets());
        json.number("downHours", counts.downHours());
        json.number("displacedHours", counts.displacedHours());
        json.number("lostHours", counts.lostHours());
    }

    private void level(EntryAnswer.Level level) {
        json.text("counting", counting(level.counting()));
        json.number("mean", level.mean());
        json.number("chance", level.chance());
    }

    static String counting(EntryAnswer.Counting counting) {
        return switch (counting) {
            case PARTS -> "parts";
            case PARTS_AND_TIME -> "partsAndTime";
            case ALL -> "all";
        };
    }

    private void overNext(EntryAnswer.OverNext next) {
        MachineJson.entry(next.entry(), json);
        json.number("mean", next.mean());
        json.number("standardError", next.standardError());
        json.number("chance", next.chance());
    }

    private void breakEvenFlats(EntryAnswer.BreakEvenFlats flats) {
        json.number("at", flats.at());
        json.number("now", flats.now());
    }

    private void monthly(EntryAnswer.Monthly monthly) {
        json.number("payment", monthly.payment());
        json.number("avoided", monthly.avoided());
        json.whole("months", monthly.months());
    }
}
