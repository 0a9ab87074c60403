/**
 * Case files: reads YAML or JSON into a {@link footing.core.fleet.Case} or into everything that is wrong with the
 * file, describes the format as JSON Schema, and lists the defaults in force.
 *
 * <p>Sees {@code io.form}, {@code io.catalog}, {@code io.records}, {@code io.trial} and {@code core}. Numeric keys, their ranges and defaults come
 * from {@link footing.core.fleet.Key} alone. Sources: as cited in {@code io.form}.
 */
@NullMarked
package footing.io.casefile;

import org.jspecify.annotations.NullMarked;
