package footing.io.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import footing.core.answer.Answer;
import footing.core.answer.EntryAnswer;
import footing.core.answer.Watch;
import footing.core.fleet.ResolvedMachine;
import footing.io.answer.AnswerJson;
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
import java.io.StringWriter;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What the proposal says, against the JSON document of the same answer. */
class ProposalTest {
    private static Answer answer;
    private static Printed printed;
    private static String text;
    private static JsonNode json;

    @BeforeAll
    static void printTheExample() throws IOException {
        answer = Printed.answer(Printed.example("quillbrook.yaml"), 300, false);
        printed = Printed.of(answer, Paper.LETTER);
        text = printed.text();
        StringWriter to = new StringWriter();
        AnswerJson.write(answer, List.of(), to);
        json = JsonMapper.shared().readTree(to.toString());
    }

    private static String money(JsonNode number) {
        return Cell.minus(Figures.money(number.asDouble()));
    }

    @Test
    void pageOne_example_isTheWholeAnswerInShort() throws IOException {
        String one = printed.text(1, 1);
        assertThat(one).contains("For Quillbrook Grounds, prepared by the parts counter");
        assertThat(one).contains(Headline.of(answer));
        Worth.of(answer).forEach(w -> assertThat(one).contains(w));
        assertThat(one).contains("What would change this advice", "It rests on", "operator's manual");
        assertThat(printed.text(2, 2)).startsWith("E1, 60 in riding mower");
    }

    @Test
    void pageOne_lines_holdTheFiguresOfTheJson() throws IOException {
        String one = printed.text(1, 1);
        for (Advice a : Advice.all(answer)) {
            EntryAnswer about = a.about();
            if (about == null || MachineLines.isKept(a)) {
                continue;
            }
            JsonNode entry = entry(machine(a.id()), about.entry());
            JsonNode saving = entry.get("saving");
            assertThat(one)
                    .contains(money(saving.get("mean")) + " "
                            + Odds.column(saving.get("chance").asDouble()) + " " + money(entry.get("startCost")));
        }
    }

    private static JsonNode machine(String id) {
        for (JsonNode m : json.get("machines")) {
            if (m.get("id").asString().equals(id)) {
                return m;
            }
        }
        throw new AssertionError("no machine " + id);
    }

    private static JsonNode entry(JsonNode machine, ResolvedMachine.Entry wanted) {
        for (JsonNode e : machine.get("entries")) {
            if (e.get("id").asString().equals(wanted.id())
                    && e.get("when").asString().equals(wanted.when().name().toLowerCase(java.util.Locale.ROOT))) {
                return e;
            }
        }
        throw new AssertionError("no entry " + wanted);
    }

    @Test
    void choices_everyMachine_holdTheFiguresOfTheJson() {
        int checked = 0;
        for (Advice a : Advice.all(answer)) {
            JsonNode entries = machine(a.id()).get("entries");
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
        try (PDDocument document = printed.open()) {
            assertThat(document.getNumberOfPages()).isBetween(20, 60);
        }
    }
}
