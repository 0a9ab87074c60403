@NullMarked
package footing.web;

import org.jspecify.annotations.NullMarked;
