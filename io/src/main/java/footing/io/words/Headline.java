package footing.io.words;

import footing.core.answer.Answer;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The answer to a case as a contractor would say it: what to change, what is a toss-up, and what stays. */
public final class Headline {
    private final List<Advice> machines;
    private final List<String> sentences = new ArrayList<>();
    private String lastPieces = "";

    private Headline(List<Advice> machines) {
        this.machines = machines;
    }

    public static String of(Answer answer) {
        return of(Advice.all(answer));
    }

    public static String of(List<Advice> machines) {
        return new Headline(machines).told();
    }

    private String told() {
        changes();
        tossUps();
        rest();
        return String.join(" ", sentences);
    }

    private void changes() {
        List<String> clauses = new ArrayList<>();
        for (Verb verb : List.of(Verb.ORDER_WITH, Verb.SWAP_NOW, Verb.SWAP_WHEN_WORN)) {
            byPieces(verb).forEach((pieces, ids) -> clauses.add(clause(verb, pieces, ids)));
        }
        for (int i = 0; i < clauses.size(); i += 2) {
            sentences.add(Lists.capital(String.join(", and ", clauses.subList(i, Math.min(i + 2, clauses.size()))))
                    + ".");
        }
    }

    private Map<String, List<String>> byPieces(Verb verb) {
        Map<String, List<String>> groups = new LinkedHashMap<>();
        for (Advice a : having(verb)) {
            groups.computeIfAbsent(a.pieces(), p -> new ArrayList<>()).add(a.id());
        }
        return groups;
    }

    private String clause(Verb verb, String pieces, List<String> ids) {
        String who = Lists.machines(ids);
        String what = pieces.equals(lastPieces) ? "the same" : pieces;
        lastPieces = pieces;
        return switch (verb) {
            case ORDER_WITH -> "order " + who + " with " + what;
            case SWAP_NOW -> "swap " + who + " over to " + what + " now";
            default ->
                "swap " + who + " over to " + what + (ids.size() == 1 ? " as its sets" : " as their sets")
                        + " wear out";
        };
    }

    private void tossUps() {
        List<Advice> tossUps = having(Verb.TOSS_UP);
        if (tossUps.isEmpty()) {
            return;
        }
        if (tossUps.size() == 1) {
            Advice only = tossUps.get(0);
            sentences.add(only.id() + " is a toss-up: " + only.piecesWhen() + ", or "
                    + (only.isBetweenChanges() ? only.rivalWords() : "leave it " + only.asItIs()) + ".");
            return;
        }
        sentences.add(Lists.machinesFirst(ids(tossUps)) + " are toss-ups.");
    }

    private void rest() {
        List<Advice> asTheyCome = having(Verb.ORDER_AS_IT_COMES);
        List<Advice> kept = having(Verb.KEEP);
        List<String> clauses = new ArrayList<>();
        if (!asTheyCome.isEmpty()) {
            boolean one = asTheyCome.size() == 1;
            clauses.add("order " + Lists.machines(ids(asTheyCome)) + (one ? " as it comes" : " as they come"));
        }
        if (!kept.isEmpty()) {
            clauses.add("leave " + left(kept, kept.size() == machines.size()));
        }
        if (!clauses.isEmpty()) {
            sentences.add(Lists.capital(String.join(", and ", clauses)) + ".");
        }
    }

    private String left(List<Advice> kept, boolean everything) {
        if (kept.size() == 1) {
            return kept.get(0).id() + " as it is";
        }
        return (everything ? "all " : "the other ") + Figures.word(kept.size()) + (everything ? " machines" : "")
                + " as they are";
    }

    private List<Advice> having(Verb verb) {
        return machines.stream().filter(a -> a.verb() == verb).toList();
    }

    private static List<String> ids(List<Advice> some) {
        return some.stream().map(Advice::id).toList();
    }
}
