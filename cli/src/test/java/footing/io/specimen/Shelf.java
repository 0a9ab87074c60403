package footing.io.specimen;

import footing.core.specimen.Impure;
import footing.web.specimen.Window;

/** Looks up to the page, and makes a cycle with the specimen in core. */
public record Shelf(Impure below, Window above) {}
