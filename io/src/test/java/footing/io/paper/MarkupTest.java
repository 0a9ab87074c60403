package footing.io.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class MarkupTest {
    private final Typefaces typefaces = new Typefaces();
    private final Markup out = new Markup(typefaces);

    @Test
    void element_textThatLooksLikeMarkup_isOnlyText() {
        out.open("p", "class", "a\"b").text("<b>1 & 2</b>\u0000\n").close();
        assertThat(out.written()).isEqualTo("<p class=\"a&quot;b\">&lt;b&gt;1 &amp; 2&lt;/b&gt;  </p>");
    }

    @Test
    void text_latinGreekCyrillic_staysAsItIs() {
        String text = "Größe, Ελλάδα, Україна, Łódź, −1 – ½ ’";
        assertThat(out.element("p", text).written()).isEqualTo("<p>" + text + "</p>");
        assertThat(typefaces.lacked()).isFalse();
    }

    @Test
    void text_lettersWithoutAShape_becomeVisibleBoxes() {
        out.element("p", "芝刈 שלום \uD83D\uDE9C");
        assertThat(out.written()).isEqualTo("<p>□□ □□□□ □</p>");
        assertThat(typefaces.lacked()).isTrue();
    }

    @Test
    void text_marksOfDirection_turnNothingAround() {
        assertThat(out.element("p", "a\u202Eb").written()).isEqualTo("<p>a b</p>");
    }

    @Test
    void written_somethingLeftOpen_isRefused() {
        out.open("p");
        assertThatThrownBy(out::written)
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("p");
    }

    @Test
    void width_ofText_growsWithItsLetters() {
        assertThat(Typefaces.width("")).isZero();
        assertThat(Typefaces.width("000")).isEqualTo(3 * Typefaces.width("0"));
        assertThat(Typefaces.width("W")).isGreaterThan(Typefaces.width("i"));
    }
}
