package footing.io.answer;

import footing.core.answer.Saving;
import footing.core.chance.Metalog;
import footing.core.compare.Changed;
import footing.core.compare.Difference;
import footing.core.compare.MachineDifference;
import footing.core.compare.Part;
import footing.core.compare.Split;
import footing.core.fleet.Case;
import footing.core.fleet.InForce;
import java.io.Writer;
import java.util.Locale;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * Writes a comparison as a JSON document of the format {@value #FORMAT}. Money is in units of the currency, shares are
 * fractions, times are hours; what does not exist is null.
 *
 * <pre>{@code
 * format      footing-comparison/1
 * before      {case: title, asOf: date, futures: simulated for every machine}; after the same
 * currency    ISO 4217
 * futures     the larger of the two, simulated for every mixture; seed of their draws
 * complete    false if it was stopped before the changes were split
 * inputs      [{input: path, before: V, after: V, follows}] that differ; V is {value: number or {low, likely, high},
 *             origin: stated | learned | typical | default} or null; follows: a default that moved with another input
 * others      [{path, before: text, after: text}] that differ beside numbers
 * measures    [{path, before, after}] that differ, in SI units; null where one was not stated
 * machines    [{id, before: S, after: S, recommended: P, asBefore: P}]; S is {id, when, carried, verdict, saving: as in
 *             footing-answer/1} of what is recommended, or null; asBefore follows the entry recommended before
 * fleet       {recommended: P, asBefore: P}
 * P           {before, after, change, parts: [{kind: inputs | other | added | removed | futures, inputs: [path],
 *             machine: id or null, change}]} or null: the saving, and its change split; the parts add up to change
 *             exactly; kind futures is there if the two versions needed different numbers of them
 * }</pre>
 */
public final class DifferenceJson {
    public static final String FORMAT = "footing-comparison/1";

    private final JsonText json;

    private DifferenceJson(JsonText json) {
        this.json = json;
    }

    /** Writes the document and leaves the writer open. */
    public static void write(Difference difference, Writer to) {
        try (JsonText json = new JsonText(to)) {
            json.object(() -> new DifferenceJson(json).document(difference));
        }
    }

    private void document(Difference d) {
        json.text("format", FORMAT);
        json.object("before", () -> heading(d.before(), d.futuresBefore()));
        json.object("after", () -> heading(d.after(), d.futuresAfter()));
        json.text("currency", d.after().heading().currency());
        json.whole("futures", d.futures());
        json.whole("seed", d.seed());
        json.flag("complete", d.complete());
        json.objects("inputs", d.inputs(), this::input);
        json.objects("others", d.others(), c -> {
            json.text("path", c.path());
            json.text("before", c.before());
            json.text("after", c.after());
        });
        json.objects("measures", d.measures(), c -> {
            json.text("path", c.path());
            json.number("before", boxed(c.before()));
            json.number("after", boxed(c.after()));
        });
        json.objects("machines", d.machines(), this::machine);
        json.object("fleet", () -> splits(d.recommended(), d.asBefore()));
    }

    private void heading(Case c, int futures) {
        json.text("case", c.heading().title());
        json.text("asOf", c.heading().asOf().toString());
        json.whole("futures", futures);
    }

    private void input(Changed c) {
        json.text("input", c.input().path());
        json.objectOrNull("before", c.before(), this::number);
        json.objectOrNull("after", c.after(), this::number);
        json.flag("follows", c.follows());
    }

    private void number(InForce number) {
        if (number.value() instanceof Metalog m) {
            json.object("value", () -> {
                json.number("low", m.low());
                json.number("likely", m.likely());
                json.number("high", m.high());
            });
        } else {
            json.number("value", number.value().likely());
        }
        json.text("origin", number.origin().name().toLowerCase(Locale.ROOT));
    }

    private void machine(MachineDifference m) {
        json.text("id", m.id());
        json.objectOrNull("before", m.before(), this::standing);
        json.objectOrNull("after", m.after(), this::standing);
        splits(m.recommended(), m.asBefore());
    }

    private void standing(MachineDifference.Standing s) {
        MachineJson.entry(s.entry(), json);
        json.flag("carried", s.carried());
        json.text("verdict", s.verdict().name().toLowerCase(Locale.ROOT));
        Saving saving = s.saving();
        json.object("saving", () -> AnswerJson.saving(saving, json));
    }

    private void splits(@Nullable Split recommended, @Nullable Split asBefore) {
        json.objectOrNull("recommended", recommended, this::split);
        json.objectOrNull("asBefore", asBefore, this::split);
    }

    private void split(Split split) {
        json.number("before", split.before());
        json.number("after", split.after());
        json.number("change", split.change());
        json.objects("parts", split.parts(), this::part);
    }

    private void part(Part part) {
        json.text("kind", part.kind().name().toLowerCase(Locale.ROOT));
        json.array("inputs", () -> part.inputs().forEach(i -> json.text(i.path())));
        json.textOrNull("machine", part.machine().isEmpty() ? null : part.machine());
        json.number("change", part.change());
    }

    private static @Nullable Double boxed(OptionalDouble x) {
        return x.isPresent() ? x.getAsDouble() : null;
    }
}
