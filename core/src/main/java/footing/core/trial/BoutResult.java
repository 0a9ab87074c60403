package footing.core.trial;

import java.util.List;

/**
 * What opposed pulls show: who pulled whom, never by how much, and so never that two are alike.
 *
 * @param furtherBouts with a winner, that would tell if things go on as they did; 0 if it is told
 */
public record BoutResult(SignTest test, Verdict verdict, int furtherBouts) {
    /** Where neither has won more, a side that wins three in four is looked for. */
    private static final double LEAST_SHARE = 0.75;

    public static BoutResult of(List<Bout> bouts) {
        int a = count(bouts, Side.A);
        int b = count(bouts, Side.B);
        SignTest test = new SignTest(a, b, bouts.size() - a - b);
        if (test.p() < Power.ALPHA) {
            return new BoutResult(test, a > b ? Verdict.A_MORE : Verdict.B_MORE, 0);
        }
        double seen = test.decided() == 0 ? 0 : Math.max(a, b) / (double) test.decided();
        int needed = SignTest.needed(Math.max(seen, LEAST_SHARE), Power.ALPHA, Power.USUAL);
        return new BoutResult(test, Verdict.NOT_ENOUGH, Math.max(1, needed - test.decided()));
    }

    private static int count(List<Bout> bouts, Side side) {
        return (int) bouts.stream().filter(b -> b.winner() == side).count();
    }
}
