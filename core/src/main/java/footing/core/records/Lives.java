package footing.core.records;

import java.util.List;

/** The lives as the Weibull likelihood needs them: in units of the longest, so that no power of them overflows. */
final class Lives {
    final double unit;
    final int worn;
    private final double[] entry;
    private final double[] exit;
    /** Sum of ln(t/unit) over the worn out. */
    final double logs;

    /** Σ over exits less entries of t^b, t^b ln t and t^b (ln t)². */
    record Powers(double plain, double once, double twice) {}

    Lives(List<Life> lives) {
        if (lives.isEmpty()) {
            throw new IllegalArgumentException("no lives");
        }
        unit = lives.stream().mapToDouble(Life::exit).max().orElseThrow();
        worn = (int) lives.stream().filter(Life::wornOut).count();
        entry = lives.stream().mapToDouble(l -> l.entry() / unit).toArray();
        exit = lives.stream().mapToDouble(l -> l.exit() / unit).toArray();
        logs = lives.stream()
                .filter(Life::wornOut)
                .mapToDouble(l -> Math.log(l.exit() / unit))
                .sum();
    }

    Powers powers(double b) {
        double plain = 0;
        double once = 0;
        double twice = 0;
        for (int i = 0; i < exit.length; i++) {
            double log = Math.log(exit[i]);
            double power = Math.exp(b * log);
            plain += power;
            once += power * log;
            twice += power * log * log;
            if (entry[i] > 0) {
                log = Math.log(entry[i]);
                power = Math.exp(b * log);
                plain -= power;
                once -= power * log;
                twice -= power * log * log;
            }
        }
        return new Powers(plain, once, twice);
    }

    /** Σ over exits less entries of t^b alone. */
    double power(double b) {
        double plain = 0;
        for (int i = 0; i < exit.length; i++) {
            plain += Math.pow(exit[i], b) - (entry[i] > 0 ? Math.pow(entry[i], b) : 0);
        }
        return plain;
    }

    /** The log likelihood: Σ over the worn of ln f(t) − ln S(entry), over the others of ln S(t) − ln S(entry). */
    double logLikelihood(double shape, double scale) {
        double z = Math.log(scale / unit);
        return worn * (Math.log(shape) - Math.log(unit) - shape * z)
                + (shape - 1) * logs
                - power(shape) * Math.exp(-shape * z);
    }

    /** The scale that fits a shape best. */
    double scale(double shape) {
        return unit * Math.pow(power(shape) / worn, 1 / shape);
    }

    /** The derivative by the shape of the log likelihood at its best scale. */
    double score(double b) {
        Powers p = powers(b);
        return worn / b + logs - worn * p.once / p.plain;
    }
}
