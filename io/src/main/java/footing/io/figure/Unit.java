package footing.io.figure;

import footing.io.words.Figures;
import footing.io.words.Shown;

/** What an axis counts, and how its values are written. */
public enum Unit {
    /** In the case's currency. */
    MONEY {
        @Override
        public String write(double x) {
            return Figures.money(x);
        }
    },
    /** In the case's currency, where the figures of a table must add up: to the cent, and drawn in whole units. */
    CENTS {
        @Override
        public String write(double x) {
            return Figures.rate(x);
        }
    },
    /** On the hour meter. */
    METER_HOURS {
        @Override
        public String write(double x) {
            return Figures.money(x) + " h";
        }
    },
    /** Hours a set has run. */
    HOURS {
        @Override
        public String write(double x) {
            return Figures.money(x) + " h";
        }
    },
    /** A count in so many hours: two digits that count below 10. */
    RATE {
        @Override
        public String write(double x) {
            return Figures.count(x);
        }
    },
    MINUTES {
        @Override
        public String write(double x) {
            return Figures.money(x) + " min";
        }
    },
    /** A share of all futures, from 0 to 1. */
    SHARE {
        @Override
        public String write(double x) {
            return Figures.count(100 * x) + " %";
        }
    },
    /** Measured on a run, in the unit that stands in the title of the axis. */
    MEASURED {
        @Override
        public String write(double x) {
            return Shown.digits(x);
        }
    },
    /** An index into the names of the axis. */
    NAME {
        @Override
        public String write(double x) {
            return Integer.toString((int) x);
        }
    };

    /** A value as a reader sees it. */
    public abstract String write(double x);
}
