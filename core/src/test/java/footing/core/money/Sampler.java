package footing.core.money;

import java.util.Arrays;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;

/** Small seeded sampler of test inputs; its text names the seed. */
final class Sampler {

    private final long seed;
    private final RandomGenerator random;

    Sampler(long seed) {
        this.seed = seed;
        this.random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
    }

    int below(int bound) {
        return random.nextInt(bound);
    }

    double number(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    double[] numbers(int count, double low, double high) {
        double[] numbers = new double[count];
        Arrays.setAll(numbers, i -> number(low, high));
        return numbers;
    }

    @Override
    public String toString() {
        return "seed " + seed;
    }
}
