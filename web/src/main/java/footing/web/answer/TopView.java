package footing.web.answer;

import footing.core.answer.Answer;
import footing.core.answer.MachineAnswer;
import footing.core.fleet.Case;
import footing.core.fleet.InForce;
import footing.core.fleet.Origin;
import footing.io.form.Problem;
import footing.io.words.Advice;
import footing.io.words.Figures;
import footing.io.words.FindOut;
import footing.io.words.Headline;
import footing.io.words.Lists;
import footing.io.words.MoneyBasis;
import footing.io.words.Naming;
import footing.io.words.Origins;
import footing.io.words.TurningGuess;
import footing.io.words.Worth;
import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;

/**
 * What stands at the top of an answer, and what to find out first.
 *
 * @param basis the currency, and whether tax is in it
 * @param yours '209 of 362 numbers are yours'
 * @param moreGuesses how many more could turn a verdict than are named
 * @param worth the money, a sentence each
 */
record TopView(
        String asOf,
        String basis,
        String currency,
        String yours,
        List<Guess> guesses,
        int moreGuesses,
        String headline,
        List<String> worth,
        List<String> warnings,
        List<String> findOut,
        boolean caution) {
    private static final int MOST_GUESSES = 3;
    private static final int MOST_TO_FIND_OUT = 5;

    /** A guess that could turn a verdict: its field, what it is, the value in force, what it could turn. */
    record Guess(String field, String name, String value, String told) {}

    static TopView of(Answer answer, List<Problem> asked) {
        Case stated = answer.of();
        List<Advice> all = Advice.all(answer);
        List<TurningGuess> guesses = TurningGuess.of(answer);
        return new TopView(
                stated.heading().asOf().toString(),
                MoneyBasis.of(stated),
                stated.heading().currency(),
                yours(answer),
                guesses.stream().limit(MOST_GUESSES).map(g -> guess(answer, g)).toList(),
                Math.max(0, guesses.size() - MOST_GUESSES),
                Headline.of(all),
                Worth.of(answer),
                Stream.concat(
                                answer.warnings().stream(),
                                asked.stream().map(p -> p.path() + ", line " + p.line() + ": " + p.said()))
                        .toList(),
                FindOut.of(answer).stream()
                        .limit(MOST_TO_FIND_OUT)
                        .map(f -> f.told(stated))
                        .toList(),
                all.stream().anyMatch(a -> a.verb().changes() || a.leansToChange()));
    }

    private static String yours(Answer answer) {
        Collection<InForce> numbers = Origins.inForce(
                answer.of(), answer.machines().stream().map(MachineAnswer::id).toList());
        long yours = numbers.stream().filter(n -> n.origin() == Origin.STATED).count();
        return Figures.money((double) yours) + " of " + Figures.money(numbers.size()) + " numbers are yours";
    }

    private static Guess guess(Answer answer, TurningGuess g) {
        return new Guess(
                FieldView.id(g.guess().input()),
                Lists.capital(Naming.of(answer.of(), g.guess().input())),
                Naming.value(g.guess()),
                g.told(answer));
    }

    /** 'these three guesses matter most', 'this guess matters most', or that none turns anything. */
    public String matter() {
        return switch (guesses.size()) {
            case 0 -> "no guess, moved by a fifth either way, turns what is said here";
            case 1 -> "this guess matters most";
            default -> "these " + Figures.word(guesses.size()) + " guesses matter most";
        };
    }
}
