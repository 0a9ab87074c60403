/**
 * An answer on paper: page one for somebody with two minutes, the workings behind it machine by machine, an order sheet
 * and a list of what comes after, as one PDF; and each of its tables as comma-separated values.
 *
 * <p>Works out no figure of its own: sentences come from {@code io.words}, charts from {@code io.figure} by {@code
 * io.drawing}, everything else from the answer. Tasks and questions are marked 'common practice, no source' where they
 * are that. Sources: RFC 4180.
 */
@NullMarked
package footing.io.proposal;

import org.jspecify.annotations.NullMarked;
