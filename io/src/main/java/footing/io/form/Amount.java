package footing.io.form;

import footing.core.fleet.Dimension;

/**
 * One number as read.
 *
 * @param value in the key's own unit: hours, fraction, money, count
 * @param unit the unit it was written in; empty for a bare number
 */
record Amount(double value, String unit, Dimension dimension) {
    /** Another value of the same kind, written the same way. */
    String write(double other) {
        return write(Written.number(inUnit(other)));
    }

    String write(String number) {
        return unit.isEmpty() ? number : number + " " + unit;
    }

    /** A value of the key's own unit, in the unit of this one. */
    double inUnit(double own) {
        if (dimension == Dimension.SHARE) {
            return own * 100;
        }
        return Quantity.TIME.unit(unit).map(u -> u.fromOwn(own)).orElse(own);
    }
}
