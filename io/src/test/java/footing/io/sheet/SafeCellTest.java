package footing.io.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringWriter;
import java.util.List;
import org.junit.jupiter.api.Test;

class SafeCellTest {
    @Test
    void text_thatCouldStartAFormula_isLedByAnApostrophe() {
        for (String formula : List.of("=1+1", "+1", "-1", "@SUM(A1)", "\tx", "\rx", "\nx", "|x", "  =1", "\uFF1D1")) {
            assertThat(SafeCell.text(formula)).isEqualTo("'" + formula);
        }
    }

    @Test
    void text_thatStartsNone_staysAsItIs() {
        for (String plain :
                List.of("", "E-1 = fine", "'quoted", "24x12.00-12", " ", "\u0413\u0430\u0437\u043E\u043D")) {
            assertThat(SafeCell.text(plain)).isEqualTo(plain);
        }
    }

    @Test
    void table_withCommaQuoteAndBreak_isQuotedAfterRfc4180() throws IOException {
        StringWriter text = new StringWriter();
        try (CsvTable table = new CsvTable(text)) {
            table.text("a,b")
                    .text("say \"x\"")
                    .text("two\nlines")
                    .number(-1.5)
                    .number(null)
                    .end();
            table.text("=1")
                    .number(Double.NaN)
                    .number(0.1 + 0.2)
                    .text("")
                    .text("x")
                    .end();
        }
        assertThat(text.toString()).isEqualTo("\"a,b\",\"say \"\"x\"\"\",\"two\nlines\",-1.5,\r\n\"'=1\",,0.3,,x\r\n");
    }
}
