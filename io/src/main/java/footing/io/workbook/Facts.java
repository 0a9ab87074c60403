package footing.io.workbook;

import footing.core.fleet.Position;
import footing.core.fleet.ResolvedAssembly;

/** What an engine's formulas refer to from everywhere: cells of its own sheet, and the money of a flat by assembly. */
interface Facts {
    Tab tab();

    RulesTab rules();

    MachineCells cells();

    /** Hours of a step. */
    String step();

    /** Slope of flats over a set's age, g. */
    String slope();

    /** Variance of the flats a season over their squared mean. */
    String unsureFlats();

    /** Flats an operating hour at a position, on average, of an average tire of air. */
    String flatsPerHour(Position p);

    /** Share of the hits on an assembly that ruin its tire. */
    String ruined(ResolvedAssembly a);

    /** A number of its own cell, so that formulas stay short; the same formula is written once. */
    String constant(String label, String formula);
}
