package footing.io.words;

import static footing.io.words.Invented.saving;
import static org.assertj.core.api.Assertions.assertThat;

import footing.core.answer.Answer;
import footing.core.answer.Saving;
import footing.core.answer.Verdict;
import footing.core.fleet.When;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class HeadlineTest {
    private static final Saving CLEAR = saving(1000, 200, 1800, 0.97);
    private static final Saving UNCLEAR = saving(60, -200, 300, 0.6);

    @Test
    void of_allKeep_leavesThemAll() {
        Invented some = new Invented();
        for (int i = 1; i <= 3; i++) {
            some.machine("M" + i, false, Verdict.KEEP, "airless");
        }
        assertThat(Headline.of(some.answer())).isEqualTo("Leave all three machines as they are.");
    }

    @Test
    void of_allPay_namesEachOnceByWhatItGets() {
        Answer answer = new Invented()
                .machine("A", false, Verdict.PAYS, "airless")
                .machine("B", false, Verdict.PAYS, "airless")
                .machine("C", true, Verdict.PAYS, "airless")
                .saves("A", "airless", When.NOW, CLEAR, 900)
                .saves("B", "airless", When.NOW, CLEAR, 900)
                .saves("C", "airless", When.NOW, CLEAR, 900)
                .answer();
        assertThat(Headline.of(answer))
                .isEqualTo("Order C with airless drives and solid casters, and swap A and B over to the same now.");
    }

    @Test
    void of_aNewMachineThatKeeps_isOrderedAsItComes() {
        Answer answer = new Invented()
                .machine("A", true, Verdict.KEEP, "airless")
                .machine("B", false, Verdict.KEEP, "airless")
                .machine("C", false, Verdict.KEEP, "airless")
                .answer();
        assertThat(Headline.of(answer)).isEqualTo("Order A as it comes, and leave the other two as they are.");
    }

    @Test
    void of_oneMachineThatPays_isOneSentence() {
        Answer answer = new Invented()
                .machine("A", false, Verdict.PAYS, "sealant")
                .saves("A", "sealant", When.NOW, CLEAR, 45)
                .answer();
        assertThat(Headline.of(answer)).isEqualTo("Swap A over to sealant drives now.");
    }

    @Test
    void of_whenWorn_saysWhen() {
        Answer answer = new Invented()
                .machine("A", false, Verdict.PAYS, "sealant")
                .saves("A", "sealant", When.WORN, CLEAR, 0)
                .answer();
        assertThat(Headline.of(answer)).isEqualTo("Swap A over to sealant drives as its sets wear out.");
    }

    @Test
    void of_oneTossUp_namesBothSides() {
        Answer answer = new Invented()
                .machine("A", false, Verdict.CLOSE, "airless")
                .saves("A", "airless", When.NOW, UNCLEAR, 900)
                .machine("B", false, Verdict.KEEP, "airless")
                .answer();
        assertThat(Headline.of(answer))
                .isEqualTo("A is a toss-up: airless drives and solid casters, or leave it as it is."
                        + " Leave B as it is.");
    }

    @Test
    void of_tossUpsFirst_keepTheCaseOfTheirIds() {
        Answer answer = new Invented()
                .machine("m1", false, Verdict.CLOSE, "airless")
                .saves("m1", "airless", When.NOW, UNCLEAR, 900)
                .machine("m2", false, Verdict.CLOSE, "airless")
                .saves("m2", "airless", When.NOW, UNCLEAR, 900)
                .answer();
        assertThat(Headline.of(answer)).isEqualTo("m1 and m2 are toss-ups.");
    }

    @Test
    void of_thirtyMachines_namesTheFirstAndCountsTheRest() {
        Invented fleet = new Invented();
        for (int i = 1; i <= 20; i++) {
            fleet.machine("K" + i, false, Verdict.KEEP, "airless");
        }
        for (int i = 1; i <= 10; i++) {
            fleet.machine("P" + i, false, Verdict.PAYS, "airless").saves("P" + i, "airless", When.NOW, CLEAR, 900);
        }
        assertThat(Headline.of(fleet.answer()))
                .isEqualTo("Swap ten machines (P1, P2, P3, P4 and six more) over to airless drives and solid casters"
                        + " now. Leave the other 20 as they are.");
    }

    @Test
    void of_packagesToldByTheSameWords_namesThePackage() {
        Answer answer = new Invented()
                .machine("A", false, Verdict.PAYS, "airless", "airless-b")
                .saves("A", "airless-b", When.NOW, CLEAR, 900)
                .answer();
        assertThat(Headline.of(answer)).isEqualTo("Swap A over to airless drives and solid casters (airless-b) now.");
    }

    @Test
    void of_anyAnswer_agreesWithItsRows() {
        for (Verdict verdict : Verdict.values()) {
            Answer answer = new Invented()
                    .machine("A", false, verdict, "airless")
                    .saves("A", "airless", When.NOW, verdict == Verdict.KEEP ? saving(-90, -300, 10, 0.1) : CLEAR, 900)
                    .answer();
            String row = Advice.all(answer).get(0).row();
            Pattern sameAdvice = Pattern.compile(
                    switch (verdict) {
                        case PAYS -> "swap now.*Swap A over";
                        case KEEP -> "keep.*Leave A as it is";
                        case CLOSE -> "toss-up.*A is a toss-up";
                    });
            assertThat(row + " / " + Headline.of(answer)).containsPattern(sameAdvice);
        }
    }
}
