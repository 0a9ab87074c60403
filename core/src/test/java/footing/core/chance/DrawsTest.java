package footing.core.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.Set;
import java.util.function.IntToDoubleFunction;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Keyed draws: golden values from a second implementation of the definition (derived), and tests of randomness. */
class DrawsTest {
    private static final int MANY = 100_000;

    @ParameterizedTest
    @CsvSource({
        "1, life, mower-1, DRIVE, 0, 0, 4621190229514412490, -3387174776947573889, 0.7748232349685442",
        "1, life, mower-1, DRIVE, 0, 1, 4621190229514412490, -3387174776947573889, 0.35151936501402375",
        "1, life, mower-1, DRIVE, 1, 0, 4621190229514412490, -7598383547770306503, 0.6835576761884266",
        "1, life, mower-1, CASTER, 0, 0, -1213365939997071728, -119826540239326855, 0.06575487192843782",
        "2, life, mower-1, DRIVE, 0, 0, 1712326317755984498, -1953605997186752113, 0.16289651581372172",
        "20270301, encounter, a, DRIVE, 12, 44, 4050222469272998144, 3271476443510126277, 0.6813242369500869",
    })
    void draws_goldenKeys_neverChange(
            long seed, String purpose, String id, String second, long future, long j, long key, long state, double u) {
        assertThat(Draws.key(seed, purpose, id, second)).isEqualTo(key);
        assertThat(Draws.future(key, future)).isEqualTo(state);
        assertThat(Draws.uniform(state, j)).isEqualTo(u);
    }

    @Test
    void draws_goldenKeyWithOneIdAndNoAscii_neverChanges() {
        long key = Draws.key(-7, "flatsPerSeason", "Süd");
        assertThat(key).isEqualTo(-6903612280742497140L);
        assertThat(Draws.uniform(Draws.future(key, 199_999), 0)).isEqualTo(0.4869439288335153);
    }

    @Test
    void key_textsCutElsewhereOrInAnotherOrder_isAnother() {
        Set<Long> keys = new HashSet<>();
        keys.add(Draws.key(1, "life", "ab", "c"));
        keys.add(Draws.key(1, "life", "a", "bc"));
        keys.add(Draws.key(1, "life", "c", "ab"));
        keys.add(Draws.key(1, "life", "abc"));
        keys.add(Draws.key(1, "lifeab", "c"));
        keys.add(Draws.key(1, "life", "ab", "c", ""));
        keys.add(Draws.key(2, "life", "ab", "c"));
        assertThat(keys).hasSize(7);
        assertThat(Draws.key(1, "life", "ab", "c")).isEqualTo(Draws.key(1, "life", "ab", "c"));
    }

    @Test
    void key_manyIds_neverCollides() {
        Set<Long> keys = new HashSet<>();
        for (int i = 0; i < MANY; i++) {
            keys.add(Draws.key(1, "life", "mower-" + i, "DRIVE"));
        }
        assertThat(keys).hasSize(MANY);
    }

    /** Both ends of the 53 bits: a state is looked for whose mixed value has them all clear, or all set. */
    @Test
    void uniform_allBitsClearOrSet_liesInsideZeroAndOne() {
        assertThat(Draws.uniform(stateOf(0L), 0)).isEqualTo(0x1.0p-54);
        assertThat(Draws.uniform(stateOf(-1L), 0)).isGreaterThan(0.999999).isLessThan(1);
    }

    /** The state whose draw 0 has these bits: the mixing function backwards. */
    private static long stateOf(long mixed) {
        long b = unshift(mixed, 31) * inverse(0x94D049BB133111EBL);
        long a = unshift(b, 27) * inverse(0xBF58476D1CE4E5B9L);
        return unshift(a, 30) - 0x9E3779B97F4A7C15L;
    }

    private static long unshift(long mixed, int by) {
        return mixed ^ (mixed >>> by) ^ (mixed >>> (2 * by));
    }

    /** Of an odd number modulo 2⁶⁴, by Newton's steps. */
    private static long inverse(long odd) {
        long x = odd;
        for (int i = 0; i < 6; i++) {
            x *= 2 - odd * x;
        }
        return x;
    }

    @Test
    void uniform_alongNumbersFuturesAndKeys_isUniform() {
        long key = Draws.key(1, "encounter", "mower", "DRIVE");
        long state = Draws.future(key, 5);
        assertUniform("numbers", j -> Draws.uniform(state, j));
        assertUniform("every eighth number", j -> Draws.uniform(state, 8L * j + 2));
        assertUniform("futures", f -> Draws.uniform(Draws.future(key, f), 0));
        assertUniform("machines", i -> Draws.uniform(Draws.future(Draws.key(1, "life", "m" + i, "DRIVE"), 0), 0));
        assertUniform("seeds", s -> Draws.uniform(Draws.future(Draws.key(s, "life", "m", "DRIVE"), 0), 0));
    }

    private static void assertUniform(String what, IntToDoubleFunction draw) {
        int cells = 256;
        int[] count = new int[cells];
        for (int i = 0; i < MANY; i++) {
            count[(int) (draw.applyAsDouble(i) * cells)]++;
        }
        assertPlausible(what, count);
    }

    /** Chi-square within its 0.01 % and 99.99 % quantiles: as bad is too even as too uneven. */
    private static void assertPlausible(String what, int[] count) {
        double expected = (double) MANY / count.length;
        double chiSquare = 0;
        for (int c : count) {
            chiSquare += (c - expected) * (c - expected) / expected;
        }
        ChiSquaredDistribution d = new ChiSquaredDistribution(count.length - 1.0);
        assertThat(chiSquare)
                .as(what)
                .isBetween(d.inverseCumulativeProbability(1e-4), d.inverseCumulativeProbability(0.9999));
    }

    @Test
    void uniform_twoPurposes_areIndependent() {
        long drive = Draws.key(1, "life", "mower", "DRIVE");
        long caster = Draws.key(1, "life", "mower", "CASTER");
        long other = Draws.key(1, "encounter", "mower", "DRIVE");
        long seed = Draws.key(2, "life", "mower", "DRIVE");
        assertIndependent("positions", f -> first(drive, f), f -> first(caster, f));
        assertIndependent("purposes", f -> first(drive, f), f -> first(other, f));
        assertIndependent("seeds", f -> first(drive, f), f -> first(seed, f));
        assertIndependent("futures", f -> first(drive, f), f -> first(drive, f + 1));
        assertIndependent("numbers", f -> first(drive, f), f -> Draws.uniform(Draws.future(drive, f), 1));
        assertIndependent("neighbors", j -> Draws.uniform(drive, j), j -> Draws.uniform(drive, j + 1));
    }

    private static double first(long key, int future) {
        return Draws.uniform(Draws.future(key, future), 0);
    }

    /** 16 by 16 cells, and the correlation within four standard errors of 0. */
    private static void assertIndependent(String what, IntToDoubleFunction one, IntToDoubleFunction other) {
        int[] count = new int[256];
        double product = 0;
        for (int i = 0; i < MANY; i++) {
            double u = one.applyAsDouble(i);
            double v = other.applyAsDouble(i);
            count[16 * (int) (16 * u) + (int) (16 * v)]++;
            product += 12 * (u - 0.5) * (v - 0.5) / MANY;
        }
        assertPlausible(what, count);
        assertThat(product).as(what).isCloseTo(0, within(4 / Math.sqrt(MANY)));
    }
}
