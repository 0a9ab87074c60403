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
                + " at the start. Paid by the month that is " + Figures.money(monthly.payment()) + " for "
                + monthly.months() + " months.";
        return List.of(payment, avoided(monthly));
    }

    private static String avoided(EntryAnswer.Monthly m) {
        String over = " a month over that time, on average and in the money of the day";
        if (m.avoided() < 0) {
            return "They cost " + Figures.size(m.avoided()) + over + " more to run: no loan carries that.";
        }
        String spared = "They spare " + Figures.money(m.avoided()) + over + ": ";
        return m.avoided() >= m.payment()
                ? spared + "they carry their own payment."
                : spared + Figures.money(m.payment() - m.avoided()) + " short of the payment.";
    }
}
