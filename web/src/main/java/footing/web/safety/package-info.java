/**
 * Who may ask what: password, allowed hosts, security headers, limits, and error pages that say what is wrong without
 * showing the inside. It may see no other package of the page.
 */
@NullMarked
package footing.web.safety;

import org.jspecify.annotations.NullMarked;
