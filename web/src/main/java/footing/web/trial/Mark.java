package footing.web.trial;

import java.util.regex.Pattern;

/** The mark a sender makes once for each thing it sends, so that what is sent twice is kept once. */
final class Mark {
    private static final Pattern MARK = Pattern.compile("[A-Za-z0-9-]{8,64}");

    private Mark() {}

    static boolean isOne(String sentAs) {
        return MARK.matcher(sentAs).matches();
    }
}
