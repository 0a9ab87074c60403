package footing.io.interview;

import static footing.io.interview.Guess.PRACTICE;

import java.math.BigDecimal;
import java.util.List;

/** What is asked about the mowers, their hours and their tires. */
final class MowerQuestions {
    static final Question MOWER = Question.of(
            "mower",
            "Which mower is it, how many of them, and what do they run on, front and back?",
            "Every other wheel package is compared with what is on the mower now.",
            Field.of("kind", "Mower", Shape.text(), Guess.practice("60 in riding mower", "ask whoever runs it")),
            Field.of("alike", "How many alike", Shape.whole(1, 50), Guess.practice("1", "count them in the yard")),
            Field.of(
                    "owned",
                    "Owned, or about to be bought",
                    Shape.choice(new Choice("owned", "owned"), new Choice("order", "about to be bought")),
                    Guess.practice("owned", "ask the owner")),
            Field.of("driveKind", "On the drives", kinds(false), Guess.practice("air", "look at the valve stems")),
            Field.of("casterKind", "On the casters", kinds(true), Guess.practice("air", "look at the valve stems")),
            Field.of(
                    "driveSize",
                    "Size of the drives, off the sidewall",
                    Shape.size(),
                    Guess.practice("24x12-12", "read it off the sidewall")),
            Field.of(
                    "casterSize",
                    "Size of the casters, off the sidewall",
                    Shape.size(),
                    Guess.practice("13x6.5-6", "read it off the sidewall")),
            Field.of(
                    "title",
                    "A name for this case",
                    Shape.text(),
                    new Guess(MowerQuestions::title, "made of the number of mowers", "")),
            Field.of(
                    Interview.CURRENCY,
                    "Currency of all amounts asked for",
                    Shape.currency(),
                    new Guess(g -> "USD", "the usual one here", "")));

    static final Question HOURS = Question.of(
            "hours",
            "What is on the hour meter, what do they run in a season, first and last cut, and when are they traded?",
            "A dearer wheel has from now to the trade to earn its price.",
            Field.of("hoursNow", "Hours on the meter", Shape.hours(0, 20_000), hoursNow())
                    .when(OnlyIf.is("owned", "owned")),
            Field.of(
                    "hoursPerYear",
                    "Hours a season",
                    Shape.hours(10, 5000),
                    Guess.practice("450", "take two readings of the meter a season apart")),
            Field.of(
                    "firstCut",
                    "First cut",
                    Shape.date(),
                    Guess.practice("04-05", "look up last year's first invoice")),
            Field.of("lastCut", "Last cut", Shape.date(), Guess.practice("10-31", "look up last year's last invoice")),
            Field.of("keepUntil", "Traded at, on the meter", Shape.hours(10, 25_000), keepUntil()));

    static final Question FLATS = Question.of(
            "flats",
            "Last season, how often did a tire stop one of them or send you for air, and which end?",
            "Counted for one mower on plain air tires. This number decides more than any other.",
            Field.of(
                    "flats",
                    "Flats of one mower in a season",
                    Shape.number(0, 100),
                    Guess.practice(MowerQuestions::flats, "count the plugs bought, or have the crew write flats down")),
            Field.of(
                            "where",
                            "Where does it mow, mostly",
                            Shape.choice(
                                    new Choice("lawns", "settled lawns, about 1.5 a season"),
                                    new Choice("commercial", "commercial sites, about 3"),
                                    new Choice("houses", "among new houses, about 4"),
                                    new Choice("thorns", "where thorns grow, about 6")),
                            Guess.practice("commercial", "look at the route"))
                    .when(OnlyIf.unknown("flats")),
            Field.of(
                    "flatsEnd",
                    "Which end goes flat",
                    Shape.choice(
                            new Choice("drives", "mostly the drives"),
                            new Choice("both", "both, the drives a little oftener"),
                            new Choice("casters", "mostly the casters")),
                    Guess.practice("both", "ask whoever mends them")));

    static final Question WHEELS = Question.of(
            "wheels",
            "How long does a set of drives last you, how much pavement and curb, and what are you quoted for a dearer"
                    + " pair, fitted?",
            "Price and life decide what a set costs per hour.",
            Field.of(
                    "life",
                    "Hours from a set of drives like those on it now",
                    Shape.hours(50, 10_000),
                    new Guess(
                            g -> Plain.number(TypicalWheels.life(g, "driveKind", "driveSize")),
                            "typical figure, not measured",
                            "compare the meter at two tire changes")),
            Field.of(
                    "pavement",
                    "Pavement, gravel and curbs",
                    Shape.choice(
                            new Choice("none", "grass only"),
                            new Choice("some", "some, leaving 80 % of every life"),
                            new Choice("mostly", "mostly, leaving 55 %")),
                    Guess.practice("some", "look at the edges of a worn tire")),
            Field.of(
                    "pairPrice",
                    "Quote for a pair of airless drives, fitted",
                    Shape.money(),
                    new Guess(
                            g -> Plain.number(2 * TypicalWheels.airlessPrice(g)),
                            "typical price, not a quote",
                            "get a quote for the size on the sidewall")));

    private MowerQuestions() {}

    private static Shape kinds(boolean solid) {
        Choice air = new Choice("air", "air");
        Choice sealant = new Choice("sealant", "air with sealant in it");
        Choice foam = new Choice("foam", "foam-filled");
        Choice airless = new Choice("airless", "airless, with spokes");
        return solid
                ? Shape.choice(air, sealant, foam, new Choice("solid", "solid or semi-pneumatic"), airless)
                : Shape.choice(air, sealant, foam, airless);
    }

    private static String title(Given given) {
        int n = given.number("alike").intValueExact();
        return "One crew, " + footing.io.words.Figures.word(n) + " mower" + (n == 1 ? "" : "s");
    }

    private static Guess hoursNow() {
        return new Guess(
                g -> g.is("owned", "order") ? "0" : g.text("hoursPerYear"),
                "one season's hours for an owned mower, 0 for a new one",
                "read the meter");
    }

    /** 2,000 h; later for a mower that has them already, sooner for one that would take over twenty seasons. */
    private static Guess keepUntil() {
        return new Guess(
                g -> {
                    BigDecimal now = g.number("hoursNow");
                    BigDecimal season = g.number("hoursPerYear");
                    BigDecimal twoSeasons = now.add(season.multiply(BigDecimal.valueOf(2)));
                    BigDecimal twenty = now.add(season.multiply(BigDecimal.valueOf(20)));
                    BigDecimal usual = BigDecimal.valueOf(2000).max(twoSeasons).min(twenty);
                    return Plain.number(usual.min(BigDecimal.valueOf(25_000)));
                },
                "2,000 h, but at least two seasons and at most twenty from now; " + PRACTICE,
                "look up the last mower traded");
    }

    private static String flats(Given given) {
        return switch (given.text("where")) {
            case "lawns" -> "1.5";
            case "houses" -> "4";
            case "thorns" -> "6";
            default -> "3";
        };
    }

    static List<Question> beforeWork() {
        return List.of(MOWER, HOURS, FLATS);
    }
}
