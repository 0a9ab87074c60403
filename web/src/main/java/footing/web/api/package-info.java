/**
 * The page for programs: a case file in, an answer out, faults as problem+json after RFC 9457, described after
 * OpenAPI 3.1. It may see the running of answers, core and io, and not the store.
 */
@NullMarked
package footing.web.api;

import org.jspecify.annotations.NullMarked;
