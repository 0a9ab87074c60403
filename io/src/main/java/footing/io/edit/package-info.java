/**
 * Changes a case file in place: one value is set or taken out, and comments, order, quotes and every other character
 * stay as they were. What comes out is read again as a case before anybody sees it.
 *
 * <p>Sees {@code io.form}, {@code io.casefile}, {@code io.words} and core. Sources: YAML 1.2.2 and JSON (RFC 8259), as
 * far as {@code io.form} reads them.
 */
@NullMarked
package footing.io.edit;

import org.jspecify.annotations.NullMarked;
