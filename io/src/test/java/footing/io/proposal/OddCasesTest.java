package footing.io.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import footing.core.answer.Answer;
import footing.io.paper.Paper;
import footing.io.words.Headline;
import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;

/** Cases at the edge of what is usual. */
class OddCasesTest {
    private static final String ONE = Printed.example("one-machine.yaml");

    private static String titled(String title) {
        return ONE.replaceFirst("(?m)^title:.*$", "title: \"" + title + "\"");
    }

    @Test
    void title_ofSixtyLettersWithoutBlank_staysOnThePage() throws IOException {
        String title = "W".repeat(60);
        Printed printed = Printed.of(Printed.answer(titled(title), 100, true), Paper.A4);
        assertThat(printed.text(1, 1).replace(" ", "")).contains(title);
        try (PDDocument document = printed.open()) {
            assertThat(document.getDocumentInformation().getTitle()).isEqualTo(title);
        }
    }

    @Test
    void title_inGreekAndCyrillic_isPrinted() throws IOException {
        String title = "Πράσινοι κήποι, Зелені сади";
        String text =
                Printed.of(Printed.answer(titled(title), 100, true), Paper.A4).text();
        assertThat(text).contains(title).doesNotContain("□");
    }

    @Test
    void title_inChinese_isPrintedAsBoxesAndSaysSo() throws IOException {
        String text =
                Printed.of(Printed.answer(titled("草坪公司"), 100, true), Paper.A4).text();
        assertThat(text).contains("□□□□", "Some letters of this case are not in this document's typefaces");
    }

    @Test
    void machine_withOnePackage_saysThereIsNothingElse() throws IOException {
        String text = Printed.of(Printed.answer(Fleets.onePackage(), 100, true), Paper.LETTER)
                .text();
        assertThat(text)
                .contains(
                        "mower: ",
                        "no other choice",
                        "There is nothing to compare with",
                        "Nothing is to be ordered now.")
                .doesNotContain("mower, :");
    }

    @Test
    void fleet_whereNothingPays_ordersNothing() throws IOException {
        Answer answer = Printed.answer(Fleets.nothingPays(), 200, true);
        String text = Printed.of(answer, Paper.LETTER).text();
        assertThat(text)
                .contains(
                        Headline.of(answer),
                        "There is nothing to buy",
                        "Nothing is to be ordered now.",
                        "No machine is clearly advised to change");
    }

    @Test
    void fleet_ofTwoHundred_isShortenedAndSaysSo() throws IOException {
        Printed printed = Printed.of(Printed.answer(Fleets.of(200), 40, true), Paper.LETTER);
        String text = printed.text();
        assertThat(text)
                .contains("With 200 machines this document is shortened")
                .containsPattern("M200 (toss-up|keep)");
        try (PDDocument document = printed.open()) {
            assertThat(document.getNumberOfPages()).isBetween(10, 80);
        }
        assertThat(printed.text(1, 1)).contains("What would change this advice", "It rests on");
    }
}
