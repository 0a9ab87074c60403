package footing.core.fleet;

import static footing.core.fleet.KeySpec.count;
import static footing.core.fleet.KeySpec.life;
import static footing.core.fleet.KeySpec.meter;
import static footing.core.fleet.KeySpec.money;
import static footing.core.fleet.KeySpec.positiveShare;
import static footing.core.fleet.KeySpec.rate;
import static footing.core.fleet.KeySpec.share;
import static footing.core.fleet.KeySpec.time;

import footing.core.chance.Spread;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Every number a case can state: its name in the file, what it counts, the values it takes, the kind of chance it may
 * carry, and what it is taken to be when nobody states it. This is the one list of defaults.
 *
 * <p>Sources: none of the defaults is measured. Those marked 'common practice, no source' are habits of the trade; the
 * others follow from what stands beside them.
 */
public enum Key {
    DISCOUNT_RATE(rate(Place.MONEY, "discountRate", 0, "what money is worth a year")
            .practice(0.08)
            .ordinary(0, 0.25)),
    INFLATION(rate(Place.MONEY, "inflation", -0.2, "rise of prices a year")
            .practice(0.025)
            .ordinary(-0.02, 0.15)),
    SHOP_RATE(money(Place.MONEY, "shopRate", "an hour in the shop").orElse("the crew's wage with burden", Key::wage)),

    LOAN_RATE(rate(Place.LOAN, "rate", 0, "loan rate a year").ordinary(0, 0.3)),
    LOAN_MONTHS(count(Place.LOAN, "months", Range.whole(1, 600), "months of the loan")
            .ordinary(6, 96)),
    LOAN_DOWN(share(Place.LOAN, "down", 1, "paid down at once")
            .orElse("nothing down", 0)
            .elsewhere(0.2)),

    TAX_RATE(share(Place.TAX, "rate", 0.9, "tax rate").ordinary(0, 0.6)),

    PEOPLE(count(Place.CREW, "people", Range.above(0, 100), "people on the crew")
            .ordinary(0.5, 12)),
    WAGE(money(Place.CREW, "wage", "paid per hour and person")),
    BURDEN(share(Place.CREW, "burden", 3, "payroll tax and insurance on top")
            .practice(0.18)
            .ordinary(0, 0.6)),
    OVERTIME_PREMIUM(share(Place.CREW, "overtimePremium", 3, "premium for hours made up")
            .practice(0.5)
            .ordinary(0, 1.5)),
    BILLING(money(Place.CREW, "billing", "billed per crew-hour of mowing")),
    VARIABLE_COST(share(Place.CREW, "variableCost", 1, "of billing not spent on work not done")
            .practice(0.15)),
    DAY(time(Place.CREW, "day", Range.above(0, 24), "route day").practice(9).ordinary(3, 14)),
    MAKE_UP_TODAY(time(Place.CREW, "makeUpToday", Range.of(0, 24), "slack in a day")
            .practice(0.5)
            .ordinary(0, 5)),
    MAKE_UP_LATER(share(Place.CREW, "makeUpLater", 1, "share of slipped work done another day")
            .unknown()
            .practice(0.5)),

    FULL_TODAY(time(Place.FULL_WEEK, "makeUpToday", Range.of(0, 24), "slack in a day of full weeks")
            .orElse("as in other weeks", b -> b.get(Key.MAKE_UP_TODAY))),
    FULL_LATER(share(Place.FULL_WEEK, "makeUpLater", 1, "share of slipped work done another day, in full weeks")
            .orElse("as in other weeks", b -> b.get(Key.MAKE_UP_LATER))),

    FIX_SHARE(share(Place.FIX, "share", 1, "of all flats")),
    DELAY(time(Place.FIX, "delay", Range.of(0, 1000), "until the machine cuts again")
            .varies()
            .ordinary(1 / 60.0, 80)),
    FIX_COST(money(Place.FIX, "cost", "out of pocket")
            .orElse("nothing to pay", 0)
            .elsewhere(b -> b.get(Key.WAGE))),
    OUTPUT(share(Place.FIX, "output", 1, "of the machine's work still done meanwhile")
            .orElse("no second machine", 0)
            .elsewhere(0.5)),

    PRICE(money(Place.ASSEMBLY, "price", "price each, ready to bolt on")),
    TIRE_PRICE(money(Place.ASSEMBLY, "tirePrice", "tire alone, each, on the same wheel")
            .orElse("the price of the whole assembly", b -> b.get(Key.PRICE))),
    RENEWAL_PRICE(money(Place.ASSEMBLY, "renewalPrice", "price each at a worn-out set")
            .orElse(
                    "the tire for air and sealant, the whole assembly for other kinds",
                    b -> b.get(b.kind().holdsAir() ? Key.TIRE_PRICE : Key.PRICE))),
    TREAT_PRICE(money(Place.ASSEMBLY, "treatPrice", "treating one tire in place")
            .orElse("nothing is treated", 0)
            .elsewhere(b -> b.get(Key.PRICE).times(0.1))),
    TREAT_HOURS(time(Place.ASSEMBLY, "treatHours", Range.of(0, 100), "shop time to treat a set")
            .practice(0.5)
            .ordinary(0, 6)),
    LIFE(life("life", "hours a set lasts").varies().ordinary(50, 6000)),
    LIFE_UNSURE(share(Place.ASSEMBLY, "lifeUnsure", 1, "how unsure its life is here")
            .orElse("life is known", 0)
            .elsewhere(0.2)),
    FLAT_FACTOR(share(Place.ASSEMBLY, "flatFactor", 1, "share of the flats sealant can stop that it still has")
            .unknown()
            .practice("by kind: air 100 %, sealant 30 %, others 0 %", b -> Spread.of(Key.flatFactor(b.kind())))),
    RUIN_FACTOR(share(Place.ASSEMBLY, "ruinFactor", 1, "share of hits that ruin it, of those that ruin an air tire")
            .unknown()
            .practice(
                    "by kind: air and sealant 100 %, foam 20 %, airless 15 %, solid 5 %",
                    b -> Spread.of(Key.ruinFactor(b.kind())))),
    CHANGE_HOURS(time(Place.ASSEMBLY, "changeHours", Range.of(0, 100), "shop time to change a set")
            .practice(1)
            .ordinary(0, 8)),
    TAKE_OFF(share(Place.ASSEMBLY, "takeOff", 1, "share of its price an unused set taken off fetches")
            .orElse("nothing", 0)
            .elsewhere(0.3)),
    TRADE_CREDIT(share(Place.ASSEMBLY, "tradeCredit", 1, "share of its price an unused set adds at the trade")
            .orElse("nothing", 0)
            .elsewhere(0.2)),
    TRADE_DEDUCTION(
            share(Place.ASSEMBLY, "tradeDeduction", 2, "share of its price taken off at the trade when worn out")
                    .orElse("nothing", 0)
                    .elsewhere(0.5)),
    CARRY_ON(share(Place.ASSEMBLY, "carryOn", 1, "share of its price it is worth on the next machine, unused")
            .orElse("not carried on", 0)
            .elsewhere(0.5)),
    SCRAP_FEE(money(Place.ASSEMBLY, "scrapFee", "throwing one away")
            .orElse("nothing", 0)
            .elsewhere(b -> b.get(Key.PRICE).times(0.03))),
    CHECK(time(Place.ASSEMBLY, "check", Range.of(0, 100), "looking after a set, each time")
            .practice(
                    "5 min for air and sealant, 1 min for others",
                    b -> Spread.of(b.kind().holdsAir() ? 5 / 60.0 : 1 / 60.0))
            .ordinary(0, 1)),
    CHECK_EVERY(time(Place.ASSEMBLY, "checkEvery", Range.above(0, 1e5), "operating hours between checks")
            .practice(50)
            .ordinary(4, 500)),

    HOURS_NOW(meter("hoursNow", Range.of(0, 1e6), "hour meter now").ordinary(0, 12000)),
    KEEP_UNTIL(
            meter("keepUntil", Range.above(0, 1e6), "hour meter at the trade").ordinary(100, 15000)),
    HOURS_PER_YEAR(meter("hoursPerYear", Range.above(0, 8784), "hours a year").ordinary(20, 2500)),
    CREW_OUTPUT(share(Place.MACHINE, "crewOutput", 1, "of the crew's mowing this machine does")),
    FLATS_PER_SEASON(count(Place.MACHINE, "flatsPerSeason", Range.of(0, 1000), "flats a season on air")
            .unknown()
            .ordinary(0, 40)),
    FLATS_PER_1000H(count(Place.MACHINE, "flatsPer1000h", Range.of(0, 10000), "flats per 1,000 h on air")
            .unknown()
            .ordinary(0, 100)),
    FLATS_AT_DRIVE(share(Place.MACHINE, "flatsAt.drive", 1, "of the flats at the drives")
            .practice(0.6)),
    FLATS_AT_CASTER(share(Place.MACHINE, "flatsAt.caster", 1, "of the flats at the casters")
            .orElse(
                    "what is not at the drives",
                    b -> Spread.of(1 - b.get(Key.FLATS_AT_DRIVE).likely()))),
    WORN_TIRE_EFFECT(share(Place.MACHINE, "wornTireEffect", 2, "how much oftener worn tires go flat")
            .practice(1)),
    GROUND_WEAR(positiveShare(Place.MACHINE, "groundWear", "of every life left by pavement and curbs")
            .orElse("no pavement", 1)),
    COUNT_DRIVE(count(Place.MACHINE, "counts.drive", Range.whole(1, 20), "drive wheels")
            .practice(2)),
    COUNT_CASTER(count(Place.MACHINE, "counts.caster", Range.whole(1, 20), "caster wheels")
            .practice(2)),
    WORN_DRIVE(meter("worn.drive", Range.of(0, 1e6), "hours on the drive set")
            .orElse("as if just fitted", 0)
            .elsewhere(b -> Key.halfWorn(b, Position.DRIVE))),
    WORN_CASTER(meter("worn.caster", Range.of(0, 1e6), "hours on the caster set")
            .orElse("as if just fitted", 0)
            .elsewhere(b -> Key.halfWorn(b, Position.CASTER))),
    NO_NEW_SET_WITHIN(share(Place.MACHINE, "noNewSetWithin", 1, "share of its life a long-lived set must still get")
            .practice(0.4)),
    RUN_OUT(time(Place.MACHINE, "runOut", Range.of(0, 1e5), "run bald if the trade is this close")
            .practice(100)
            .ordinary(0, 1000)),
    RELEVEL(time(Place.MACHINE, "relevel", Range.of(0, 100), "shop time to check the deck after a change")
            .practice(20 / 60.0)
            .ordinary(0, 4)),
    UPCHARGE(money(Place.MACHINE, "upcharge", "price of ordering it on a new machine"));

    private final Place place;
    private final String key;
    private final Dimension dimension;
    private final Range range;
    private final String label;
    private final Chance chance;
    private final Optional<Default> fallback;
    private final Optional<Default.Rule> elsewhere;
    private final Optional<Range> ordinary;

    Key(KeySpec spec) {
        place = spec.place;
        key = spec.name;
        dimension = spec.dimension;
        range = spec.range;
        label = spec.label;
        chance = spec.chance;
        fallback = Optional.ofNullable(spec.fallback);
        elsewhere = Optional.ofNullable(spec.elsewhere);
        ordinary = Optional.ofNullable(spec.ordinary);
    }

    public Place place() {
        return place;
    }

    /** The name in the file; {@code worn.drive} is the key {@code drive} under {@code worn}. */
    public String key() {
        return key;
    }

    public Dimension dimension() {
        return dimension;
    }

    public Range range() {
        return range;
    }

    /** What it is, in words for a screen or a page. */
    public String label() {
        return label;
    }

    public Chance chance() {
        return chance;
    }

    /** What stands in its stead when nobody states it; empty for what must be stated or may be left out. */
    public Optional<Default> fallback() {
        return fallback;
    }

    /** What it may well be where its default says there is none of it; used to judge the guess, never in its stead. */
    public Optional<Default.Rule> elsewhere() {
        return elsewhere;
    }

    /** What is seldom left in ordinary operation; a value outside is taken, but asked about. */
    public Optional<Range> ordinary() {
        return ordinary;
    }

    public static List<Key> of(Place place) {
        return Arrays.stream(values()).filter(k -> k.place == place).toList();
    }

    private static Spread wage(Default.Beside beside) {
        return Spread.of(beside.get(WAGE).likely() * (1 + beside.get(BURDEN).likely()));
    }

    /** Half the likely life of the carried set, but no more than the machine has run. */
    private static Spread halfWorn(Default.Beside beside, Position position) {
        double half = beside.ofCarried(position, LIFE).likely() / 2;
        return Spread.of(Math.min(half, beside.get(HOURS_NOW).likely()));
    }

    private static double flatFactor(Kind kind) {
        return switch (kind) {
            case AIR -> 1;
            case SEALANT -> 0.3;
            case FOAM, SOLID, AIRLESS -> 0;
        };
    }

    private static double ruinFactor(Kind kind) {
        return switch (kind) {
            case AIR, SEALANT -> 1;
            case FOAM -> 0.2;
            case AIRLESS -> 0.15;
            case SOLID -> 0.05;
        };
    }
}
