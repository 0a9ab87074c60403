/**
 * Starts and stops the page. It may see every package of the page and is seen by none; the command line starts it and
 * nothing else. Safety comes first: another address than this machine needs a password.
 */
@NullMarked
package footing.web.serve;

import org.jspecify.annotations.NullMarked;
