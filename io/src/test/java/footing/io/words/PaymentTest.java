package footing.io.words;

import static org.assertj.core.api.Assertions.assertThat;

import footing.core.answer.EntryAnswer;
import org.junit.jupiter.api.Test;

/** A loan that outlasts the machine is judged by the sums, not by a month. */
class PaymentTest {
    @Test
    void avoided_loanEndsFirst_goesByTheMonth() {
        assertThat(Payment.avoided(new EntryAnswer.Monthly(28, 74, 36, 36, 28 * 36)))
                .isEqualTo(
                        "They spare 74 a month over that time, on average and in the money of the day: they carry their"
                                + " own payment.");
        assertThat(Payment.avoided(new EntryAnswer.Monthly(28, 20, 36, 36, 28 * 36)))
                .endsWith(": 8 short of the payment.");
    }

    @Test
    void avoided_tradedFirst_countsWhatIsStillOwed() {
        // 79 a month is more than the 43 paid, yet seven months of it pay back no loan of 36.
        assertThat(Payment.avoided(new EntryAnswer.Monthly(43, 79, 36, 6.6, 1455)))
                .isEqualTo("They spare 79 a month until the trade, 7 months on, on average and in the money of the day:"
                        + " 521 in all, against 1,455 paid by then, with what is still owed at the trade: they do not"
                        + " carry their own payment.");
        assertThat(Payment.avoided(new EntryAnswer.Monthly(43, 300, 36, 6.6, 1455)))
                .endsWith("they carry their own payment.");
    }

    @Test
    void avoided_paidDown_countsThatToo() {
        assertThat(Payment.avoided(new EntryAnswer.Monthly(20, 25, 36, 36, 20 * 36 + 400)))
                .contains("900 in all, against 1,120 paid:")
                .endsWith("they do not carry their own payment.");
    }
}
