package footing.core.chance;

/** A quantity stated as one value. */
public record Fixed(double likely) implements Spread {
    public Fixed {
        if (!(Math.abs(likely) < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("not a finite number: " + likely);
        }
    }

    @Override
    public double mean() {
        return likely;
    }

    @Override
    public double draw(double y) {
        return likely;
    }

    @Override
    public double cumulative(double x) {
        return x < likely ? 0 : 1;
    }

    @Override
    public Spread times(double factor) {
        return new Fixed(likely * factor);
    }
}
