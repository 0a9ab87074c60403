package footing.io.answer;

import footing.core.answer.MachineAnswer;
import footing.core.chance.Metalog;
import footing.core.fleet.InForce;
import footing.core.fleet.Origin;
import footing.core.fleet.ResolvedMachine;
import footing.core.future.FixOutcome;
import java.util.Locale;

/** Writes what an answer says of one machine. */
final class MachineJson {
    private final JsonText json;
    private final EntryJson entries;

    MachineJson(JsonText json) {
        this.json = json;
        entries = new EntryJson(json);
    }

    void write(MachineAnswer m) {
        json.text("id", m.id());
        json.text("carried", m.carried().entry().id());
        json.object("recommended", () -> entry(m.choice().entry(), json));
        json.text("verdict", m.verdict().name().toLowerCase(Locale.ROOT));
        json.objects("entries", m.entries(), entries::write);
        json.objects("ladder", m.ladder(), this::rung);
        json.objectOrNull("costPerFlat", m.costPerFlat(), this::flat);
        json.objectsOrNull("drivers", m.drivers(), this::driver);
        json.objectsOrNull("guesses", m.guesses(), this::guess);
        json.objectOrNull("findOutFirst", m.findOutFirst(), this::findOut);
    }

    static void entry(ResolvedMachine.Entry entry, JsonText json) {
        json.text("id", entry.id());
        json.text("when", when(entry));
    }

    static String when(ResolvedMachine.Entry entry) {
        return entry.when().name().toLowerCase(Locale.ROOT);
    }

    private void rung(MachineAnswer.Rung rung) {
        entry(rung.entry(), json);
        json.number("extraStart", rung.extraStart());
        json.number("extraSaving", rung.extraSaving());
        json.number("chance", rung.chance());
    }

    private void flat(MachineAnswer.CostPerFlat flat) {
        json.number("cash", flat.cash());
        json.number("paid", flat.paid());
        json.number("lost", flat.lost());
        json.objects("fixes", flat.fixes(), this::fix);
    }

    private void fix(FixOutcome fix) {
        json.text("name", fix.name());
        json.number("cash", fix.cash());
        json.number("paid", fix.paid());
        json.number("lost", fix.lost());
        json.number("delayHours", fix.delay());
    }

    private void driver(MachineAnswer.Driver driver) {
        json.text("input", driver.input().input().path());
        json.number("low", driver.low());
        json.number("high", driver.high());
        json.number("savingAtLow", driver.savingAtLow());
        json.number("savingAtHigh", driver.savingAtHigh());
        json.flag("default", driver.input().origin() == Origin.DEFAULT);
    }

    private void guess(MachineAnswer.Guess guess) {
        InForce number = guess.input();
        json.text("input", number.input().path());
        if (number.value() instanceof Metalog m) {
            json.object("value", () -> {
                json.number("low", m.low());
                json.number("likely", m.likely());
                json.number("high", m.high());
            });
        } else {
            json.number("value", number.value().likely());
        }
        json.text("provenance", number.origin() == Origin.DEFAULT ? number.why() : "marked as a guess in the case");
        json.number("swing", guess.swing());
        json.flag("turnsVerdict", guess.turnsVerdict());
    }

    private void findOut(MachineAnswer.FindOutFirst first) {
        json.number("all", first.all());
        json.objects("each", first.each(), w -> {
            json.text("input", w.input().path());
            json.number("value", w.value());
        });
    }
}
