/**
 * Field trials as files: a trial file or a sheet with one row a run, the logs and photos it names, its result as JSON,
 * and a run sheet to take along. Reports all that is wrong at once, with line, path and what would fit.
 *
 * <p>Sees {@code io.form}, {@code io.sheet}, {@code io.photo}, {@code io.words}, {@code core.trial}, {@code core.ground} and
 * {@code core.signal}. Sources: RFC 4180 for sheets; YAML and JSON Schema as cited in {@code io.form}.
 */
@NullMarked
package footing.io.trial;

import org.jspecify.annotations.NullMarked;
