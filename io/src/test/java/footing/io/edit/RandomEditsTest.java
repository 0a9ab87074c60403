package footing.io.edit;

import static org.assertj.core.api.Assertions.assertThat;

import footing.core.chance.Spread;
import footing.core.fleet.Case;
import footing.core.fleet.Chance;
import footing.core.fleet.InForce;
import footing.core.fleet.Input;
import footing.core.fleet.Key;
import footing.core.fleet.Origin;
import footing.core.fleet.Place;
import footing.core.fleet.Values;
import footing.io.casefile.CaseFile;
import footing.io.form.At;
import footing.io.form.FileText;
import footing.io.form.Node;
import footing.io.form.NumberForm;
import footing.io.form.Problems;
import footing.io.form.Span;
import footing.io.form.Written;
import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.schema.CoreSchema;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** Whatever is set, nothing else changes, and setting it back brings the same bytes back. */
class RandomEditsTest {
    private static final int EDITS = 300;
    private static final long SEED = 20_270_401;
    private static final List<String> NASTY = List.of(
            "",
            " ",
            "\"",
            "'",
            "'3",
            "\"3\"",
            "3\n4",
            "3\r4",
            "3: 4",
            "3 # four",
            "# 3",
            "{",
            "}",
            "[3]",
            "{low: 3",
            "3, x: 4",
            "3}",
            "1e400",
            "-1e400",
            ".nan",
            ".inf",
            "0x10",
            "1_000",
            "1,000",
            "null",
            "~",
            "true",
            "&a 3",
            "*a",
            "!!int 3",
            "!x 3",
            "- 3",
            "? 3",
            "| 3",
            "> 3",
            "%",
            "@",
            "`",
            "\u0000",
            "\u2028",
            "\uFEFF3",
            "\uD800",
            "\uD83D\uDE9C",
            "३",
            "3 \u202E",
            "3 /",
            "/ 3 / 4",
            "3 / 2 / 1",
            "3 / 3 / 3",
            "{low: 3, likely: 6, high: 11, low: 2}",
            "{learned: flats}",
            "9".repeat(5000),
            "[".repeat(5000),
            "---",
            "...",
            "3\u0085",
            "\t",
            "3\t\t%\t#",
            "1e999999999",
            "\\",
            "\\n",
            "3 h # x",
            "{a: &x 1, b: *x}",
            "NaN",
            "Infinity");

    @ParameterizedTest
    @ValueSource(strings = {"quillbrook.yaml", "one-machine.yaml", "from-the-catalog.yaml"})
    void set_randomValues_changeThatAlone(String name) {
        String yaml = CaseEditTest.read(name);
        int made = 0;
        for (int i = 0; i < EDITS; i++) {
            made += check(yaml, SEED + i) ? 1 : 0;
        }
        assertThat(made).isGreaterThan(EDITS / 5);
    }

    @ParameterizedTest
    @ValueSource(strings = {"quillbrook.yaml", "one-machine.yaml", "from-the-catalog.yaml"})
    void set_randomValuesOfJson_staysJson(String name) {
        Object tree = new Load(
                        LoadSettings.builder().setSchema(new CoreSchema()).build())
                .loadFromString(CaseEditTest.read(name));
        JsonMapper mapper =
                JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();
        String json = mapper.writeValueAsString(tree).replace("  ", "\t");
        for (int i = 0; i < EDITS / 3; i++) {
            if (check(json, SEED + i)) {
                assertThat(mapper.readTree(edit(json, SEED + i).text())).isNotNull();
            }
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "crews.me.wage",
                "crews.me.makeUpLater",
                "crews.me.fixes[0].delay",
                "money.inflation",
                "machines.mower.flatsPerSeason",
                "machines.mower.worn.drive",
                "assemblies.treated.life",
                "machines.mower.counts.drive"
            })
    void set_nastyText_isRefused(String path) {
        String text = CaseEditTest.read("one-machine.yaml");
        for (String nasty : NASTY) {
            Edited edited = CaseEdit.set(text, path, nasty);

            assertThat(edited.problems()).as(nasty).isNotEmpty();
            assertThat(edited.problems())
                    .allMatch(p -> !p.message().isBlank() && !p.advice().isBlank());
            assertThat(edited.text()).isEqualTo(text);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"title", "note", "prepared.by", "money", "machines[0].kind", "season.start", "crews.me.fixes"})
    void set_nastyTextElsewhere_changesThatAlone(String path) {
        String text = CaseEditTest.read("one-machine.yaml");
        for (String nasty : NASTY) {
            Edited edited = CaseEdit.set(text, path, nasty);

            if (edited instanceof Edited.Changed changed) {
                assertThat(changed.stated().crew("me")).isEqualTo(read(text).crew("me"));
                assertThat(changed.stated().assemblies()).isEqualTo(read(text).assemblies());
            } else {
                assertThat(edited.text()).isEqualTo(text);
            }
        }
    }

    private record Draw(InForce now, String typed, @Nullable Spread value) {}

    private static Draw draw(Case stated, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Case.Machine machine =
                stated.machines().get(random.nextInt(stated.machines().size()));
        List<InForce> all = new Values(stated, machine).all();
        InForce now = all.get(random.nextInt(all.size()));
        Key key = now.input().key();
        double middle = now.value().likely() * (0.8 + 0.4 * random.nextDouble());
        double x = key.range().whole()
                ? Math.rint(middle)
                : Double.parseDouble(Written.number(middle).replaceAll("(\\.\\d{3})\\d+", "$1"));
        x = key.range().clamp(x);
        boolean three = key.chance() != Chance.NONE && x > 0 && x < 0.9 && random.nextBoolean();
        String one = Written.value(key.dimension(), x);
        String typed = three
                ? Written.value(key.dimension(), x / 2) + " / " + one + " / " + Written.value(key.dimension(), x * 1.08)
                : one;
        return new Draw(now, typed, value(key, typed));
    }

    private static @Nullable Spread value(Key key, String typed) {
        Problems problems = new Problems("");
        Typed read = Typed.number(key, typed, new At(1, ""), problems);
        Spread value = read == null ? null : new NumberForm(key).read(read.node(), At.TOP, problems);
        return value;
    }

    private static Edited edit(String text, long seed) {
        Draw draw = draw(read(text), seed);
        return CaseEdit.set(text, draw.now().input(), draw.typed());
    }

    private static Case read(String text) {
        return CaseFile.read(text, "x").found().orElseThrow();
    }

    /** True if the change was made. */
    private static boolean check(String text, long seed) {
        Case stated = read(text);
        Draw draw = draw(stated, seed);
        Input input = draw.now().input();
        Edited edited = CaseEdit.set(text, input, draw.typed());
        String what = "seed " + seed + ": " + input.path() + " = " + draw.typed() + "\n" + edited.problems();
        if (edited instanceof Edited.Refused) {
            assertThat(edited.text()).isEqualTo(text);
            assertThat(mayBeRefused(stated, draw)).as(what).isTrue();
            return false;
        }
        assertThat(((Edited.Changed) edited).stated())
                .as(what)
                .isEqualTo(expected(stated, input, Objects.requireNonNull(draw.value())));
        boolean otherEnd = input.key() == Key.FLATS_AT_DRIVE
                && span(text, "machines." + input.owner() + ".flatsAt.caster").end() > 0;
        Span before = span(text, input.path());
        assertRestIsSame(
                text, edited.text(), otherEnd ? span(text, input.path().replace("drive", "caster")) : before, what);
        if (before.end() > 0) {
            Letters letters = new Letters(text);
            String old =
                    text.substring(letters.start(before), letters.end(before)).replaceAll("^\"|\"$", "");
            Edited back = CaseEdit.set(edited.text(), input, old.replaceAll("\\s+", " "));
            if (old.contains("\n")) {
                // A three-point over several lines comes back on one.
                assertThat(((Edited.Changed) back).stated()).as(what).isEqualTo(stated);
            } else {
                assertThat(back.text()).as(what).isEqualTo(text);
            }
        } else if (!otherEnd) {
            assertThat(CaseEdit.remove(edited.text(), input.path()).text())
                    .as(what)
                    .isEqualTo(text);
        }
        return true;
    }

    /** Where a value stands; a span without characters if it is not stated. */
    private static Span span(String text, String path) {
        Node root = FileText.tree(text, new Problems(""));
        Node there = root == null ? null : Route.of(path, root).find(root);
        return there == null ? Span.onLine(0) : there.span();
    }

    /** Which flats are where is kept as the share at the drives. */
    private static Case expected(Case stated, Input input, Spread value) {
        if (input.key() != Key.FLATS_AT_CASTER) {
            return stated.with(input, value);
        }
        double rest = Math.rint((1 - value.likely()) * 1e12) / 1e12;
        return stated.with(Input.of(Key.FLATS_AT_DRIVE, input.owner()), Spread.of(rest));
    }

    /** What only several values together can get wrong, and what stands in another file. */
    private static boolean mayBeRefused(Case stated, Draw draw) {
        Input input = draw.now().input();
        boolean worn = input.key() == Key.WORN_DRIVE || input.key() == Key.WORN_CASTER;
        boolean catalog = input.key().place() == Place.ASSEMBLY
                && (draw.now().origin() == Origin.TYPICAL
                        || stated.assembly(input.owner()).numbers().origin(Key.PRICE) == Origin.TYPICAL);
        return catalog
                || input.key() == Key.FIX_SHARE
                || (worn && stated.machine(input.owner()).isNew())
                || (input.key() == Key.TREAT_PRICE
                        && stated.assembly(input.owner()).treats() == null)
                || draw.value() == null;
    }

    /** Before and behind the value, or the place where it was put in, every character is the same. */
    private static void assertRestIsSame(String before, String after, Span value, String what) {
        Letters letters = new Letters(before);
        int most = Math.min(before.length(), after.length());
        int same = 0;
        while (same < most && before.charAt(same) == after.charAt(same)) {
            same++;
        }
        int end = 0;
        while (end < most - same
                && before.charAt(before.length() - 1 - end) == after.charAt(after.length() - 1 - end)) {
            end++;
        }
        int start = value.end() == 0 ? same : letters.start(value);
        int stop = value.end() == 0 ? same : letters.end(value);
        assertThat(same).as(what).isGreaterThanOrEqualTo(start);
        assertThat(before.length() - end).as(what).isLessThanOrEqualTo(Math.max(stop, same));
    }
}
