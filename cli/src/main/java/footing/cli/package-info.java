/**
 * The commands, each in a class of its own, and {@link footing.cli.Main}, which gathers them into the one executable.
 *
 * <p>Parses arguments, calls what the other modules offer and prints it; computes nothing. May see every module and
 * picocli. The only place that ends the program. Sources: the options follow the GNU conventions for long and short
 * names.
 */
@NullMarked
package footing.cli;

import org.jspecify.annotations.NullMarked;
