package footing.io.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import footing.core.answer.Answer;
import footing.core.answer.EntryAnswer;
import footing.core.answer.Watch;
import footing.io.drawing.SvgDrawer;
import footing.io.figure.EntryName;
import footing.io.paper.Paper;
import footing.io.words.Advice;
import footing.io.words.Figures;
import footing.io.words.Headline;
import footing.io.words.Odds;
import footing.io.words.Worth;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

/** What the proposal says, against the JSON document of the same answer. */
class ProposalTest {
    private static final Answer answer = Quillbrook.ANSWER;
    private static final String text = Quillbrook.TEXT;
    private static final JsonNode json = Quillbrook.JSON;

    private static String money(JsonNode number) {
        return Cell.minus(Figures.money(number.asDouble()));
    }

    @Test
    void pageOne_example_isTheWholeAnswerInShort() throws IOException {
        String one = Quillbrook.text(1, 1);
        assertThat(one).contains("For Quillbrook Grounds, prepared by the parts counter");
        assertThat(one).contains(Headline.of(answer));
        Worth.of(answer).forEach(w -> assertThat(one).contains(w));
        assertThat(one).contains("What would change this advice", "It rests on", "operator's manual");
        assertThat(Quillbrook.text(2, 2)).startsWith("E1, 60 in riding mower");
    }

    @Test
    void pageOne_lines_holdTheFiguresOfTheJson() throws IOException {
        String one = Quillbrook.text(1, 1);
        for (Advice a : Advice.all(answer)) {
            EntryAnswer about = a.about();
            if (about == null || MachineLines.isKept(a)) {
                continue;
            }
            JsonNode entry = Quillbrook.entry(Quillbrook.machine(a.id()), about.entry());
            JsonNode saving = entry.get("saving");
            assertThat(one)
                    .contains(money(saving.get("mean")) + " "
                            + Odds.column(saving.get("chance").asDouble()) + " " + money(entry.get("startCost")));
        }
    }

    @Test
    void choices_everyMachine_holdTheFiguresOfTheJson() {
        int checked = 0;
        for (Advice a : Advice.all(answer)) {
            JsonNode entries = Quillbrook.machine(a.id()).get("entries");
            for (int i = 1; i < entries.size(); i++) {
                JsonNode e = entries.get(i);
                JsonNode saving = e.get("saving");
                String row = String.join(
                        " ",
                        money(e.get("startCost")),
                        money(e.get("cost").get("mean")),
                        money(saving.get("mean")),
                        money(saving.get("p10")),
                        money(saving.get("p90")),
                        Odds.column(saving.get("chance").asDouble()));
                assertThat(text)
                        .as(EntryName.of(a, a.machine().entries().get(i)))
                        .contains(row);
                checked++;
            }
        }
        assertThat(checked).isGreaterThan(30);
    }

    @Test
    void parts_everyEntry_holdTheFiguresOfTheJson() {
        for (JsonNode m : json.get("machines")) {
            for (JsonNode e : m.get("entries")) {
                JsonNode p = e.get("parts");
                String row = String.join(
                        " ",
                        money(p.get("purchase")),
                        money(p.get("renewals")),
                        money(p.get("repairs")),
                        money(p.get("crewTime")),
                        money(p.get("lostWork")),
                        money(p.get("upkeep")),
                        Cell.minus(Figures.money(-p.get("tradeIn").asDouble() + 0.0)),
                        money(e.get("cost").get("mean")));
                assertThat(text).contains(row);
            }
        }
    }

    @Test
    void ladder_everyStep_holdsTheFiguresOfTheJson() {
        for (JsonNode m : json.get("machines")) {
            for (JsonNode r : m.get("ladder")) {
                assertThat(text)
                        .contains(money(r.get("extraStart")) + " " + money(r.get("extraSaving")) + " "
                                + Odds.column(r.get("chance").asDouble()));
            }
        }
    }

    /** Between a line about a slope and the next heading of a machine stands the caution. */
    @Test
    void document_example_everySlopeFigureIsFollowedByItsCaution() {
        int slope = text.indexOf("would slide across");
        int found = 0;
        for (; slope >= 0; slope = text.indexOf("would slide across", slope + 1)) {
            int caution = text.indexOf("no permission to mow a slope", slope);
            assertThat(caution).isBetween(slope, slope + 2500);
            found++;
        }
        assertThat(found).isGreaterThan(5);
    }

    @Test
    void document_example_hasOrderSheetAfterListAndCautions() {
        assertThat(text)
                .contains(
                        "Order sheet",
                        "At the next worn set",
                        "To have in writing of the maker",
                        "After-list",
                        "common practice, no source",
                        "Nothing here says that a slope is safe");
        assertThat(text).doesNotContain("□");
    }

    @Test
    void write_stopped_printsNothing() throws IOException {
        ByteArrayOutputStream to = new ByteArrayOutputStream();
        Watch stopping = new Watch() {
            @Override
            public void progress(String stage, double share) {}

            @Override
            public boolean stopped() {
                return true;
            }
        };
        assertThat(Proposal.write(answer, Paper.A4, new SvgDrawer(), stopping, to))
                .isFalse();
        assertThat(to.size()).isZero();
    }

    @Test
    void document_example_hasPagesInBounds() throws IOException {
        try (PDDocument document = Quillbrook.PRINTED.open()) {
            assertThat(document.getNumberOfPages()).isBetween(20, 60);
        }
    }
}
