package footing.web.cases;

import footing.io.form.FileText;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

/** The text of a case file as it came in. */
final class CaseText {
    /** What a browser's text area makes of line ends, and what old systems have, becomes a line feed. */
    static String ofForm(String text) {
        return text.replace("\r\n", "\n").replace('\r', '\n');
    }

    /** What was uploaded; the empty text if it is no UTF-8. */
    static Decoded decode(byte[] bytes) {
        if (bytes.length > FileText.MOST_BYTES) {
            return new Decoded("", "longer than 2 MB; split the machines over several files");
        }
        if (bytes.length > 1 && bytes[0] == 'P' && bytes[1] == 'K') {
            return new Decoded(
                    "", "a workbook or another packed file, no case; a case comes from Download on its page");
        }
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return new Decoded(ofForm(text.startsWith("\uFEFF") ? text.substring(1) : text), "");
        } catch (CharacterCodingException e) {
            return new Decoded("", "not UTF-8 text; save it as UTF-8, or paste its text below");
        }
    }

    private CaseText() {}

    /**
     * An upload, decoded.
     *
     * @param fault why there is no text, and what would fit; empty if there is
     */
    record Decoded(String text, String fault) {}
}
