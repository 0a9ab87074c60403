/**
 * The workbook: an answer as a spreadsheet whose formulas recompute it. Assumptions, cash flows by month, the fleet, and
 * a model of expected values in which inputs can be changed.
 *
 * <p>Sees the answer of core, the words of io and Apache POI, which nothing else in io loads. Sources: XNPV and PMT as in
 * OpenDocument OpenFormula 1.2; everything else restates the money model of core.
 */
@NullMarked
package footing.io.workbook;

import org.jspecify.annotations.NullMarked;
