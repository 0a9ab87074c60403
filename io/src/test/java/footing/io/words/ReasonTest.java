package footing.io.words;

import static footing.io.words.Invented.saving;
import static org.assertj.core.api.Assertions.assertThat;

import footing.core.answer.Answer;
import footing.core.answer.Verdict;
import footing.core.fleet.When;
import org.junit.jupiter.api.Test;

class ReasonTest {
    private static String reason(Answer answer) {
        return Reason.of(answer, Advice.all(answer).get(0));
    }

    @Test
    void of_pays_saysFromHowManyFlats() {
        Answer answer = new Invented()
                .machine("A", false, Verdict.PAYS, "airless")
                .saves("A", "airless", When.NOW, saving(1000, 200, 1800, 0.97), 900)
                .breakEven(2.3, 6.7)
                .answer();
        assertThat(reason(answer))
                .isEqualTo(
                        "Saves 0.50 an hour run, 250 a season. In parts and shop time alone it saves 1; the crew's paid"
                                + " time adds 1 and work not lost 998. On average it pays from 2.1 flats a season; you said 6 (3 to"
                                + " 11).");
    }

    @Test
    void of_oneNumberOfFlats_isToldAsThatNumber() {
        Answer answer = new Invented()
                .flats("3")
                .machine("A", false, Verdict.PAYS, "airless")
                .saves("A", "airless", When.NOW, saving(1000, 200, 1800, 0.97), 900)
                .breakEven(2.3, 3)
                .answer();
        assertThat(reason(answer)).endsWith("On average it pays from 2.3 flats a season; you said 3.");
    }

    @Test
    void of_partsAloneLose_saysWhatMakesUpForIt() {
        Answer answer = new Invented()
                .machine("A", false, Verdict.PAYS, "airless")
                .saves("A", "airless", When.NOW, saving(1314, 200, 1800, 0.97), 900)
                .levels(-35, 890)
                .answer();
        assertThat(reason(answer))
                .contains("In parts and shop time alone it loses 35; the crew's paid time adds 925 and work not lost"
                        + " 424.");
    }

    @Test
    void of_timeAndWorkPullApart_saysWhichWay() {
        Answer answer = new Invented()
                .machine("A", false, Verdict.PAYS, "airless")
                .saves("A", "airless", When.NOW, saving(300, 200, 1800, 0.97), 900)
                .levels(400, 200)
                .answer();
        assertThat(reason(answer))
                .contains("saves 400; the crew's paid time takes off 200 and work not lost adds 100.");
    }

    @Test
    void of_lessThanASeasonLeft_hasNoFigureASeason() {
        Answer answer = new Invented()
                .hoursNow(1700)
                .machine("A", false, Verdict.KEEP, "airless")
                .saves("A", "airless", When.NOW, saving(-91, -300, 20, 0.12), 900)
                .answer();
        assertThat(reason(answer)).endsWith("costs 91 more over its life.").doesNotContain("a season");
    }

    @Test
    void of_paysWithFewerFlats_saysUpToHowMany() {
        Answer answer = new Invented()
                .machine("A", false, Verdict.PAYS, "airless")
                .saves("A", "airless", When.NOW, saving(1000, 200, 1800, 0.97), 900)
                .breakEven(9, 6)
                .answer();
        assertThat(reason(answer)).contains("On average it pays up to 9 flats a season");
    }

    @Test
    void of_keep_namesTheNextBestCalmly() {
        Answer answer = new Invented()
                .machine("A", false, Verdict.KEEP, "airless")
                .saves("A", "airless", When.NOW, saving(-136, -300, 20, 0.12), 900)
                .breakEven(8, 6)
                .answer();
        assertThat(reason(answer))
                .startsWith("Next best, airless drives and solid casters, costs 136 more over its life (34 a season).")
                .contains("On average it would pay from 8 flats a season");
    }

    @Test
    void of_tossUpBelowTheThreshold_saysInHowManyItPays() {
        Answer answer = new Invented()
                .machine("A", false, Verdict.CLOSE, "airless")
                .saves("A", "airless", When.NOW, saving(200, -200, 600, 0.7), 900)
                .answer();
        assertThat(reason(answer)).contains("would save 0.10 an hour run, 50 a season, but pay in only 7 in 10");
    }

    @Test
    void of_tossUpAboveTheThreshold_doesNotCallTheChanceSmall() {
        Answer answer = new Invented()
                .machine("A", false, Verdict.CLOSE, "airless")
                .saves("A", "airless", When.NOW, saving(20, 5, 35, 0.9), 900)
                .answer();
        assertThat(reason(answer)).contains("in 9 in 10").doesNotContain("only");
    }

    @Test
    void of_nothingElseConsidered_saysSo() {
        Answer answer =
                new Invented().machine("A", false, Verdict.KEEP, "on-air").answer();
        assertThat(reason(answer)).isEqualTo("There is nothing to compare with: no other wheels are considered.");
    }

    @Test
    void of_whenWorn_saysHowOftenNothingIsFitted() {
        Answer answer = new Invented()
                .machine("A", false, Verdict.PAYS, "airless")
                .saves("A", "airless", When.WORN, saving(1000, 200, 1800, 0.97), 0)
                .answer();
        assertThat(reason(answer)).contains("no set wears out before the trade");
    }

    @Test
    void of_tossUpBetweenTwoChanges_saysThatEitherBeatsWhatItHas() {
        Answer answer = new Invented()
                .machine("A", false, Verdict.CLOSE, "airless", "sealant")
                .saves("A", "airless", When.NOW, saving(1000, 200, 1800, 0.97), 900)
                .saves("A", "sealant", When.NOW, saving(985, 300, 1600, 0.97), 45)
                .hardlyBeats("A", "airless", "sealant")
                .answer();
        assertThat(reason(answer))
                .isEqualTo("Airless drives and solid casters beat sealant drives by 15 on average, in 6 in 10 of the"
                        + " ways it could go; either beats what it has.");
        assertThat(Headline.of(answer))
                .isEqualTo("A is a toss-up: airless drives and solid casters, or sealant drives.");
    }
}
