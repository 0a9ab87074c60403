package footing.io.figure;

import footing.core.answer.EntryAnswer;
import footing.core.answer.MachineAnswer;
import footing.core.answer.MachineAnswer.Driver;
import footing.core.fleet.Case;
import footing.io.words.Advice;
import footing.io.words.Lists;
import footing.io.words.Naming;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What moves the saving: for the weightiest inputs what it would be at a low and at a high value. */
final class WhatMovesIt {
    private static final int MOST = 8;

    private WhatMovesIt() {}

    static Figure of(Case stated, Advice advice, EntryAnswer about, List<Driver> drivers) {
        List<Driver> most = drivers.stream()
                .sorted(Comparator.comparingDouble(Driver::swing).reversed())
                .limit(MOST)
                .toList();
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < most.size(); i++) {
            points.add(point(i, about.saving().mean(), most.get(i)));
        }
        return new Figure(
                "what-moves-it",
                "What moves it",
                "What " + advice.piecesWhen() + " would save if one number alone were other than it is, the choice"
                        + " not made anew. Reckoned on the first 4,000 of the ways it could go.",
                Kind.RANGES,
                Axis.named(
                        "number",
                        most.stream()
                                .map(d -> name(stated, advice.machine(), d))
                                .toList()),
                Axis.of("saving over its life", Unit.MONEY),
                List.of(new Series("as answered", Shape.SPAN, Tone.CHOICE, Stroke.SOLID, points)),
                List.of(
                        new Figure.Mark(0, "no difference"),
                        new Figure.Mark(about.saving().mean(), "as answered")));
    }

    private static Point point(int at, double mean, Driver d) {
        var dimension = d.input().input().key().dimension();
        return new Point(
                at,
                mean,
                new Point.Span(
                        d.savingAtLow(),
                        d.savingAtHigh(),
                        Naming.value(dimension, d.low()),
                        Naming.value(dimension, d.high())));
    }

    private static String name(Case stated, MachineAnswer machine, Driver d) {
        String guess = Naming.isGuess(d.input()) ? " — a guess" : "";
        return Lists.capital(Naming.moved(stated, d.input().input()))
                + (turns(machine, d) ? " — a guess that could turn the verdict" : guess);
    }

    private static boolean turns(MachineAnswer machine, Driver d) {
        List<MachineAnswer.Guess> guesses = machine.guesses();
        return guesses != null
                && guesses.stream()
                        .anyMatch(g -> g.turnsVerdict()
                                && g.input().input().equals(d.input().input()));
    }
}
