package footing.io.figure;

import footing.core.answer.EntryAnswer;
import footing.io.words.Advice;
import footing.io.words.Lists;
import footing.io.words.Pieces;

/** What an entry is called in figures and tables of its machine. */
public final class EntryName {
    private EntryName() {}

    public static boolean isCarried(Advice advice, EntryAnswer entry) {
        return entry.entry().equals(advice.machine().carried().entry());
    }

    /** 'As it is: air drives and air casters' or 'Airless drives when worn'. */
    public static String of(Advice advice, EntryAnswer entry) {
        String name = isCarried(advice, entry)
                ? advice.asItIs() + ": " + Pieces.all(advice.machine().machine(), entry.entry())
                : Pieces.changedWhen(advice.machine().machine(), entry.entry());
        return Lists.capital(name);
    }
}
