/**
 * The answer to a case: what to run on each machine, what it is worth, how sure that is, what would turn it, and the
 * tree that explains each headline figure.
 *
 * <p>Sees {@code future}, {@code fleet}, {@code money} and {@code chance}. Many things at once are handed to {@link
 * footing.core.answer.Workers}; nothing here starts a thread. Sources: Strong, Oakley and Brennan (2014) for the value
 * of information.
 */
@NullMarked
package footing.core.answer;

import org.jspecify.annotations.NullMarked;
