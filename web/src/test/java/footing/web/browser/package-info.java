/**
 * The pages in a real Chromium: what one can do with mouse and keys, at every width, in light and dark, and what a
 * screen reader would miss. {@link footing.web.browser.InBrowser} starts the server and the browser.
 */
@NullMarked
package footing.web.browser;

import org.jspecify.annotations.NullMarked;
