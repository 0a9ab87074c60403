package footing.io.form;

/**
 * What is wrong at one place of a file.
 *
 * @param file name of the file
 * @param line counted from 1
 * @param path keys that lead to the place, such as {@code crews.north.day}; empty for the file as a whole
 * @param read what stands there; empty if nothing does
 * @param message what is wrong with it
 * @param advice what would fit; empty if nothing can be said
 */
public record Problem(String file, int line, String path, String read, String message, String advice) {
    /** What is wrong and what would fit, in one line, for where the place is shown beside it. */
    public String said() {
        String what = read.isEmpty() ? message : "read '" + read + "'; " + message;
        return advice.isEmpty() ? what : what + " (" + advice + ")";
    }

    /** {@code file:line: path: read 'value'; message}, and the advice on a line of its own. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder(file).append(':').append(line).append(": ");
        if (!path.isEmpty()) {
            text.append(path).append(": ");
        }
        if (!read.isEmpty()) {
            text.append("read '").append(read).append("'; ");
        }
        text.append(message);
        if (!advice.isEmpty()) {
            text.append("\n   ").append(advice);
        }
        return text.toString();
    }
}
