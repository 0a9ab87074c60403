package footing.io.words;

import footing.core.chance.Metalog;
import footing.core.chance.Spread;
import footing.core.fleet.Called;
import footing.core.fleet.Case;
import footing.core.fleet.Dimension;
import footing.core.fleet.Input;
import footing.core.fleet.Numbers;
import footing.core.fleet.Place;
import java.util.Optional;

/** What taking records into a case puts in place of what, a sentence for each number. */
public final class TakenInWords {
    private TakenInWords() {}

    /**
     * What is put in.
     *
     * @param low one in ten is below, in the unit the case counts in; {@code high} one in ten is above
     * @param before what stood there; empty if nothing did
     */
    public static String put(Case stated, Input input, double low, double high, Optional<Numbers.Stated> before) {
        return head(stated, input) + range(input.key().dimension(), low, high) + ", by your records; "
                + before.map(b -> before(input.key().dimension(), b)).orElse("nothing was said before") + ".";
    }

    /** What is put in of a fix: what was said of it stays beside what the records tell. */
    public static String fix(Input input, String name, Numbers.Stated before) {
        return input.owner() + ", " + name + ", " + Naming.label(input)
                + ": by your records beside what was held before; "
                + before(input.key().dimension(), before) + ".";
    }

    /** What can't be put in, as the file doesn't state it itself. */
    public static String stays(Case stated, Input input, Optional<Numbers.Stated> before) {
        return head(stated, input)
                + before.map(b -> "stays at " + range(input.key().dimension(), b.value()))
                        .orElse("stays as it is")
                + ": it is not stated in this case file itself.";
    }

    /** 'E1, flats a season on air: '. */
    private static String head(Case stated, Input input) {
        String owner = input.key().place() == Place.ASSEMBLY
                ? Lists.capital(Called.in(stated).assembly(input.owner()))
                : input.owner();
        return owner + ", " + Naming.withoutOwner(stated, input) + ": ";
    }

    private static String before(Dimension dimension, Numbers.Stated before) {
        String value = range(dimension, before.value());
        return switch (before.origin()) {
            case STATED -> "you said " + value;
            case GUESSED, DEFAULT -> "the guess was " + value;
            case TYPICAL -> "typical is " + value;
            case LEARNED -> "the records taken in before said " + value;
        };
    }

    private static String range(Dimension dimension, Spread spread) {
        return spread instanceof Metalog m
                ? range(dimension, m.low(), m.high())
                : Naming.value(dimension, spread.likely());
    }

    private static String range(Dimension dimension, double low, double high) {
        String from = Naming.value(dimension, low);
        String to = Naming.value(dimension, high);
        return from.equals(to) ? from : from + " to " + to;
    }
}
