/**
 * Paper: markup that can't be broken by what stands in it, the typefaces it is set in, and the press that makes a tagged
 * PDF of it with every font embedded.
 *
 * <p>Knows nothing of answers. Sees openhtmltopdf, PDFBox and Batik, which no other package does. Sources: none; the
 * typefaces are Liberation, under the SIL Open Font License 1.1.
 */
@NullMarked
package footing.io.paper;

import org.jspecify.annotations.NullMarked;
