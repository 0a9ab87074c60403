/**
 * Catalogs: assemblies and machine classes by id, each dated and either quoted or typical, from a file or from the
 * starter that comes with the program. The reader of one assembly is here too, since cases hold them as well.
 *
 * <p>Sees {@code io.form} and {@code core.fleet}. Sources: the starter's figures are common practice, no source.
 */
@NullMarked
package footing.io.catalog;

import org.jspecify.annotations.NullMarked;
