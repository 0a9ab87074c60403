package footing.io.words;

import footing.core.answer.EntryAnswer;
import java.util.List;

/** The loan test in words: does what is avoided in a month carry the payment? */
public final class Payment {
    private Payment() {}

    /** What is paid at the start and by the month, then what is avoided; empty if there is nothing to change to. */
    public static List<String> told(Advice a) {
        EntryAnswer about = a.about();
        if (about == null) {
            return List.of();
        }
        EntryAnswer.Monthly monthly = about.monthly();
        if (monthly == null) {
            return List.of("Nothing is paid at the start, so there is nothing to borrow.");
        }
        if (monthly.payment() < 0) {
            return List.of(Lists.capital(a.piecesWhen()) + " bring in " + Figures.size(about.startCost())
                    + " at the start, so there is nothing to borrow.");
        }
        String payment = Lists.capital(a.piecesWhen()) + " cost " + Figures.money(about.startCost())
                + " at the start. Paid by the month that is " + Figures.monthly(monthly.payment()) + " for "
                + monthly.months() + " months.";
        return List.of(payment, avoided(monthly));
    }

    static String avoided(EntryAnswer.Monthly m) {
        String time = m.isTradedFirst() ? "until the trade, " + month(m.over()) + " on" : "over that time";
        String average = ", on average and in the money of the day";
        if (m.avoided() < 0) {
            return "They cost " + Figures.monthly(Math.abs(m.avoided())) + " a month more to run " + time + average
                    + ": no loan carries that.";
        }
        String spared = "They spare " + Figures.monthly(m.avoided()) + " a month " + time + average;
        return m.isTradedFirst() || m.paid() > m.payment() * m.months() ? spared + inAll(m) : spared + monthly(m);
    }

    private static String monthly(EntryAnswer.Monthly m) {
        return m.avoided() >= m.payment()
                ? ": they carry their own payment."
                : ": " + missing(m) + " short of the payment.";
    }

    /** In cents only where one of the two it lies between is. */
    private static String missing(EntryAnswer.Monthly m) {
        double missing = m.payment() - m.avoided();
        boolean whole = Figures.monthly(m.payment()).indexOf('.') < 0
                && Figures.monthly(m.avoided()).indexOf('.') < 0;
        return whole ? Figures.money(missing) : Figures.rate(missing);
    }

    /** The loan outlasts the machine, or something is paid down: then the sums count, not a month. */
    private static String inAll(EntryAnswer.Monthly m) {
        double missing = m.paid() - m.avoidedInAll();
        return ": " + Figures.money(m.avoidedInAll()) + " in all, against " + Figures.money(m.paid())
                + (m.isTradedFirst() ? " paid by then, with what is still owed at the trade: " : " paid: ")
                + (missing > 0 ? "they do not carry their own payment." : "they carry their own payment.");
    }

    /** '1 month', '31 months'. */
    static String month(double months) {
        String n = Figures.money(Math.rint(months));
        return n + (n.equals("1") ? " month" : " months");
    }
}
