/** Tests of the money package: published values from data files, identities, limits, and a spreadsheet engine. */
@NullMarked
package footing.core.money;

import org.jspecify.annotations.NullMarked;
