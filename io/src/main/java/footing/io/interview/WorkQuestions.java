package footing.io.interview;

import static footing.io.interview.Guess.practice;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** What is asked about the crew: what it does about a flat, and what its time is worth. */
final class WorkQuestions {
    static final Question FIXES = Question.of(
            "fixes",
            "What do you do about a flat, and how long until it cuts again?",
            "Most of what a flat costs is time. The four shares make 100 %; what you leave open is filled up.",
            share("plug", "Plugged where it stands, out of all flats"),
            time("plug", "Until it cuts again after a plug", "25 min"),
            share("spare", "Spare wheel put on"),
            time("spare", "Until it cuts again on the spare", "20 min"),
            share("shop", "Taken to the shop"),
            time("shop", "Until it is back from the shop", "1 h 45 min"),
            share("call", "Somebody called out"),
            time("call", "Until somebody has come and mended it", "2 h"),
            Field.of("callCost", "A call-out costs", Shape.money(), practice("150", "look up the last bill for one"))
                    .when(OnlyIf.isNot("callShare", "0 %")));

    static final Question OTHERS = Question.of(
            "others",
            "While it is down, what do the others do?",
            "What one mower's standing still holds up is what its flats cost.",
            Field.of(
                    "others",
                    "The others",
                    Shape.choice(
                            new Choice("wait", "all wait"),
                            new Choice("half", "about half of the work gets done"),
                            new Choice("on", "they keep going")),
                    practice("half", "ask the crew leader")),
            Field.of(
                    "second",
                    "Does a second mower step in when one is gone for long",
                    Shape.choice(new Choice("no", "no"), new Choice("yes", "yes, doing about 60 % of its work")),
                    practice("no", "look at the trailer")));

    static final Question CATCHING_UP = Question.of(
            "catching-up",
            "How do you get that hour back, and how many weeks a year are booked solid?",
            "An hour made up costs wages; an hour lost costs what the customer would have paid.",
            Field.of(
                    "makeUp",
                    "The hour comes back",
                    Shape.choice(
                            new Choice("slack", "in slack, at the usual pay"),
                            new Choice("late", "by working late, paid extra"),
                            new Choice("saturday", "on Saturday, paid extra"),
                            new Choice("skipped", "not at all: the cut is skipped"),
                            new Choice("mixed", "some of each")),
                    practice("mixed", "think of the last one")),
            Field.of(
                    "fullWeeks",
                    "Weeks booked solid, from the first cut on",
                    Shape.whole(0, 52),
                    practice("8", "look at last spring's schedule")));

    static final Question MONEY = Question.of(
            "money",
            "Who is on it, what are they paid, and what do you charge?",
            "It turns hours into money.",
            Field.of(
                    "who",
                    "The crew",
                    Shape.choice(new Choice("crew", "hired people"), new Choice("owner", "the owner alone")),
                    practice("crew", "ask the owner")),
            Field.of("people", "People on the crew", Shape.whole(1, 50), people())
                    .when(OnlyIf.is("who", "crew")),
            Field.of(
                    "wage",
                    "Pay per hour and person",
                    Shape.money(),
                    practice(WorkQuestions::wage, "look at the payroll")),
            Field.of(
                    "burden",
                    "Payroll tax and insurance on top",
                    Shape.share(300),
                    practice(g -> g.is("who", "owner") ? "0 %" : "18 %", "ask the bookkeeper")),
            Field.of(
                    "chargePer",
                    "Charged per",
                    Shape.choice(
                            new Choice("man", "man-hour"),
                            new Choice("crew", "crew-hour"),
                            new Choice("day", "day of the whole crew")),
                    practice("man", "look at the price sheet")),
            Field.of(
                    "charge",
                    "What is charged for it",
                    Shape.money(),
                    practice(WorkQuestions::charge, "look at the last bills")),
            Field.of("day", "Route day", Shape.hours(1, 24), practice("9", "look at the time sheets")));

    static final List<String> SHARES = List.of("plugShare", "spareShare", "shopShare", "callShare");

    private static final List<Integer> USUAL = List.of(65, 15, 15, 5);
    private static final BigDecimal ALL = new BigDecimal(100);

    private WorkQuestions() {}

    private static Field share(String fix, String label) {
        Guess guess = practice(g -> shareOf(g, SHARES.indexOf(fix + "Share")), "ask whoever mends them");
        return Field.of(fix + "Share", label, Shape.share(100), guess);
    }

    private static Field time(String fix, String label, String usual) {
        return Field.of(fix + "Time", label, Shape.duration(), practice(usual, "ask whoever mends them"))
                .when(OnlyIf.isNot(fix + "Share", "0 %"));
    }

    /** What the shares that were typed leave, split as usual; the last one takes the rounding. */
    private static String shareOf(Given given, int index) {
        BigDecimal left = ALL;
        List<Integer> open = new ArrayList<>();
        for (int i = 0; i < SHARES.size(); i++) {
            if (given.isYours(SHARES.get(i))) {
                left = left.subtract(given.number(SHARES.get(i)));
            } else {
                open.add(i);
            }
        }
        left = left.max(BigDecimal.ZERO);
        BigDecimal usual = BigDecimal.valueOf(open.stream().mapToInt(USUAL::get).sum());
        BigDecimal others = BigDecimal.ZERO;
        for (int i : open) {
            boolean last = i == open.get(open.size() - 1);
            BigDecimal part = left.multiply(BigDecimal.valueOf(USUAL.get(i))).divide(usual, 0, RoundingMode.DOWN);
            BigDecimal share = last ? left.subtract(others) : part;
            if (i == index) {
                return Plain.share(share);
            }
            others = others.add(share);
        }
        return "0 %";
    }

    private static Guess people() {
        return practice(g -> g.is("who", "owner") ? "1" : "2", "ask the crew leader");
    }

    private static String wage(Given given) {
        return given.is("who", "owner") ? "30" : "20";
    }

    /** 55 a man-hour. */
    private static String charge(Given given) {
        BigDecimal people = given.number("people");
        BigDecimal manHour = BigDecimal.valueOf(55);
        return Plain.number(
                switch (given.text("chargePer")) {
                    case "crew" -> manHour.multiply(people);
                    case "day" -> manHour.multiply(people).multiply(given.number("day"));
                    default -> manHour;
                });
    }

    static List<Question> all() {
        return List.of(FIXES, OTHERS, CATCHING_UP, MONEY);
    }
}
