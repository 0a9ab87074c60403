/**
 * Answers as others read them: the JSON document {@code footing-answer/1}, a table of comma-separated values, and the
 * threads that an answer is computed on.
 *
 * <p>Sees {@code core}, {@code io.form} for how a number is written, and Jackson's streams. Sources: RFC 8259 (JSON),
 * RFC 4180 (comma-separated values).
 */
@NullMarked
package footing.io.answer;

import org.jspecify.annotations.NullMarked;
