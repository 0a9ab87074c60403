package footing.core.trial;

/** Two runs on one surface that belong together, one of each side. */
public record Pair(Run a, Run b) {
    public Pair {
        if (a.side() != Side.A || b.side() != Side.B || !a.surface().equals(b.surface())) {
            throw new IllegalArgumentException("a pair is a run of each side on one surface");
        }
    }

    /** A less B. */
    public double difference() {
        return a.value() - b.value();
    }

    public double mean() {
        return (a.value() + b.value()) / 2;
    }

    public String surface() {
        return a.surface();
    }

    Side first() {
        return a.order() < b.order() ? Side.A : Side.B;
    }
}
