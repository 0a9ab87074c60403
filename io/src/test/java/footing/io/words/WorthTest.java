package footing.io.words;

import static footing.io.words.Invented.saving;
import static org.assertj.core.api.Assertions.assertThat;

import footing.core.answer.Answer;
import footing.core.answer.Saving;
import footing.core.answer.Verdict;
import footing.core.fleet.When;
import org.junit.jupiter.api.Test;

class WorthTest {
    private static final Saving CLEAR = saving(1000, -210, 2000, 0.97);

    private static String told(Answer answer) {
        return String.join(" ", Worth.of(answer));
    }

    @Test
    void of_oneThatPays_tellsHourAndSeasonBeforeTheLife() {
        Answer answer = new Invented()
                .machine("A", false, Verdict.PAYS, "airless")
                .saves("A", "airless", When.NOW, CLEAR, 900)
                .answer();
        assertThat(told(answer))
                .startsWith("This is worth about 0.50 an hour run and 250 a season: 1,000 over the machine's life")
                .contains("If it goes badly you are out 210; if it goes well you are up 2,000")
                .contains("It pays in 9 in 10")
                .contains("It costs 900 at the start. Paid by the month that is 25 for 36 months; it spares you 60");
    }

    @Test
    void of_allKeep_saysThereIsNothingToBuy() {
        Answer answer =
                new Invented().machine("A", false, Verdict.KEEP, "airless").answer();
        assertThat(told(answer)).startsWith("There is nothing to buy:").doesNotContain("toss-up");
    }

    @Test
    void of_aTossUpThatLeansToWhatItHas_saysNothingToBuyYet() {
        Answer answer = new Invented()
                .machine("A", false, Verdict.CLOSE, "airless")
                .saves("A", "airless", When.NOW, saving(-10, -200, 180, 0.45), 900)
                .answer();
        assertThat(told(answer)).startsWith("There is nothing to buy yet:");
    }

    @Test
    void of_clearAndTossUp_tellsTheClearOneByItself() {
        Answer answer = new Invented()
                .machine("A", false, Verdict.PAYS, "airless")
                .saves("A", "airless", When.NOW, CLEAR, 900)
                .machine("B", false, Verdict.CLOSE, "airless")
                .saves("B", "airless", When.NOW, saving(60, -200, 300, 0.6), 700)
                .answer();
        assertThat(told(answer))
                .startsWith("A is worth about 0.50 an hour run")
                .contains("It costs 900 at the start.")
                .contains("If you make the changes the toss-ups lean to as well, it is 1,060")
                .contains("for 1,600 at the start");
    }

    @Test
    void of_negativeStartCost_saysThatItBringsMoneyIn() {
        Answer answer = new Invented()
                .machine("A", true, Verdict.PAYS, "sealant")
                .saves("A", "sealant", When.NOW, CLEAR, -120)
                .answer();
        assertThat(told(answer)).contains("At the start it brings in 120.").doesNotContain("-120");
    }

    @Test
    void of_whenWorn_costsNothingAtTheStart() {
        Answer answer = new Invented()
                .machine("A", false, Verdict.PAYS, "sealant")
                .saves("A", "sealant", When.WORN, CLEAR, 0)
                .answer();
        assertThat(told(answer)).endsWith("It costs nothing at the start.");
    }

    @Test
    void range_bothEndsPositive_isStillUp() {
        assertThat(Worth.range(saving(500, 40, 900, 0.99)))
                .startsWith("If it goes badly you are still up 40; if it goes well you are up 900");
    }
}
