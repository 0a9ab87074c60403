package footing.core.future;

import footing.core.chance.Draws;
import footing.core.chance.Metalog;
import footing.core.fleet.Position;
import java.util.Arrays;
import java.util.List;

/**
 * The life draws of the sets at one position in one future, shared by all courses. Articles of which the same life is
 * stated (an air tire and the same with sealant) share a row: what differs between them is a factor.
 */
final class LifeDraws {
    private static final int SETS = 16;

    private final long key;
    private long state;
    /** By set, its uniform, clipped, and the logit of that; so many of them are drawn. */
    private double[] clipped = new double[SETS];

    private double[] logit = new double[SETS];
    private int uniforms;
    /** By article, its row of {@link #stated}. */
    private final int[] row;
    /** By row and set, the life as stated; so many of them are drawn. */
    private final double[][] stated;

    private final int[] drawn;
    /** By article, 0 while not drawn. */
    private final double[] beyondWorn;

    LifeDraws(MachinePlan plan, Position position) {
        key = DrawKeys.life(plan.seed, plan.machine.id(), position);
        List<Article> articles = plan.articles;
        row = new int[articles.size()];
        for (int a = 0; a < row.length; a++) {
            row[a] = a;
            for (int earlier = a - 1; earlier >= 0; earlier--) {
                row[a] = articles.get(a).sameLife(articles.get(earlier)) ? row[earlier] : row[a];
            }
        }
        stated = new double[row.length][SETS];
        drawn = new int[row.length];
        beyondWorn = new double[row.length];
    }

    void draw(long future) {
        state = Draws.future(key, future);
        uniforms = 0;
        Arrays.fill(drawn, 0);
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
        int r = row[article.index];
        while (drawn[r] <= n) {
            drawNext(r, article);
        }
        return article.life(stated[r][n], factor);
    }

    private void drawNext(int r, Article article) {
        int n = drawn[r]++;
        if (n == uniforms) {
            drawUniform();
        }
        if (n == stated[r].length) {
            stated[r] = Arrays.copyOf(stated[r], 2 * n);
        }
        stated[r][n] = article.statedLife(clipped[n], logit[n]);
    }

    private void drawUniform() {
        if (uniforms == clipped.length) {
            clipped = Arrays.copyOf(clipped, 2 * uniforms);
            logit = Arrays.copyOf(logit, 2 * uniforms);
        }
        double y = Math.min(Math.max(Draws.uniform(state, uniforms), Metalog.LEAST_Y), Metalog.MOST_Y);
        clipped[uniforms] = y;
        logit[uniforms++] = Math.log(y / (1 - y));
    }
}
