/**
 * Physical quantities as small types: a length can't be handed over as a pressure, and every conversion stands here
 * once. Each is kept in its SI unit and is a finite number; what else it must be is for whoever takes it to say.
 *
 * <p>Sees nothing of Footing. Sources: B. N. Taylor, A. Thompson, "Guide for the Use of the International System of
 * Units", NIST SP 811, 2008, appendix B: inch 25.4 mm, pound 0.453 592 37 kg, standard gravity 9.806 65 m/s².
 */
@NullMarked
package footing.core.quantity;

import org.jspecify.annotations.NullMarked;
