/**
 * Time value of money, loans, tax depreciation and the value of knowing for certain.
 *
 * <p>Pure functions of numbers and dates: nothing here knows a machine, a case or a file, reads a clock or rounds.
 * It may see the numerical library and nothing else of the product. Money is in units of one currency and a cost is
 * positive, except where a class says that it keeps the sign convention of spreadsheets. Rates are shares (0.08 is
 * 8 %). Sources: 10 CFR 436 subpart A, NIST Handbook 135, OMB Circular A-94 (1992), OpenDocument OpenFormula 1.2, IRS
 * Publication 946; each class names its own.
 */
@NullMarked
package footing.core.money;

import org.jspecify.annotations.NullMarked;
