/** Tests of trial files, sheets, logs and what is written from them. */
@NullMarked
package footing.io.trial;

import org.jspecify.annotations.NullMarked;
