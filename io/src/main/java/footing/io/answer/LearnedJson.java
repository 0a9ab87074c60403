package footing.io.answer;

import footing.core.records.Learned;
import footing.core.records.Limits;
import footing.core.records.Posterior;
import footing.io.form.Problem;
import footing.io.records.Records;
import footing.io.words.LearnedWords;
import java.io.Writer;

/**
 * What records teach, as JSON of the format {@value #FORMAT}. Flats are per 1,000 operating hours on air tires, lives in
 * hours, times in minutes; {@code low} and {@code high} hold four in five.
 *
 * <pre>
 * { "format", "file", "rows", "used", "ignoredColumns": [..],
 *   "refused": [ {"line","column","read","reason","mend"} ],
 *   "flats": [ {"machine","crew","counted","remembered","hours","hoursGuessed","airHours","likely","low","high",
 *               "upperBoundOnly","ownLow","ownHigh","sentence"} ],
 *   "crews": [ {"crew","machines","flats","airHours","differ","sentence"} ],
 *   "trends": [ {"machine","flats","hours","says","hoursBetween","low","high","sentence"} ],
 *   "wornTires": {"flats","sets","says","effect","shape","shapeLow95","shapeHigh95","fitsPoorly","sentence",
 *                 "byAge": [ {"age","sets","flats","low","high"} ]},
 *   "lives": [ {"assembly","sets","wornOut","bought","likely","low","high","unsure","shape","curveMedian",
 *               "curveMedianLow","curveMedianHigh","sentence"} ],
 *   "contrasts": [ {"assembly","other","sets","wornOut","otherSets","otherWornOut","lasts","ratio","low","high",
 *                   "sentence"} ],
 *   "treads": [ {"set","readings","left","low","high","sentence"} ], "treadsNotKnown": [..],
 *   "fixes": [ {"crew","flats","shares": [ {"name","stated","count","share","low","high"} ],
 *               "delays": [ {"name","count","low","likely","high"} ]} ] }
 * </pre>
 */
public final class LearnedJson {
    public static final String FORMAT = "footing-learned/1";
    private static final double PER = 1000;

    private LearnedJson() {}

    /** Writes the document and leaves the writer open. */
    public static void write(Records records, Learned learned, Writer to) {
        try (JsonText json = new JsonText(to)) {
            json.object(() -> {
                json.text("format", FORMAT);
                head(json, records);
                json.objects("flats", learned.flats(), f -> flats(json, f));
                json.objects("crews", learned.crews(), c -> LearnedContrasts.crew(json, c));
                json.objects("trends", learned.trends(), t -> LearnedContrasts.trend(json, t));
                json.object("wornTires", () -> wear(json, learned.wear()));
                json.objects("lives", learned.lives(), l -> life(json, l));
                json.objects("contrasts", learned.contrasts(), c -> LearnedContrasts.lives(json, c));
                json.objects("treads", learned.treads(), t -> {
                    json.text("set", t.set());
                    json.whole("readings", t.readings());
                    json.number("left", t.left());
                    limits(json, t.limits(), 1);
                    json.text("sentence", LearnedWords.tread(t));
                });
                json.array("treadsNotKnown", () -> learned.untold().forEach(json::text));
                json.objects("fixes", learned.fixes(), f -> fixes(json, f));
            });
        }
    }

    private static void head(JsonText json, Records records) {
        json.text("file", records.file());
        json.whole("rows", records.rows());
        json.whole("used", records.log().rows());
        json.array("ignoredColumns", () -> records.ignored().forEach(json::text));
        json.objects("refused", records.refused(), p -> refused(json, p));
    }

    private static void refused(JsonText json, Problem p) {
        json.whole("line", p.line());
        json.text("column", p.path());
        json.text("read", p.read());
        json.text("reason", p.message());
        json.text("mend", p.advice());
    }

    private static void flats(JsonText json, Learned.Flats f) {
        json.text("machine", f.machine());
        json.text("crew", f.crew());
        json.number("counted", f.counted());
        json.number("remembered", f.remembered());
        json.number("hours", f.hours());
        json.flag("hoursGuessed", f.guessed());
        json.number("airHours", f.exposure());
        posterior(json, f.rate(), PER);
        json.flag("upperBoundOnly", f.boundOnly());
        json.number("ownLow", f.exact().map(e -> e.low() * PER).orElse(null));
        json.number("ownHigh", f.exact().map(e -> e.high() * PER).orElse(null));
        json.text("sentence", LearnedWords.flats(f));
    }

    private static void wear(JsonText json, Learned.Wear wear) {
        json.whole("flats", wear.flats());
        json.whole("sets", wear.sets());
        json.text(
                "says",
                switch (wear.says()) {
                    case MORE -> "more";
                    case LESS -> "less";
                    case CANT_TELL -> "can't tell";
                });
        json.number("effect", wear.effect().isPresent() ? wear.effect().getAsDouble() : null);
        json.number("shape", wear.law().map(l -> l.shape()).orElse(null));
        json.number("shapeLow95", wear.law().map(l -> l.limits(0.95).low()).orElse(null));
        json.number("shapeHigh95", wear.law().map(l -> l.limits(0.95).high()).orElse(null));
        json.flag("fitsPoorly", wear.law().map(l -> l.fitsPoorly()).orElse(false));
        json.text("sentence", LearnedWords.wear(wear));
        json.objects("byAge", wear.byAge().steps(), s -> {
            json.number("age", s.age());
            json.whole("sets", s.atRisk());
            json.number("flats", s.mean());
            limits(json, s.limits(Limits.SHARE), 1);
        });
    }

    private static void life(JsonText json, Learned.SetLife life) {
        json.text("assembly", life.assembly());
        json.whole("sets", life.sets());
        json.whole("wornOut", life.wornOut());
        json.number("bought", life.bought().map(b -> b.sets()).orElse(null));
        posterior(json, life.posterior().median(), 1);
        json.number("unsure", life.posterior().median().deviation());
        json.number("shape", life.posterior().shape().median());
        Limits median = life.curve().medianLimits(Limits.SHARE).orElse(null);
        json.number(
                "curveMedian",
                life.curve().median().stream().boxed().findFirst().orElse(null));
        json.number("curveMedianLow", median == null ? null : median.low());
        json.number("curveMedianHigh", median == null ? null : median.high());
        json.text("sentence", LearnedWords.life(life));
    }

    private static void fixes(JsonText json, Learned.Fixes fixes) {
        json.text("crew", fixes.crew());
        json.whole("flats", fixes.flats());
        json.objects("shares", fixes.shares(), s -> {
            json.text("name", s.name());
            json.number("stated", s.stated());
            json.whole("count", s.count());
            json.number("share", s.mean());
            limits(json, s.limits(), 1);
        });
        json.objects("delays", fixes.delays(), d -> {
            json.text("name", d.name());
            json.whole("count", d.count());
            json.number("low", d.minutes().map(m -> m.low()).orElse(null));
            json.number("likely", d.minutes().map(m -> m.likely()).orElse(null));
            json.number("high", d.minutes().map(m -> m.high()).orElse(null));
        });
    }

    private static void posterior(JsonText json, Posterior p, double per) {
        json.number("likely", p.median() * per);
        limits(json, p.limits(Limits.SHARE), per);
    }

    static void limits(JsonText json, Limits limits, double per) {
        json.number("low", limits.low() * per);
        json.number("high", limits.high() * per);
    }
}
