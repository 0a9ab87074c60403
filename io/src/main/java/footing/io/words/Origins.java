package footing.io.words;

import footing.core.answer.Answer;
import footing.core.answer.MachineAnswer;
import footing.core.fleet.Case;
import footing.core.fleet.InForce;
import footing.core.fleet.Input;
import footing.core.fleet.Origin;
import footing.core.fleet.Values;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** How many numbers an answer rests on, and whose they are. */
public final class Origins {
    private Origins() {}

    /** 'It rests on 190 numbers: 120 are yours, 70 are guesses.' */
    public static String told(Answer answer) {
        return told(inForce(
                answer.of(), answer.machines().stream().map(MachineAnswer::id).toList()));
    }

    /** The same for numbers given one by one. */
    public static String told(Collection<InForce> numbers) {
        List<String> parts = new ArrayList<>();
        add(parts, count(numbers, Origin.STATED), "yours");
        add(parts, count(numbers, Origin.LEARNED), "from your records");
        add(parts, count(numbers, Origin.TYPICAL), "typical figures, not quotes");
        add(parts, count(numbers, Origin.GUESSED), "guesses of your file");
        add(parts, count(numbers, Origin.DEFAULT), "guesses of Footing");
        return "It rests on " + Figures.money(numbers.size()) + " numbers: " + Lists.and(parts) + ".";
    }

    private static void add(List<String> parts, int count, String whose) {
        if (count > 0) {
            parts.add(Figures.money(count) + (parts.isEmpty() ? " are " : " ") + whose);
        }
    }

    private static int count(Collection<InForce> numbers, Origin origin) {
        return (int) numbers.stream().filter(n -> n.origin() == origin).count();
    }

    /** Every number some of the machines depend on, once. */
    public static Collection<InForce> inForce(Case stated, List<String> machines) {
        Map<Input, InForce> numbers = new LinkedHashMap<>();
        for (String id : machines) {
            for (InForce number : new Values(stated, stated.machine(id)).all()) {
                if (matters(stated, number)) {
                    numbers.putIfAbsent(number.input(), number);
                }
            }
        }
        return numbers.values();
    }

    /** A default about what does not take place is no number anything rests on. */
    public static boolean matters(Case stated, InForce number) {
        Input input = number.input();
        return number.origin() != Origin.DEFAULT
                || switch (input.key()) {
                    case FLATS_AT_CASTER -> false;
                    case TREAT_PRICE, TREAT_HOURS ->
                        stated.assembly(input.owner()).treats() != null;
                    case WORN_DRIVE, WORN_CASTER ->
                        !stated.machine(input.owner()).isNew();
                    default -> true;
                };
    }
}
