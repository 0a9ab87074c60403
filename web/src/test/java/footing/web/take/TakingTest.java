package footing.web.take;

import static org.assertj.core.api.Assertions.assertThat;

import footing.core.answer.Assessment;
import footing.core.answer.Options;
import footing.core.answer.Watch;
import footing.core.answer.Workers;
import footing.core.fleet.Case;
import footing.io.casefile.CaseFile;
import footing.io.drawing.SvgDrawer;
import footing.io.proposal.Tables;
import footing.web.serve.Served;
import footing.web.serve.Visitor;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TakingTest extends Served {
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
        assertThat(visitor.get(path).body()).contains("href=\"" + path + "/take\"");
        HttpResponse<String> pdf = visitor.get(path + "/proposal.pdf?paper=a4");
        assertThat(pdf.statusCode()).isEqualTo(200);
        assertThat(pdf.headers().firstValue("Content-Type")).hasValue("application/pdf");
        assertThat(pdf.headers().firstValue("Content-Disposition"))
                .hasValueSatisfying(v -> assertThat(v).startsWith("attachment").contains(".pdf"));
        assertThat(pdf.body()).startsWith("%PDF");
    }

    @Test
    void workbook_ofACase_isASheetToKeep() {
        String path = oneMachine();
        HttpResponse<String> book = visitor.get(path + "/workbook.xlsx");
        assertThat(book.statusCode()).isEqualTo(200);
        assertThat(book.headers().firstValue("Content-Type"))
                .hasValueSatisfying(v -> assertThat(v).contains("spreadsheetml"));
        assertThat(book.headers().firstValue("Content-Disposition"))
                .hasValueSatisfying(v -> assertThat(v).startsWith("attachment").contains(".xlsx"));
        assertThat(book.body()).startsWith("PK");
        assertThat(visitor.get("/cases/aaaaaaaaaaaa/workbook.xlsx").statusCode())
                .isEqualTo(404);
    }

    @Test
    void tables_ofACase_areTheFilesOfTheCommandLine(@TempDir Path folder) throws IOException {
        String path = oneMachine();
        assertThat(visitor.get(path + "/take").body()).contains("Put them together");
        HttpResponse<byte[]> zip = visitor.bytes(path + "/tables.zip");
        assertThat(zip.statusCode()).isEqualTo(200);
        assertThat(zip.headers().firstValue("Content-Type")).hasValue("application/zip");
        assertThat(zip.headers().firstValue("Content-Disposition"))
                .hasValueSatisfying(v -> assertThat(v).startsWith("attachment").contains("-tables.zip"));
        Case stated = CaseFile.read(visitor.get(path + "/download").body(), "case")
                .found()
                .orElseThrow();
        List<String> names =
                Tables.write(Assessment.answer(stated, Options.usual(), Workers.one(), Watch.NOBODY), folder);
        List<String> packed = new ArrayList<>();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip.body()))) {
            for (ZipEntry file = in.getNextEntry(); file != null; file = in.getNextEntry()) {
                packed.add(file.getName());
                assertThat(in.readAllBytes())
                        .as(file.getName())
                        .isEqualTo(Files.readAllBytes(folder.resolve(file.getName())));
            }
        }
        assertThat(packed).isEqualTo(names).contains("machines.csv", "choices.csv", "after-list.csv");
        assertThat(visitor.get("/cases/aaaaaaaaaaaa/tables.zip").statusCode()).isEqualTo(404);
        assertThat(visitor.get(path + "/tables.zip?machine=nope").statusCode()).isEqualTo(404);
    }

    @Test
    void proposal_unknownPaperOrCase_isSaidByItsCode() {
        assertThat(visitor.get(oneMachine() + "/proposal.pdf?paper=legal").statusCode())
                .isEqualTo(400);
        assertThat(visitor.get("/cases/aaaaaaaaaaaa/proposal.pdf").statusCode()).isEqualTo(404);
    }

    @Test
    void take_aProposal_saysHowFarItIsAndThenWhereItIs() {
        String path = oneMachine();
        assertThat(visitor.get(path + "/take").body())
                .contains("Print it", "Write it")
                .doesNotContain("id=\"made\"");
        String asked = "?what=proposal&paper=letter&machine=mower";
        assertThat(visitor.get(path + "/take" + asked).body()).contains("Being printed");
        HttpResponse<String> pdf = visitor.get(path + "/proposal.pdf?paper=letter&machine=mower");
        assertThat(pdf.headers().firstValue("Content-Disposition"))
                .hasValueSatisfying(v -> assertThat(v).contains("mower.pdf"));
        assertThat(visitor.get(path + "/take/state" + asked).body())
                .contains("It is ready", "/proposal.pdf?paper=letter&amp;machine=mower");
    }

    @Test
    void take_whatThereIsNot_isSaidByItsCode() {
        String path = oneMachine();
        assertThat(visitor.get(path + "/take?what=poem").statusCode()).isEqualTo(400);
        assertThat(visitor.get(path + "/take?what=proposal&paper=legal").statusCode())
                .isEqualTo(400);
        assertThat(visitor.get(path + "/take?what=workbook&machine=nope").statusCode())
                .isEqualTo(404);
        assertThat(visitor.get("/cases/aaaaaaaaaaaa/take").statusCode()).isEqualTo(404);
    }

    @Test
    void figure_ofThePage_isTheFileThatPaperUses() throws IOException {
        HttpResponse<String> script = visitor.get("/figure.js");
        assertThat(script.statusCode()).isEqualTo(200);
        try (InputStream paper = SvgDrawer.class.getResourceAsStream("/static/figure.js")) {
            assertThat(script.body()).isEqualTo(new String(paper.readAllBytes(), StandardCharsets.UTF_8));
        }
    }
}
