/**
 * Records files: CSV and XLSX sheets read row by row, columns matched by name, every row either understood or listed
 * with what is wrong with it; and what a case knows beside them.
 *
 * <p>Sees {@code form} and core. Sources: RFC 4180 for comma-separated values; ECMA-376 for XLSX, read by Apache POI,
 * which is loaded only for such a file.
 */
@NullMarked
package footing.io.records;

import org.jspecify.annotations.NullMarked;
