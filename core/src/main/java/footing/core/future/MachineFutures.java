package footing.core.future;

import footing.core.fleet.ResolvedMachine;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.List;
import java.util.Queue;

/**
 * The futures of one machine. Pieces of them can be run on any threads at once; their sums are added in the order of
 * the futures, so the outcome is the same to the last bit however they were run.
 *
 * <p>Keeps one number for each entry and future, the cost, which the percentiles need; everything else is summed.
 */
public final class MachineFutures {
    /** Futures summed at a time; part of what fixes the last bits of a sum. */
    public static final int PIECE = 2048;

    private final MachinePlan plan;
    private final SharedDraws shared;
    private final Queue<Simulation> idle = new ArrayDeque<>();
    private final Block sum;
    private double[][] costs;

    public MachineFutures(ResolvedMachine machine, long seed) {
        this(machine, seed, new SharedDraws());
    }

    /** @param shared what other machines of the case have drawn already */
    public MachineFutures(ResolvedMachine machine, long seed, SharedDraws shared) {
        this(new MachinePlan(machine, seed, false), shared);
    }

    private MachineFutures(MachinePlan plan, SharedDraws shared) {
        this.plan = plan;
        this.shared = shared;
        sum = new Block(plan);
        costs = new double[plan.entries.size()][0];
    }

    /**
     * The same futures where only the differences between the costs of entries are wanted: a position that all of them
     * treat alike is left out of every figure.
     */
    public static MachineFutures ofDifferences(ResolvedMachine machine, long seed, SharedDraws shared) {
        return new MachineFutures(new MachinePlan(machine, seed, true), shared);
    }

    /** The sums of one piece, to be added in its turn. */
    public static final class Piece {
        private final Block block;

        private Piece(Block block) {
            this.block = block;
        }
    }

    /** What these futures have drawn that others can use. */
    public SharedDraws shared() {
        return shared;
    }

    public ResolvedMachine machine() {
        return plan.machine;
    }

    /** Futures added so far. */
    public int futures() {
        return sum.futures;
    }

    /** Makes room for futures up to a number, before any piece of them runs. */
    public void reserve(int futures) {
        for (int e = 0; e < costs.length; e++) {
            if (costs[e].length < futures) {
                costs[e] = Arrays.copyOf(costs[e], futures);
            }
        }
    }

    /** Runs futures {@code from} to {@code to}, exclusive, at most {@value #PIECE} of them. */
    public Piece run(int from, int to) {
        Simulation simulation;
        synchronized (idle) {
            simulation = idle.poll();
        }
        if (simulation == null) {
            simulation = new Simulation(plan, shared, PIECE);
        }
        Block block = simulation.run(from, to, costs);
        synchronized (idle) {
            idle.add(simulation);
        }
        return new Piece(block);
    }

    MachinePlan plan() {
        return plan;
    }

    /** The sums of one future alone, not added; there must be room for it. */
    Block alone(int future) {
        return run(future, future + 1).block;
    }

    /** Adds the sums of the next piece. */
    public void add(Piece piece) {
        sum.add(piece.block);
    }

    /** Runs and adds the futures up to a number, here and now. */
    public MachineFutures runAll(int futures) {
        reserve(futures);
        for (int from = sum.futures; from < futures; from += PIECE) {
            add(run(from, Math.min(from + PIECE, futures)));
        }
        return this;
    }

    /** The cost of an entry in each future run; the caller must not change it. */
    public double[] costs(int entry) {
        double[] all = costs[entry];
        return all.length == sum.futures ? all : Arrays.copyOf(all, sum.futures);
    }

    /** What an entry costs at the start, before tax and loan. */
    public double startCost(int entry) {
        return plan.purchases[entry].startCost();
    }

    public EntryOutcome outcome(int entry) {
        return new Outcomes(plan, sum).entry(entry);
    }

    /** The flats of the carried package by fix. */
    public List<FixOutcome> fixes() {
        return new Outcomes(plan, sum).fixes();
    }

    /** Runs futures anew to count what happens under an entry. */
    public Tally tally(int entry, int futures) {
        Tally tally = new Tally(futures, plan.fixes.size);
        Simulation simulation = new Simulation(plan, shared, PIECE);
        simulation.tell(tally, entry);
        double[][] unused = new double[costs.length][futures];
        for (int from = 0; from < futures; from += PIECE) {
            simulation.run(from, Math.min(from + PIECE, futures), unused);
        }
        return tally;
    }

    /** The present value of paying a start cost: so much for each unit of it, and so much for its shop time. */
    public record PurchaseFactors(double startCost, double shopTime) {}

    /** How a start cost becomes a purchase: by the loan, if one applies, and the tax it saves before the trade. */
    public PurchaseFactors purchaseFactors() {
        double goods = Purchase.ofOne(plan.machine, plan.calendar, 0).presentValue();
        double shop = Purchase.ofOne(plan.machine, plan.calendar, 1).presentValue();
        return new PurchaseFactors(goods, shop - goods);
    }

    /** The nominal start cost that tax has not yet deducted at the trade. */
    public double undeducted(int entry) {
        return plan.purchases[entry].undeducted();
    }

    /** What a price of today, and what a nominal sum, at the trade counts for now. */
    public record TradeFactors(double today, double nominal) {}

    public TradeFactors tradeFactors() {
        return new TradeFactors(plan.presentAtTrade, plan.presentAtTrade / plan.nominalAtTrade);
    }

    /** Present value of one unit of start cost that is not shop time, net of what tax gives back. */
    public double presentValueOfOne() {
        return Purchase.presentValueOfOne(plan.machine, plan.calendar);
    }

    /** The monthly payment on a start cost under the case's loan, or the usual one. */
    public double monthlyPayment(double startCost) {
        return plan.monthly.loan().payment(startCost);
    }

    /** All that is paid of a start cost under that loan by its end or, if that comes first, the trade. */
    public double paidByThen(double startCost) {
        return plan.monthly.paid(startCost);
    }

    /** Monthly payments of the case's loan, or the usual one. */
    public int monthlyPayments() {
        return plan.monthly.loan().months();
    }

    /** Months over which payments and what they avoid are compared: to the last payment or the trade. */
    public double monthsCompared() {
        return plan.monthly.months();
    }
}
