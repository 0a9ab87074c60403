/**
 * What a file of Footing may contain: a tree of nodes with their lines, forms that say what may stand at a place, and
 * problems that say what was read and what would fit. A form checks, reads and describes itself as JSON Schema, so
 * that the reader and the schema can't disagree.
 *
 * <p>Sees {@code core.fleet} and {@code core.chance}. Sources: YAML 1.2.2; JSON Schema 2020-12; unit factors as cited
 * in {@link footing.io.form.Quantity}.
 */
@NullMarked
package footing.io.form;

import org.jspecify.annotations.NullMarked;
