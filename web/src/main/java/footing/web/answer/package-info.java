/**
 * The answer page: answers run and kept, what the page shows of them, the inputs beside it. It may see the store, core
 * and io; the page for programs may see the running of answers here. Nothing here works out a figure of its own.
 */
@NullMarked
package footing.web.answer;

import org.jspecify.annotations.NullMarked;
