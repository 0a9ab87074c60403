package footing.core.plain;

import footing.core.chance.Bounds;
import footing.core.chance.Metalog;
import footing.core.chance.Spread;
import footing.core.fleet.Kind;
import footing.core.fleet.ResolvedCrew.FullWeeks;
import footing.core.fleet.ResolvedCrew.ResolvedFix;
import footing.core.fleet.ResolvedMachine;
import footing.core.fleet.ResolvedMachine.Entry;
import footing.core.fleet.Season;
import footing.core.fleet.Terms;
import footing.core.fleet.When;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.function.BiConsumer;

/**
 * Machines from a seed and a number: first each edge on its own, then three edges at a time. Every machine has its
 * carried package under another id, one treated, two changed at one position and one changed at both, now and when
 * worn.
 */
public final class RandomMachines {
    private static final int ON_ITS_OWN = RandomEdges.ALL.size();
    private static final int EDGES_AT_A_TIME = 3;

    private RandomMachines() {}

    public static ResolvedMachine machine(long seed, int number) {
        return draft(seed, number).build();
    }

    /** The same before it is built, to be changed in one respect. */
    static MachineDraft draft(long seed, int number) {
        SplittableRandom random = new SplittableRandom(seed * 1_000_003 + number);
        MachineDraft draft = new Making(random).machine();
        List<BiConsumer<MachineDraft, SplittableRandom>> edges = RandomEdges.ALL;
        if (number < ON_ITS_OWN) {
            edges.get(number).accept(draft, random);
        } else {
            for (int i = 0; i < EDGES_AT_A_TIME; i++) {
                edges.get(random.nextInt(edges.size())).accept(draft, random);
            }
        }
        if (draft.isNew && random.nextBoolean()) {
            upcharges(draft, random);
        }
        return draft;
    }

    /** One machine in the making. */
    private record Making(SplittableRandom random) {
        private double in(double least, double most) {
            return random.nextDouble(least, most);
        }

        private boolean chance(double share) {
            return random.nextDouble() < share;
        }

        private Spread positive(double least, double most) {
            double low = in(least, (least + most) / 2);
            double high = in(low * 1.2, low * 1.2 + most);
            return chance(0.3) ? Spread.of(high) : metalog(low, high, Bounds.POSITIVE);
        }

        private Spread share() {
            double low = in(0.01, 0.5);
            return chance(0.5) ? Spread.of(in(0, 1)) : metalog(low, in(low + 0.05, 0.99), Bounds.SHARE);
        }

        private Spread metalog(double low, double high, Bounds bounds) {
            return new Metalog(low, Metalog.valueAt(in(0.2, 0.8), low, high, bounds), high, bounds);
        }

        MachineDraft machine() {
            MachineDraft d = new MachineDraft();
            d.id = "mower " + random.nextInt(1000);
            d.isNew = chance(0.25);
            d.asOf = LocalDate.of(2025, 1, 1).plusDays(random.nextInt(1500));
            d.season = chance(0.3) ? Season.ALL_YEAR : new Season(monthDay(), monthDay());
            d.hoursPerYear = in(150, 900);
            d.hoursLeft = d.hoursPerYear * in(0.1, 6);
            d.crewOutput = in(0.1, 1);
            d.flatsPerSeason = positive(0.5, 10);
            d.flatsAtDrive = in(0, 1);
            d.wornTireEffect = in(0, 2);
            d.groundWear = chance(0.5) ? 1 : in(0.4, 1);
            d.casters = 1 + random.nextInt(2);
            d.wornDrive = d.isNew || chance(0.3) ? 0 : in(0, 900);
            d.wornCaster = d.isNew || chance(0.3) ? 0 : in(0, 900);
            d.noNewSetWithin = in(0, 0.8);
            d.runOut = in(0, 200);
            d.relevel = in(0, 1);
            money(d);
            crew(d);
            packages(d);
            return d;
        }

        private MonthDay monthDay() {
            return MonthDay.of(1 + random.nextInt(12), 1 + random.nextInt(28));
        }

        private void money(MachineDraft d) {
            d.discountRate = in(0, 0.15);
            d.inflation = in(0, 0.06);
            d.shopRate = in(0, 120);
            if (chance(0.4)) {
                d.loan = Optional.of(new Terms.Loan(in(0, 0.15), 1 + random.nextInt(72), chance(0.5) ? 0 : in(0, 0.6)));
                d.loanApplies = chance(0.8);
            }
            if (chance(0.4)) {
                d.tax = Optional.of(new Terms.Tax(in(0, 0.5), List.of(0.2, 0.32, 0.192, 0.1152, 0.1152, 0.0576)));
            }
        }

        private void crew(MachineDraft d) {
            d.people = 1 + random.nextInt(4);
            d.hourlyCost = in(10, 50);
            d.overtimePremium = in(0, 1);
            d.billing = in(40, 300);
            d.variableCost = in(0, 0.5);
            d.day = in(5, 11);
            d.makeUpToday = in(0, 1);
            d.makeUpLater = share();
            int fixes = 1 + random.nextInt(4);
            for (int i = 0; i < fixes; i++) {
                boolean ruins = i > 0 && chance(0.4);
                double output = chance(0.5) ? 0 : in(0, 1);
                d.fixes.add(new ResolvedFix(
                        "fix " + i, 1.0 / fixes, positive(0.2, 6), in(0, 150), ruins, !ruins && chance(0.7), output));
            }
        }

        private void packages(MachineDraft d) {
            List<String> ids =
                    List.of("air", "treated", "dear", "cheap", "caster air", "caster solid", "caster treated");
            ids.forEach(id -> assembly(d.assembly(id)));
            d.assembly("air").kind = Kind.AIR;
            d.assembly("treated").kind = Kind.SEALANT;
            d.assembly("treated").treats = "air";
            d.assembly("caster treated").treats = "caster air";
            d.entry("carried", When.NOW, "air", "caster air");
            for (When when : When.values()) {
                d.entry("same", when, "air", "caster air");
                d.entry("treated", when, "treated", "caster treated");
                d.entry("dear", when, "dear", "caster air");
                d.entry("casters", when, "air", "caster solid");
                d.entry("both", when, "cheap", "caster solid");
                d.entry("mixed", when, "treated", "caster solid");
            }
        }

        private void assembly(MachineDraft.AssemblyDraft a) {
            Kind[] kinds = Kind.values();
            a.kind = kinds[random.nextInt(kinds.length)];
            a.price = in(20, 700);
            a.tirePrice = a.price * in(0.4, 1);
            a.renewalPrice = chance(0.5) ? a.tirePrice : a.price;
            a.treatPrice = in(5, 40);
            a.treatHours = in(0, 1);
            a.life = positive(150, 1500);
            a.lifeUnsure = chance(0.4) ? 0 : in(0, 0.4);
            a.flatFactor = share();
            a.ruinFactor = share();
            a.changeHours = in(0, 2);
            a.takeOff = chance(0.5) ? 0 : in(0, 1);
            a.tradeCredit = in(0, 0.6);
            a.tradeDeduction = in(0, 1);
            a.carryOn = chance(0.6) ? 0 : in(0, 1);
            a.scrapFee = in(0, 10);
            a.check = in(0, 0.2);
        }
    }

    /** A stated price for every other package on a new machine. */
    private static void upcharges(MachineDraft d, SplittableRandom random) {
        d.entries.replaceAll(e -> e.when() == When.NOW && !sameAsCarried(d, e) && random.nextBoolean()
                ? new Entry(e.id(), e.when(), e.drive(), e.caster(), OptionalDouble.of(random.nextDouble(0, 900)))
                : e);
    }

    private static boolean sameAsCarried(MachineDraft d, Entry e) {
        Entry carried = d.entries.get(0);
        return e.drive().equals(carried.drive()) && e.caster().equals(carried.caster());
    }

    /** Full weeks over New Year, overlapped by others in which nothing can be made up, or all of it unknown. */
    static void fullWeeks(MachineDraft d) {
        Spread unknown = new Metalog(0.1, 0.2, 0.5, Bounds.SHARE);
        Collections.addAll(
                d.fullWeeks,
                new FullWeeks(new Season(MonthDay.of(12, 1), MonthDay.of(1, 31)), 0.1, unknown),
                new FullWeeks(new Season(MonthDay.of(1, 15), MonthDay.of(6, 10)), 0, Spread.of(0)),
                new FullWeeks(new Season(MonthDay.of(6, 1), MonthDay.of(6, 30)), 2, Spread.of(1)));
    }
}
