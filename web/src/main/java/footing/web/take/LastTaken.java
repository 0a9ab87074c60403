package footing.web.take;

import java.io.IOException;
import org.jspecify.annotations.Nullable;

/** The document taken last, kept so that taking it again costs nothing. One is made at a time. */
final class LastTaken {
    private @Nullable Object key;
    private byte[] document = {};

    /** Makes a document. */
    interface Making {
        byte[] make() throws IOException;
    }

    /** The document of a key: the one kept, or made now. */
    synchronized byte[] of(Object wanted, Making making) throws IOException {
        if (!wanted.equals(key)) {
            document = making.make();
            key = wanted;
        }
        return document;
    }
}
