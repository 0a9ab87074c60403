/**
 * The page where adviser and contractor look at one screen, and the store behind it. Every package here may see core and
 * io; none sees the command line. Rooms: store, cases, answer, api, safety, serve.
 */
@NullMarked
package footing.web;

import org.jspecify.annotations.NullMarked;
