package footing.core.chance;

/** Where a quantity can lie, which fixes the transform its three-point distribution is built on. */
public enum Bounds {
    /** Greater than zero; built on the logarithm. */
    POSITIVE {
        @Override
        double transform(double x) {
            return Math.log(x);
        }

        @Override
        double back(double z) {
            return Math.exp(z);
        }

        @Override
        boolean contains(double x) {
            return x > 0 && x < Double.POSITIVE_INFINITY;
        }
    },
    /** Strictly between zero and one; built on the logit ln(x/(1−x)). */
    SHARE {
        @Override
        double transform(double x) {
            return Math.log(x / (1 - x));
        }

        @Override
        double back(double z) {
            return 1 / (1 + Math.exp(-z));
        }

        @Override
        boolean contains(double x) {
            return x > 0 && x < 1;
        }
    };

    abstract double transform(double x);

    abstract double back(double z);

    abstract boolean contains(double x);
}
