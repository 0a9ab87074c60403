package footing.io.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import footing.io.paper.Paper;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.junit.jupiter.api.Test;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

/** The document against every machine-checkable rule of PDF/UA-1 (ISO 14289-1), by veraPDF. */
class AccessibleTest {
    private static List<String> broken(byte[] pdf) throws Exception {
        VeraGreenfieldFoundryProvider.initialise();
        try (PDFAParser parser =
                        Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), PDFAFlavour.PDFUA_1);
                PDFAValidator validator = Foundries.defaultInstance().createValidator(PDFAFlavour.PDFUA_1, false)) {
            ValidationResult result = validator.validate(parser);
            assertThat(result.getTotalAssertions()).isPositive();
            return result.getTestAssertions().stream()
                    .filter(a -> a.getStatus() == TestAssertion.Status.FAILED)
                    .map(a -> a.getRuleId().getClause() + "-" + a.getRuleId().getTestNumber() + " " + a.getMessage())
                    .distinct()
                    .toList();
        }
    }

    @Test
    void document_oneMachineWithFigures_breaksNoRule() throws Exception {
        Printed printed = Printed.of(Printed.answer(Printed.example("one-machine.yaml"), 300, false), Paper.A4);
        assertThat(broken(printed.bytes())).isEmpty();
    }

    @Test
    void document_manyMachinesInShort_breaksNoRule() throws Exception {
        Printed printed = Printed.of(Printed.answer(Fleets.of(25), 40, true), Paper.LETTER);
        assertThat(broken(printed.bytes())).isEmpty();
    }

    /** The judge can also say no. */
    @Test
    void document_withoutTags_breaksRules() throws Exception {
        try (PDDocument plain = new PDDocument();
                ByteArrayOutputStream to = new ByteArrayOutputStream()) {
            plain.addPage(new PDPage());
            plain.save(to);
            assertThat(broken(to.toByteArray())).isNotEmpty();
        }
    }
}
