/** The example cases answered as a whole: what must hold of every answer holds of theirs. */
@NullMarked
package footing.io.example;

import org.jspecify.annotations.NullMarked;
