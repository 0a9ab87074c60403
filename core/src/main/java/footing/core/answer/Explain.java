package footing.core.answer;

import static footing.core.answer.Explanation.How.DIFFERENCE;
import static footing.core.answer.Explanation.How.PRODUCT;
import static footing.core.answer.Explanation.How.QUOTIENT;
import static footing.core.answer.Explanation.How.SUM;

import footing.core.answer.Explanation.Unit;
import footing.core.chance.Sample;
import footing.core.fleet.Case;
import footing.core.fleet.ResolvedMachine;
import footing.core.fleet.Resolver;
import footing.core.fleet.When;
import footing.core.future.FixOutcome;
import footing.core.future.MachineFutures;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The explanation trees of the headline figures of a machine and entry. */
public final class Explain {
    /** The figures that can be explained. */
    public static final List<String> FIGURES = List.of(
            "saving",
            "cost",
            "startCost",
            "purchase",
            "renewals",
            "repairs",
            "crewTime",
            "lostWork",
            "upkeep",
            "tradeIn",
            "costPerFlat",
            "chance",
            "monthly",
            "breakEvenPrice");

    private final Case stated;
    private final MachineFutures futures;
    private final int entry;

    private Explain(Case stated, MachineFutures futures, int entry) {
        this.stated = stated;
        this.futures = futures;
        this.entry = entry;
    }

    /**
     * Explains a figure of an entry, on the same futures as an answer with this seed and number.
     *
     * @throws IllegalArgumentException if the case has no such machine or entry, or there is no such figure
     */
    public static Explanation figure(
            Case stated, String machine, String packageId, When when, String figure, long seed, int futures) {
        ResolvedMachine resolved = Resolver.resolve(stated, stated.machine(machine));
        ResolvedMachine.Entry entry = resolved.entries().stream()
                .filter(e -> e.id().equals(packageId) && (e.when() == when || e.equals(resolved.carried())))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "machine '" + machine + "' does not consider '" + packageId + "' at that time"));
        MachineFutures run = new MachineFutures(resolved.about(List.of(resolved.carried(), entry)), seed);
        run.runAll(futures);
        return new Explain(stated, run, entry.equals(resolved.carried()) ? 0 : 1).figure(figure);
    }

    private Explanation figure(String figure) {
        CostTree tree = new CostTree(stated, futures, entry);
        return switch (figure) {
            case "saving" -> saving();
            case "cost" -> tree.cost();
            case "startCost" -> tree.startCost();
            case "purchase" -> tree.purchase();
            case "renewals" -> tree.renewals();
            case "repairs" -> tree.repairs();
            case "crewTime" -> tree.crewTime();
            case "lostWork" -> tree.lostWork();
            case "upkeep" -> tree.upkeep();
            case "tradeIn" -> tree.tradeIn();
            case "costPerFlat" -> costPerFlat();
            case "chance" -> chance();
            case "monthly" -> monthly(tree);
            case "breakEvenPrice" -> breakEvenPrice(tree);
            default ->
                throw new IllegalArgumentException(
                        "no figure '" + figure + "'; there are " + String.join(", ", FIGURES));
        };
    }

    private Explanation saving() {
        return Explanation.by(
                "saving against what it carries now",
                Unit.MONEY,
                DIFFERENCE,
                List.of(new CostTree(stated, futures, 0).cost(), new CostTree(stated, futures, entry).cost()));
    }

    private String simulated() {
        return mean(futures);
    }

    /** How a counted leaf was come by. */
    static String mean(MachineFutures futures) {
        return String.format(Locale.ROOT, "mean over %,d ways it could go", futures.futures());
    }

    private Explanation costPerFlat() {
        List<Explanation> byFix = new ArrayList<>();
        double flats = futures.fixes().stream().mapToDouble(FixOutcome::flats).sum();
        for (FixOutcome f : futures.fixes()) {
            Explanation share = Explanation.leaf(
                    f.name() + ", share of the flats", f.flats() / Math.max(flats, 1e-300), Unit.SHARE, simulated());
            Explanation each = Explanation.by(
                    f.name() + ", each",
                    Unit.MONEY,
                    SUM,
                    List.of(
                            Explanation.leaf("out of pocket", f.cash(), Unit.MONEY, simulated()),
                            Explanation.leaf("paid time", f.paid(), Unit.MONEY, simulated()),
                            Explanation.leaf("lost work", f.lost(), Unit.MONEY, simulated())));
            byFix.add(Explanation.by(f.name(), Unit.MONEY, PRODUCT, List.of(share, each)));
        }
        return Explanation.by("a flat on what it carries now, today's money before tax", Unit.MONEY, SUM, byFix);
    }

    private Explanation chance() {
        double[] carried = futures.costs(0);
        double[] costs = futures.costs(entry);
        int saves = 0;
        for (int f = 0; f < costs.length; f++) {
            saves += carried[f] - costs[f] > 0 ? 1 : 0;
        }
        return Explanation.by(
                "chance that it saves",
                Unit.SHARE,
                QUOTIENT,
                List.of(
                        Explanation.leaf("ways in which it saves", saves, Unit.COUNT, "counted"),
                        Explanation.leaf("ways it could go", costs.length, Unit.COUNT, "simulated")));
    }

    private Explanation monthly(CostTree tree) {
        double start = futures.startCost(entry);
        double factor = start == 0 ? 0 : futures.monthlyPayment(start) / start;
        return Explanation.by(
                "monthly payment on the start cost",
                Unit.MONEY,
                PRODUCT,
                List.of(
                        tree.startCost(),
                        Explanation.leaf(
                                "a month's payment for each unit of it",
                                factor,
                                Unit.FACTOR,
                                "level payments of the case's loan, or 48 at what money is worth")));
    }

    private Explanation breakEvenPrice(CostTree tree) {
        double mean = new Sample(futures.costs(0)).mean() - new Sample(futures.costs(entry)).mean();
        return Explanation.by(
                "start cost at which it saves nothing",
                Unit.MONEY,
                SUM,
                List.of(
                        tree.startCost(),
                        Explanation.by(
                                "room left by the saving",
                                Unit.MONEY,
                                QUOTIENT,
                                List.of(
                                        Explanation.leaf("saving", mean, Unit.MONEY, simulated()),
                                        Explanation.leaf(
                                                "present value of one more unit at the start",
                                                futures.presentValueOfOne(),
                                                Unit.FACTOR,
                                                "after loan and tax")))));
    }
}
