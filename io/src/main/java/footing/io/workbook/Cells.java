package footing.io.workbook;

import footing.core.fleet.Input;

/** Where formulas find the numbers of a case. */
interface Cells {
    /** The value, or the likely one of three: a reference or an expression in brackets. */
    String likely(Input input);

    String low(Input input);

    String high(Input input);
}
