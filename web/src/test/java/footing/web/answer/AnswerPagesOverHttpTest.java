package footing.web.answer;

import static org.assertj.core.api.Assertions.assertThat;

import footing.web.serve.Served;
import footing.web.serve.Visitor;
import java.net.http.HttpResponse;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The answer page and its explanations over HTTP: what is there, and what isn't. */
class AnswerPagesOverHttpTest extends Served {
    private final Visitor visitor = visitor();

    private String fleet() {
        Matcher example = Pattern.compile("(/cases/[a-z0-9]{12})\"[^>]*>Quillbrook")
                .matcher(visitor.get("/cases").body());
        assertThat(example.find()).isTrue();
        return example.group(1);
    }

    @Test
    void fleet_example_hasItsSentenceBeforeItsRows() {
        String page = visitor.get(fleet()).body();
        assertThat(page).contains("numbers are yours");
        assertThat(page.indexOf("id=\"sentence\"")).isPositive().isLessThan(page.indexOf("class=\"mrow"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/machines/nope",
                "/explain?of=nope&wheels=airless-24&figure=saving",
                "/explain?of=E1&wheels=nope&figure=saving",
                "/explain?of=E1&wheels=airless-24&figure=nope"
            })
    void unknownThing_ofAKnownCase_isAPageInWords(String path) {
        HttpResponse<String> answer = visitor.get(fleet() + path);
        assertThat(answer.statusCode()).isEqualTo(404);
        assertThat(answer.body()).contains("There is no such page").doesNotContain("Exception");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "/machines/E1", "/answer?version=1&stage=1", "/explain?of=E1&wheels=x&figure=cost"})
    void anything_ofAnUnknownCase_isAPageInWords(String path) {
        HttpResponse<String> answer = visitor.get("/cases/zzzzzzzzzzzz" + path);
        assertThat(answer.statusCode()).isEqualTo(404);
        assertThat(answer.body()).contains("There is no such page").doesNotContain("Exception");
    }

    @ParameterizedTest
    @ValueSource(strings = {"/answer?version=x&stage=1", "/answer?version=1&stage=", "/explain?of=E1&wheels=a"})
    void askedBadly_isRefusedInWords(String path) {
        HttpResponse<String> answer = visitor.get(fleet() + path);
        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(answer.body()).contains("could not be read");
    }

    @Test
    void machine_slopeFigures_standAboveTheirCaution() {
        String page = visitor.get(fleet() + "/machines/E1").body();
        int slope = page.lastIndexOf("would slide across");
        assertThat(slope).isPositive();
        assertThat(page.indexOf("no permission to mow a slope")).isGreaterThan(slope);
        assertThat(page).contains("section 3563");
    }

    @Test
    void explain_everyFigureOfTheChoices_hasATree() {
        String page = visitor.get(fleet() + "/machines/E1").body();
        Matcher asked = Pattern.compile("hx-get=\"([^\"]+/explain[^\"]+)\"").matcher(page);
        int trees = 0;
        for (; asked.find() && trees < 60; trees++) {
            String path = asked.group(1).replace("&amp;", "&");
            assertThat(visitor.get(path).body()).as(path).contains("class=\"tree\"");
        }
        assertThat(trees).isGreaterThan(40);
    }
}
