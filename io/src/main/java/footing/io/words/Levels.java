package footing.io.words;

import footing.core.answer.EntryAnswer;
import footing.core.fleet.ResolvedCrew;
import java.util.ArrayList;
import java.util.List;

/** A saving built up from its three levels: parts alone, the crew's paid time, the work that is lost. */
public final class Levels {
    private Levels() {}

    /** What an hour that is made up is paid: 'Hours made up are paid 1.5 times the wage, burden on top.' */
    public static String overtime(ResolvedCrew crew) {
        double premium = crew.overtimePremium();
        return "Hours made up are paid "
                + (premium == 0 ? "the usual wage" : Figures.decimals(1 + premium, 2) + " times the wage")
                + ", with the burden on top.";
    }

    /** 'In parts and shop time alone it loses 35; the crew's paid time adds 925 and work not lost 424.' */
    static String told(EntryAnswer about) {
        double parts = mean(about, EntryAnswer.Counting.PARTS);
        double withTime = mean(about, EntryAnswer.Counting.PARTS_AND_TIME);
        double time = withTime - parts;
        double work = mean(about, EntryAnswer.Counting.ALL) - withTime;
        List<String> more = new ArrayList<>();
        if (Figures.shows(time)) {
            more.add("the crew's paid time " + moves(time));
        }
        if (Figures.shows(work)) {
            boolean sameWay = !more.isEmpty() && time > 0 == work > 0;
            more.add(
                    work > 0 || sameWay ? "work not lost " + (sameWay ? Figures.size(work) : moves(work)) : lost(work));
        }
        return more.isEmpty()
                ? "All of it is parts and shop time."
                : "In parts and shop time alone it " + alone(parts) + "; " + Lists.and(more) + ".";
    }

    private static String lost(double work) {
        return "more work lost takes off " + Figures.size(work);
    }

    private static String moves(double money) {
        return (money > 0 ? "adds " : "takes off ") + Figures.size(money);
    }

    private static String alone(double parts) {
        if (!Figures.shows(parts)) {
            return "comes out even";
        }
        return (parts > 0 ? "saves " : "loses ") + Figures.size(parts);
    }

    private static double mean(EntryAnswer about, EntryAnswer.Counting counting) {
        return about.levels().stream()
                .filter(l -> l.counting() == counting)
                .mapToDouble(EntryAnswer.Level::mean)
                .findFirst()
                .orElse(0);
    }
}
