package footing.core.future;

/** What the flats of each fix came to on the carried package, summed over futures, in today's money before tax. */
final class FixSums {
    final double[] flats;
    final double[] cash;
    final double[] paid;
    final double[] lost;
    final double[] delay;
    final double[] displaced;

    FixSums(int fixes) {
        flats = new double[fixes];
        cash = new double[fixes];
        paid = new double[fixes];
        lost = new double[fixes];
        delay = new double[fixes];
        displaced = new double[fixes];
    }

    void add(Hit hit, double repair) {
        int fix = hit.fix;
        flats[fix]++;
        cash[fix] += repair;
        paid[fix] += hit.crewTime;
        lost[fix] += hit.lostWork;
        delay[fix] += hit.delay;
        displaced[fix] += hit.displaced;
    }

    void add(FixSums later) {
        for (int i = 0; i < flats.length; i++) {
            flats[i] += later.flats[i];
            cash[i] += later.cash[i];
            paid[i] += later.paid[i];
            lost[i] += later.lost[i];
            delay[i] += later.delay[i];
            displaced[i] += later.displaced[i];
        }
    }
}
