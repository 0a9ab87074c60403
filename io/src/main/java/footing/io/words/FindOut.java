package footing.io.words;

import footing.core.answer.Answer;
import footing.core.answer.MachineAnswer;
import footing.core.fleet.Called;
import footing.core.fleet.Case;
import footing.core.fleet.Input;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Something worth finding out before deciding. Each machine is decided by itself, so that what one thing is worth to
 * know adds up over machines.
 *
 * @param value what not knowing it costs on the average
 */
public record FindOut(Input input, double value) {

    /** What shows in whole units of money, dearest first. */
    public static List<FindOut> of(Answer answer) {
        Map<Input, Double> worth = new LinkedHashMap<>();
        for (MachineAnswer m : answer.machines()) {
            MachineAnswer.FindOutFirst first = m.findOutFirst();
            if (first != null) {
                first.each().forEach(w -> worth.merge(w.input(), w.value(), Double::sum));
            }
        }
        return worth.entrySet().stream()
                .map(e -> new FindOut(e.getKey(), e.getValue()))
                .filter(FindOut::shows)
                .sorted(Comparator.comparingDouble(FindOut::value).reversed())
                .toList();
    }

    /** True if its worth is not zero once rounded to whole units. */
    public boolean shows() {
        return Figures.shows(value);
    }

    /** True if the answer says what knowing more is worth at all. */
    public static boolean isKnown(Answer answer) {
        return answer.machines().stream().anyMatch(m -> m.findOutFirst() != null);
    }

    /** 'Not knowing this could cost you about 118: ...; find out by ...' */
    public String told(Case stated) {
        return "Not knowing " + subject(stated) + " could cost you about " + Figures.money(value) + "; find out by "
                + how() + ".";
    }

    private String subject(Case stated) {
        String owner = input.owner();
        return switch (input.key()) {
            case FLATS_PER_SEASON, FLATS_PER_1000H -> "how often " + owner + " gets a flat";
            case MAKE_UP_LATER -> "how much of its lost time " + Naming.crew(owner) + " makes up another day";
            case FULL_LATER -> "how much " + Naming.crew(owner) + " makes up in its full weeks";
            case LIFE_UNSURE -> "how long " + Called.in(stated).assembly(owner) + " last on your ground";
            case FLAT_FACTOR -> "what share of flats " + Called.in(stated).assembly(owner) + " still let through";
            case RUIN_FACTOR -> "how often a hit ruins " + Called.in(stated).assembly(owner);
            default -> Naming.of(stated, input);
        };
    }

    private String how() {
        return switch (input.key()) {
            case FLATS_PER_SEASON, FLATS_PER_1000H -> "writing down every flat, with the hour meter, for two months";
            case MAKE_UP_LATER, FULL_LATER -> "asking the crew leader what became of the last ten stops";
            case LIFE_UNSURE -> "running one set and measuring its tread against the hour meter";
            case FLAT_FACTOR -> "treating one machine and counting its flats against its neighbor's";
            case RUIN_FACTOR -> "asking owners on the same ground, or running one set for a season";
            default -> "measuring it";
        };
    }
}
