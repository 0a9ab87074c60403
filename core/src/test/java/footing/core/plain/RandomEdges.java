package footing.core.plain;

import footing.core.chance.Bounds;
import footing.core.chance.Metalog;
import footing.core.chance.Spread;
import footing.core.fleet.Kind;
import footing.core.fleet.Season;
import footing.core.fleet.Terms;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.BiConsumer;

/** What is put into a random machine because it is where things go wrong. */
final class RandomEdges {
    static final List<BiConsumer<MachineDraft, SplittableRandom>> ALL = List.of(
            (d, r) -> d.assemblies.values().forEach(a -> a.life = Spread.of(r.nextInt(100, 900))),
            (d, r) -> worn(d, 5000, 5000),
            (d, r) -> {
                d.assembly("air").life = Spread.of(400);
                d.assembly("air").lifeUnsure = 0;
                d.groundWear = 1;
                worn(d, 400, 0);
            },
            (d, r) -> d.flatsPerSeason = Spread.of(0),
            (d, r) -> d.flatsPerSeason = Spread.of(1e-6),
            (d, r) -> d.flatsPerSeason = new Metalog(80, 150, 300, Bounds.POSITIVE),
            (d, r) -> d.flatsAtDrive = 0,
            (d, r) -> d.flatsAtDrive = 1,
            (d, r) -> season(d, "2028-02-29", Season.ALL_YEAR),
            (d, r) -> season(d, "2027-12-31", Season.ALL_YEAR),
            (d, r) -> season(d, "2027-03-01", season("04-05", "10-31")),
            (d, r) -> season(d, "2027-10-31", season("04-05", "10-31")),
            (d, r) -> season(d, "2027-11-01", season("04-05", "10-31")),
            (d, r) -> season(d, "2027-09-15", season("11-15", "03-10")),
            (d, r) -> season(d, "2027-12-01", season("11-15", "03-10")),
            (d, r) -> season(d, "2028-02-29", season("11-15", "03-10")),
            (d, r) -> season(d, "2027-07-01", season("07-01", "06-30")),
            (d, r) -> season(d, "2027-05-05", season("06-06", "06-06")),
            (d, r) -> {
                season(d, "2027-03-01", season("04-05", "10-31"));
                d.hoursLeft = 3 * d.hoursPerYear;
            },
            (d, r) -> {
                d.asOf = LocalDate.of(2027, 1, 1);
                d.season = Season.ALL_YEAR;
                d.hoursPerYear = 400;
                d.hoursLeft = 1600;
                d.assemblies.values().forEach(a -> a.life = Spread.of(400));
            },
            (d, r) -> newMachine(d, new Terms.Loan(0.06, 48, 0.2), true),
            (d, r) -> loan(d, new Terms.Loan(0.06, 48, 0), false),
            (d, r) -> loan(d, new Terms.Loan(0, 600, 0), true),
            (d, r) -> {
                loan(d, new Terms.Loan(0.09, 24, 0.1), true);
                d.asOf = LocalDate.of(2027, 10, 31);
            },
            (d, r) -> loan(d, new Terms.Loan(0.09, 1, 1), true),
            (d, r) -> {
                tax(d, 0.1, 0.2, 0.3, 0.4);
                d.hoursLeft = d.hoursPerYear * 0.3;
            },
            (d, r) -> tax(d, 1.0),
            (d, r) -> {
                d.asOf = LocalDate.of(2027, 12, 31);
                tax(d, 0.6, 0.4);
            },
            (d, r) -> d.assemblies.values().forEach(a -> a.carryOn = 0.9),
            (d, r) -> {
                d.assembly("air").price = 900;
                d.assembly("air").takeOff = 1;
                d.assemblies.values().forEach(a -> a.carryOn = 0);
                worn(d, 0, 0);
            },
            (d, r) -> d.runOut = 0,
            (d, r) -> d.runOut = 1e5,
            (d, r) -> d.noNewSetWithin = 0,
            (d, r) -> d.noNewSetWithin = 1,
            (d, r) -> RandomMachines.fullWeeks(d),
            (d, r) -> d.wornTireEffect = 0,
            (d, r) -> d.wornTireEffect = 2,
            (d, r) -> d.groundWear = 0.2,
            (d, r) -> d.casters = 1,
            (d, r) -> d.assemblies.values().forEach(a -> a.lifeUnsure = 1),
            (d, r) -> newMachine(d, new Terms.Loan(0.05, 36, 0), r.nextBoolean()),
            (d, r) -> d.assemblies.values().forEach(a -> a.kind = r.nextBoolean() ? Kind.AIR : Kind.SEALANT),
            (d, r) -> d.inflation = d.discountRate,
            (d, r) -> {
                d.inflation = -0.1;
                d.discountRate = 0;
            },
            (d, r) -> d.makeUpToday = 24,
            (d, r) -> d.day = 24,
            (d, r) -> d.assemblies.values().forEach(a -> {
                a.flatFactor = Spread.of(0);
                a.ruinFactor = Spread.of(1);
            }));

    private RandomEdges() {}

    private static void worn(MachineDraft d, double drive, double caster) {
        d.isNew = false;
        d.wornDrive = drive;
        d.wornCaster = caster;
    }

    private static Season season(String start, String end) {
        return new Season(MonthDay.parse("--" + start), MonthDay.parse("--" + end));
    }

    private static void season(MachineDraft d, String asOf, Season season) {
        d.asOf = LocalDate.parse(asOf);
        d.season = season;
    }

    private static void loan(MachineDraft d, Terms.Loan loan, boolean applies) {
        d.loan = Optional.of(loan);
        d.loanApplies = applies;
    }

    private static void newMachine(MachineDraft d, Terms.Loan loan, boolean applies) {
        d.isNew = true;
        d.wornDrive = 0;
        d.wornCaster = 0;
        loan(d, loan, applies);
    }

    private static void tax(MachineDraft d, Double... schedule) {
        d.tax = Optional.of(new Terms.Tax(0.35, List.of(schedule)));
    }
}
