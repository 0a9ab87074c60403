/** The running of answers and the pages of an answer, without and with a browser. */
@NullMarked
package footing.web.answer;

import org.jspecify.annotations.NullMarked;
