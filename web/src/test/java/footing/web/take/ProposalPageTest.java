package footing.web.take;

import static org.assertj.core.api.Assertions.assertThat;

import footing.web.serve.Served;
import footing.web.serve.Visitor;
import java.net.http.HttpResponse;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class ProposalPageTest extends Served {
    private final Visitor visitor = visitor();

    /** The path of the example with one machine. */
    private String oneMachine() {
        Matcher link = Pattern.compile("href=\"(/cases/[a-z0-9]{12})\"[^>]*>\\s*(?:<[^>]*>\\s*)*One machine")
                .matcher(visitor.get("/cases").body());
        assertThat(link.find()).isTrue();
        return link.group(1);
    }

    @Test
    void proposal_ofACase_isAPdfToKeep() {
        String path = oneMachine();
        assertThat(visitor.get(path).body()).contains("href=\"" + path + "/proposal.pdf\"");
        HttpResponse<String> pdf = visitor.get(path + "/proposal.pdf?paper=a4");
        assertThat(pdf.statusCode()).isEqualTo(200);
        assertThat(pdf.headers().firstValue("Content-Type")).hasValue("application/pdf");
        assertThat(pdf.headers().firstValue("Content-Disposition"))
                .hasValueSatisfying(v -> assertThat(v).startsWith("attachment").contains(".pdf"));
        assertThat(pdf.body()).startsWith("%PDF");
    }

    @Test
    void proposal_unknownPaperOrCase_isSaidByItsCode() {
        assertThat(visitor.get(oneMachine() + "/proposal.pdf?paper=legal").statusCode())
                .isEqualTo(400);
        assertThat(visitor.get("/cases/aaaaaaaaaaaa/proposal.pdf").statusCode()).isEqualTo(404);
    }

    @Test
    void figureOption_ofThePage_isTheFileThatPaperUses() {
        HttpResponse<String> script = visitor.get("/figure-option.js");
        assertThat(script.statusCode()).isEqualTo(200);
        assertThat(script.body()).contains("var figureOption");
    }
}
