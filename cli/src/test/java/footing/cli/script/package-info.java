/**
 * The two commands of the repository's root, run by bash against a Java and a Maven that only pretend.
 *
 * <p>So it takes no build to see what they do at a first start, at two at once, after a failure or where a tool is
 * missing. Sees the scripts alone; no sources.
 */
@NullMarked
package footing.cli.script;

import org.jspecify.annotations.NullMarked;
