package footing.core.chance;

/**
 * Uniform draws found by key, never by order of use: a draw belongs to a seed, a purpose with the ids it concerns, a
 * future and a number. So the same future meets every package, skipping a draw shifts no other, and adding a machine
 * or a package changes nothing for the rest.
 *
 * <p>A purpose and its ids become a 64-bit state by a byte-wise multiply-and-mix; a future moves to a state of its
 * own; draw j is the finalizer of state + (j+1)·γ with γ the odd integer nearest 2⁶⁴/φ. A uniform is (top 53 bits +
 * ½)/2⁵³, never 0 or 1.
 *
 * <p>Source: G. L. Steele, D. Lea, C. H. Flood, "Fast Splittable Pseudorandom Number Generators", OOPSLA 2014
 * (finalizer "Mix13" by D. Stafford).
 */
public final class Draws {
    private static final long GAMMA = 0x9E3779B97F4A7C15L;
    private static final double UNIT = 0x1.0p-53;
    /** The greatest value with all 53 bits set; half a unit more would round to 1. */
    private static final double MOST = 1 - UNIT;

    private Draws() {}

    /** The state of a purpose, from its name and the texts of the ids it concerns. */
    public static long key(long seed, String purpose, String... ids) {
        long state = absorb(mix(seed + GAMMA), purpose);
        for (String id : ids) {
            state = absorb(state, id);
        }
        return state;
    }

    /** The state of one future under a purpose's state. */
    public static long future(long key, long future) {
        return mix(key ^ mix(future * GAMMA + 1));
    }

    /** Draw number j of a future's state, uniform in (0, 1). */
    public static double uniform(long state, long j) {
        double u = ((mix(state + (j + 1) * GAMMA) >>> 11) + 0.5) * UNIT;
        return u < 1 ? u : MOST;
    }

    private static long absorb(long state, String text) {
        long h = mix(state + text.length() + 1);
        for (int i = 0; i < text.length(); i++) {
            h = mix((h ^ text.charAt(i)) * GAMMA + i);
        }
        return h;
    }

    private static long mix(long z) {
        long a = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        long b = (a ^ (a >>> 27)) * 0x94D049BB133111EBL;
        return b ^ (b >>> 31);
    }
}
