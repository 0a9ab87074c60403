package footing.web.answer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class FieldHtmlTest {
    private static FieldView field(String label, String value, List<String> faults) {
        return new FieldView(
                "in-x",
                "crews.a.people",
                label,
                "USD",
                List.of(new FieldView.Box("value", "", value)),
                "",
                "yours",
                false,
                true,
                true,
                null,
                faults);
    }

    @Test
    void of_marksInEveryText_areEscaped() {
        String mark = "\"><script>x('&')</script>";
        String html = FieldHtml.of(field(mark, mark, List.of(mark)), "/cases/abc/inputs");
        assertThat(html).doesNotContain("<script>").doesNotContain("'&'");
        assertThat(html.split("&quot;&gt;&lt;script&gt;", -1))
                .as("label, value, fault, spoken label")
                .hasSize(5);
    }

    @Test
    void of_refusedField_isMarkedAndToldWithWhatWasTyped() {
        String html = FieldHtml.of(field("People", "a few", List.of("No number.", "Give one.")), "/cases/abc/inputs");
        assertThat(html)
                .contains("class=\"field turns wrong\"", "value=\"a few\"", "aria-invalid=\"true\"")
                .contains("role=\"alert\">No number. Give one.<", "hx-post=\"/cases/abc/inputs\"");
    }

    @Test
    void of_fittingField_hasNoFaultAndCanBeTakenBack() {
        String html = FieldHtml.of(field("People", "3", List.of()), "/cases/abc/inputs");
        assertThat(html)
                .contains(
                        "for=\"in-x-value\"", "id=\"in-x-value\"", "could turn the verdict", "/cases/abc/inputs/forget")
                .doesNotContain("aria-invalid", "role=\"alert\"");
    }
}
