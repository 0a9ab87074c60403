package footing.core.future;

import footing.core.chance.Draws;
import footing.core.chance.Metalog;
import footing.core.fleet.Position;
import java.util.Arrays;

/** The life draws of the sets at one position in one future, the logit of each kept for all courses. */
final class LifeDraws {
    private final long key;
    private long state;
    private int drawn;
    private double[] clipped = new double[16];
    private double[] logit = new double[16];
    private final double[] beyondWorn;

    LifeDraws(MachinePlan plan, Position position) {
        key = DrawKeys.life(plan.seed, plan.machine.id(), position);
        beyondWorn = new double[plan.articles.size()];
    }

    void draw(long future) {
        state = Draws.future(key, future);
        drawn = 0;
        Arrays.fill(beyondWorn, 0);
    }

    /** The life of the set now on the machine if it is of this article: the same for all courses that keep it. */
    double lifeBeyondWorn(Article article, double factor) {
        double known = beyondWorn[article.index];
        if (known > 0) {
            return known;
        }
        double life = article.lifeBeyondWorn(Draws.uniform(state, 0), factor);
        beyondWorn[article.index] = life;
        return life;
    }

    /** The life of set n if it is of this article. */
    double life(int n, Article article, double factor) {
        while (drawn <= n) {
            drawNext();
        }
        return article.life(clipped[n], logit[n], factor);
    }

    private void drawNext() {
        if (drawn == clipped.length) {
            clipped = Arrays.copyOf(clipped, 2 * drawn);
            logit = Arrays.copyOf(logit, 2 * drawn);
        }
        double y = Math.min(Math.max(Draws.uniform(state, drawn), Metalog.LEAST_Y), Metalog.MOST_Y);
        clipped[drawn] = y;
        logit[drawn++] = Math.log(y / (1 - y));
    }
}
