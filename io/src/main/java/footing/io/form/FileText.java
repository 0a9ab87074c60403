package footing.io.form;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/** The text of a file: UTF-8, with or without a byte order mark, up to {@value #MOST_BYTES} bytes. */
public final class FileText {
    public static final int MOST_BYTES = 2_000_000;

    private static final String TOO_LONG = "longer than " + MOST_BYTES / 1_000_000 + " MB";

    private FileText() {}

    /**
     * The text; null if there is none to read, with its problem reported.
     *
     * @throws IOException if the file can't be opened or read
     */
    public static @Nullable String read(Path file, Problems problems) throws IOException {
        byte[] bytes;
        try (InputStream in = Files.newInputStream(file)) {
            bytes = in.readNBytes(MOST_BYTES + 1);
        }
        return bytes.length > MOST_BYTES ? tooLong(problems) : decode(bytes, problems);
    }

    static @Nullable String decode(byte[] bytes, Problems problems) {
        ByteBuffer in = ByteBuffer.wrap(bytes);
        try {
            return StandardCharsets.UTF_8.newDecoder().decode(in).toString();
        } catch (CharacterCodingException e) {
            int line = 1;
            for (int i = 0; i < in.position(); i++) {
                line += bytes[i] == '\n' ? 1 : 0;
            }
            problems.error(new At(line, ""), "", "not UTF-8 text", "save the file as UTF-8");
            return null;
        }
    }

    /** The tree of a text; null if there is none, with its problem reported. */
    public static @Nullable Node tree(String text, Problems problems) {
        if (text.length() > MOST_BYTES) {
            tooLong(problems);
            return null;
        }
        String body = text.startsWith("\uFEFF") ? text.substring(1) : text;
        Node root = TreeReader.read(body.stripLeading().startsWith("{") ? untabbed(body) : body, problems);
        boolean unread = root == null && !problems.hasErrors();
        if (unread || (root instanceof Node.Scalar s && s.isNothing())) {
            problems.error(At.TOP, "", "the file is empty", "start from one of the example cases");
            return null;
        }
        return root;
    }

    /** JSON may be indented with tabs, which YAML refuses: each outside quotes becomes a space. */
    private static String untabbed(String json) {
        StringBuilder text = new StringBuilder(json);
        boolean quoted = false;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '"') {
                quoted = !quoted;
            } else if (quoted && c == '\\') {
                i++;
            } else if (!quoted && c == '\t') {
                text.setCharAt(i, ' ');
            }
        }
        return text.toString();
    }

    private static @Nullable String tooLong(Problems problems) {
        problems.error(At.TOP, "", TOO_LONG, "split the machines over several files");
        return null;
    }
}
