package footing.core.answer;

import static footing.core.answer.Explanation.How.DIFFERENCE;
import static footing.core.answer.Explanation.How.QUOTIENT;
import static footing.core.answer.Explanation.How.SUM;
import static footing.core.answer.Explanation.by;
import static footing.core.answer.Explanation.leaf;
import static footing.core.answer.StatedLeaves.product;

import footing.core.answer.Explanation.Unit;
import footing.core.fleet.Called;
import footing.core.fleet.Case;
import footing.core.fleet.Key;
import footing.core.fleet.Position;
import footing.core.fleet.ResolvedAssembly;
import footing.core.fleet.ResolvedMachine;
import footing.core.fleet.When;
import footing.core.future.MachineFutures;
import footing.core.future.Tally;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The trees of the parts of one entry's cost: what was counted times what was stated. */
final class CostTree {
    private final MachineFutures futures;
    private final ResolvedMachine machine;
    private final ResolvedMachine.Entry entry;
    private final int index;
    private final StatedLeaves from;
    private final Called called;
    private final Tally tally;
    private final String counted;

    CostTree(Case stated, MachineFutures futures, int entry) {
        this.futures = futures;
        machine = futures.machine();
        index = entry;
        this.entry = machine.entries().get(entry);
        from = new StatedLeaves(stated, machine);
        called = Called.among(stated, machine.assemblies().keySet());
        tally = futures.tally(entry, futures.futures());
        counted = "simulated: " + Explain.mean(futures) + ", at present value";
    }

    Explanation cost() {
        Explanation spent = by(
                "spent", Unit.MONEY, SUM, List.of(purchase(), renewals(), repairs(), crewTime(), lostWork(), upkeep()));
        return by(
                "cost of " + called.both(entry.drive(), entry.caster()),
                Unit.MONEY,
                DIFFERENCE,
                List.of(spent, tradeIn()));
    }

    Explanation startCost() {
        List<Explanation> items = new ArrayList<>();
        if (entry.upcharge().isPresent() && machine.isNew()) {
            items.add(from.stated(Key.UPCHARGE, machine.id(), entry.id()));
        } else if (entry.when() == When.NOW) {
            startItems(items);
        }
        return sum("start cost", items);
    }

    private void startItems(List<Explanation> items) {
        boolean changed = false;
        for (Position p : Position.values()) {
            if (machine.differs(entry, p)) {
                ResolvedAssembly wanted = machine.assembly(entry, p);
                boolean treated = wanted.madeByTreating(machine.assembly(machine.carried(), p));
                items.add(product(
                        "set of " + called.assembly(wanted.id()),
                        from.count(p),
                        from.asm(treated ? Key.TREAT_PRICE : Key.PRICE, wanted)));
                if (treated || !machine.isNew()) {
                    Key hours = treated ? Key.TREAT_HOURS : Key.CHANGE_HOURS;
                    items.add(product("shop time for it", from.asm(hours, wanted), from.shopRate()));
                }
                if (!treated && wanted.carryOn() == 0) {
                    items.add(takeOff(p));
                }
                changed |= !treated;
            }
        }
        if (changed && !machine.isNew()) {
            items.add(product("leveling the deck", from.stated(Key.RELEVEL, machine.id(), ""), from.shopRate()));
        }
    }

    private Explanation takeOff(Position p) {
        ResolvedAssembly carried = machine.assembly(machine.carried(), p);
        double median = carried.life().likely() * machine.groundWear();
        Explanation unused = leaf(
                "unused share of the set taken off, counted as money in",
                -Math.max(0, 1 - machine.worn(p) / median),
                Unit.SHARE,
                "less 1 − hours on it / its usual life here");
        return product(
                "fetched by the set taken off",
                from.count(p),
                from.asm(Key.TAKE_OFF, carried),
                from.asm(Key.PRICE, carried),
                unused);
    }

    Explanation purchase() {
        MachineFutures.PurchaseFactors factors = futures.purchaseFactors();
        Explanation start = startCost();
        if (factors.startCost() == 1 && factors.shopTime() == 0) {
            return by("purchase", Unit.MONEY, SUM, List.of(start));
        }
        Explanation goods = product(
                "start cost as it is paid",
                start,
                leaf(
                        "present value of one unit of it",
                        factors.startCost(),
                        Unit.FACTOR,
                        "loan payments and tax saved"));
        Explanation shop = product(
                "what shop time differs by",
                leaf("shop time in it", futures.outcome(index).shopTime(), Unit.MONEY, "hours times the shop's rate"),
                leaf("difference for one unit of it", factors.shopTime(), Unit.FACTOR, "it is deducted at once"));
        return by("purchase", Unit.MONEY, SUM, List.of(goods, shop));
    }

    Explanation renewals() {
        List<Explanation> items = new ArrayList<>();
        for (Map.Entry<Tally.Renewal, Double> r : tally.renewals().entrySet()) {
            ResolvedAssembly off = assembly(r.getKey().off());
            ResolvedAssembly fitted = assembly(r.getKey().fitted());
            boolean same = off.id().equals(fitted.id());
            Explanation set = product(
                    "the set", from.count(fitted.position()), from.asm(same ? Key.RENEWAL_PRICE : Key.PRICE, fitted));
            Explanation scrap =
                    product("throwing the old one away", from.count(off.position()), from.asm(Key.SCRAP_FEE, off));
            Explanation hours = by(
                    "shop hours",
                    Unit.HOURS,
                    SUM,
                    List.of(from.asm(Key.CHANGE_HOURS, fitted), from.stated(Key.RELEVEL, machine.id(), "")));
            Explanation each =
                    by("each", Unit.MONEY, SUM, List.of(set, scrap, product("shop time", hours, from.shopRate())));
            String label = same
                    ? "new sets of " + called.assembly(fitted.id())
                    : called.assembly(fitted.id()) + " in place of " + called.assembly(off.id());
            items.add(product(label, leaf("sets", r.getValue(), Unit.COUNT, counted), each));
        }
        return afterTax("renewals", items);
    }

    Explanation repairs() {
        List<Explanation> items = new ArrayList<>();
        for (int i = 0; i < machine.crew().fixes().size(); i++) {
            String name = machine.crew().fixes().get(i).name();
            items.add(product(
                    name,
                    leaf("flats", tally.flats(i), Unit.COUNT, counted),
                    from.stated(Key.FIX_COST, machine.crew().id(), Integer.toString(i))));
        }
        tally.tires()
                .forEach((id, n) -> items.add(product(
                        "tires for " + called.assembly(id),
                        leaf("tires", n, Unit.COUNT, counted),
                        from.asm(Key.TIRE_PRICE, assembly(id)))));
        tally.bothTires().forEach((id, n) -> {
            ResolvedAssembly a = assembly(id);
            Explanation tire = by(
                    "tire and throwing the old one away",
                    Unit.MONEY,
                    SUM,
                    List.of(from.asm(Key.TIRE_PRICE, a), from.asm(Key.SCRAP_FEE, a)));
            Explanation half = leaf("half of it", 0.5, Unit.FACTOR, "one side would be changed anyway");
            Explanation each = by(
                    "both sides made new",
                    Unit.MONEY,
                    SUM,
                    List.of(
                            product("tires", from.count(a.position()), tire),
                            product("shop time", half, from.asm(Key.CHANGE_HOURS, a), from.shopRate())));
            items.add(product("pairs for " + called.assembly(id), leaf("pairs", n, Unit.COUNT, counted), each));
        });
        return afterTax("repairs", items);
    }

    Explanation crewTime() {
        Explanation crew = product(
                "hours made up by the crew",
                leaf("crew-hours made up", tally.madeUp(), Unit.HOURS, counted),
                from.crew(Key.PEOPLE),
                from.overtimeHour());
        Explanation one = product(
                "after hours by one person",
                leaf("hours after the day", tally.after(), Unit.HOURS, counted),
                from.overtimeHour());
        return afterTax("crew time", List.of(crew, one));
    }

    Explanation lostWork() {
        return afterTax(
                "lost work",
                List.of(product(
                        "work never billed",
                        leaf("crew-hours lost", tally.lost(), Unit.HOURS, counted),
                        from.crew(Key.BILLING),
                        by(
                                "share of it that is lost",
                                Unit.SHARE,
                                DIFFERENCE,
                                List.of(StatedLeaves.one(), from.crew(Key.VARIABLE_COST))))));
    }

    Explanation upkeep() {
        List<Explanation> items = new ArrayList<>();
        tally.hoursRun().forEach((id, hours) -> {
            ResolvedAssembly a = assembly(id);
            Explanation looks = by(
                    "times looked after",
                    Unit.COUNT,
                    QUOTIENT,
                    List.of(leaf("hours run", hours, Unit.HOURS, counted), from.asm(Key.CHECK_EVERY, a)));
            items.add(product(called.assembly(id), looks, from.asm(Key.CHECK, a), from.hour()));
        });
        return afterTax("upkeep", items);
    }

    Explanation tradeIn() {
        List<Explanation> items = new ArrayList<>();
        tally.trades().forEach((id, t) -> {
            ResolvedAssembly a = assembly(id);
            String share = Explain.mean(futures);
            items.add(product(
                    called.assembly(id) + " traded with the machine",
                    from.count(a.position()),
                    from.asm(Key.TRADE_CREDIT, a),
                    from.asm(Key.PRICE, a),
                    leaf("share of it unused", t.unusedSold(), Unit.SHARE, share)));
            items.add(product(
                    "less for wear of " + called.assembly(id),
                    from.count(a.position()),
                    from.asm(Key.TRADE_DEDUCTION, a),
                    from.asm(Key.RENEWAL_PRICE, a),
                    leaf("beyond half worn, counted as money out", -t.overwornSold(), Unit.SHARE, share)));
            if (t.moved() > 0) {
                items.add(product(
                        called.assembly(id) + " moved to the next machine",
                        from.count(a.position()),
                        from.asm(Key.CARRY_ON, a),
                        from.asm(Key.PRICE, a),
                        leaf("share of it unused", t.unusedMoved(), Unit.SHARE, share)));
                items.add(product(
                        "shop time for moving it",
                        from.asm(Key.CHANGE_HOURS, a),
                        from.shopRate(),
                        leaf("share of the ways it could go, counted as money out", -t.moved(), Unit.SHARE, share)));
            }
        });
        MachineFutures.TradeFactors factors = futures.tradeFactors();
        Explanation now =
                leaf("a price at the trade counts now", factors.today(), Unit.FACTOR, "inflation and discount rate");
        Explanation sold =
                afterTax("sets at the trade", List.of(product("at present value", sum("today's money", items), now)));
        if (!machine.terms().tax().isPresent()) {
            return by("trade-in", Unit.MONEY, SUM, List.of(sold));
        }
        Explanation relief = product(
                "tax saved by what is not yet deducted",
                leaf("not yet deducted", futures.undeducted(index), Unit.MONEY, "start cost less the schedule so far"),
                from.taxRate(),
                leaf("a sum at the trade counts now", factors.nominal(), Unit.FACTOR, "discount rate"));
        return by("trade-in", Unit.MONEY, SUM, List.of(sold, relief));
    }

    private ResolvedAssembly assembly(String id) {
        ResolvedAssembly found = machine.assemblies().get(id);
        if (found == null) {
            throw new IllegalStateException("no assembly " + id);
        }
        return found;
    }

    private static Explanation sum(String label, List<Explanation> items) {
        return items.isEmpty() ? leaf(label, 0, Unit.MONEY, "nothing to pay") : by(label, Unit.MONEY, SUM, items);
    }

    private Explanation afterTax(String label, List<Explanation> items) {
        Explanation before = sum(machine.terms().tax().isPresent() ? label + " before tax" : label, items);
        if (!machine.terms().tax().isPresent()) {
            return before;
        }
        Explanation rate = from.taxRate();
        return product(label, before, by("left after tax", Unit.SHARE, DIFFERENCE, List.of(StatedLeaves.one(), rate)));
    }
}
