package footing.io.answer;

import footing.core.records.CrewContrast;
import footing.core.records.FlatsTrend;
import footing.core.records.Learned;
import footing.core.records.Limits;
import footing.io.words.LearnedWords;
import java.util.Locale;

/** The parts of {@link LearnedJson} that hold things side by side. */
final class LearnedContrasts {
    private LearnedContrasts() {}

    static void crew(JsonText json, Learned.Crew crew) {
        CrewContrast c = crew.contrast();
        json.text("crew", crew.crew());
        json.whole("machines", c.machines());
        json.number("flats", c.flats());
        json.number("airHours", c.hours());
        json.text("differ", c.tooFew() ? "can't tell" : c.differs() ? "more than by chance" : "no more than by chance");
        json.text("sentence", LearnedWords.crew(crew).orElse(""));
    }

    static void trend(JsonText json, Learned.Trend of) {
        FlatsTrend trend = of.trend();
        json.text("machine", of.machine());
        json.whole("flats", trend.flats());
        json.number("hours", trend.hours());
        json.text("says", said(trend.says().name()));
        json.number("hoursBetween", trend.hoursBetween());
        LearnedJson.limits(json, trend.hoursBetweenLimits(Limits.SHARE), 1);
        json.text("sentence", LearnedWords.trend(of));
    }

    static void lives(JsonText json, Learned.Contrast c) {
        Limits limits = c.ratio().map(r -> r.ratioLimits(Limits.SHARE)).orElse(null);
        json.text("assembly", c.assembly());
        json.text("other", c.other());
        json.whole("sets", c.sets());
        json.whole("wornOut", c.wornOut());
        json.whole("otherSets", c.otherSets());
        json.whole("otherWornOut", c.otherWornOut());
        json.text("lasts", said(c.lasts().name()));
        json.number(
                "ratio",
                c.ratio()
                        .filter(r -> r.isFinite())
                        .map(r -> Math.exp(r.logRatio()))
                        .orElse(null));
        json.number("low", limits == null ? null : limits.low());
        json.number("high", limits == null ? null : limits.high());
        json.text("sentence", LearnedWords.contrast(c));
    }

    private static String said(String name) {
        return name.equals("CANT_TELL") ? "can't tell" : name.toLowerCase(Locale.ROOT);
    }
}
