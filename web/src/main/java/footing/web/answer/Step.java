package footing.web.answer;

/**
 * A piece of refinement. Those that come early in their answer go first, so that several answers take turns.
 *
 * @param order within its answer
 * @param number counts all steps
 */
record Step(int order, long number, Runnable work) implements Runnable, Comparable<Step> {
    @Override
    public void run() {
        work.run();
    }

    @Override
    public int compareTo(Step other) {
        int byOrder = Integer.compare(order, other.order);
        return byOrder != 0 ? byOrder : Long.compare(number, other.number);
    }
}
