package footing.core.plain;

import footing.core.chance.Spread;
import footing.core.fleet.Kind;
import footing.core.fleet.Position;
import footing.core.fleet.ResolvedAssembly;
import footing.core.fleet.ResolvedCrew;
import footing.core.fleet.ResolvedMachine;
import footing.core.fleet.ResolvedMachine.Entry;
import footing.core.fleet.Season;
import footing.core.fleet.Terms;
import footing.core.fleet.When;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** A machine to be filled in by hand. As it comes nothing happens to it: no flats, no wear, no interest, no prices. */
public final class MachineDraft {
    public String id = "mower";
    public boolean isNew;
    public LocalDate asOf = LocalDate.of(2027, 1, 1);
    public Season season = Season.ALL_YEAR;
    public double hoursLeft = 1000;
    public double hoursPerYear = 500;
    public double crewOutput = 1;
    public Spread flatsPerSeason = Spread.of(0);
    public double flatsAtDrive = 1;
    public double wornTireEffect;
    public double groundWear = 1;
    public int casters = 2;
    public double wornDrive;
    public double wornCaster;
    public double noNewSetWithin;
    public double runOut;
    public double relevel;

    public double discountRate;
    public double inflation;
    public double shopRate = 40;
    public Optional<Terms.Loan> loan = Optional.empty();
    public boolean loanApplies;
    public Optional<Terms.Tax> tax = Optional.empty();

    public double people = 2;
    public double hourlyCost = 25;
    public double overtimePremium;
    public double billing = 100;
    public double variableCost;
    public double day = 9;
    public double makeUpToday;
    public Spread makeUpLater = Spread.of(0);
    public final List<ResolvedCrew.FullWeeks> fullWeeks = new ArrayList<>();
    public final List<ResolvedCrew.ResolvedFix> fixes = new ArrayList<>();

    public final Map<String, AssemblyDraft> assemblies = new LinkedHashMap<>();
    public final List<Entry> entries = new ArrayList<>();

    /** An assembly to be filled in. */
    public static final class AssemblyDraft {
        public Kind kind = Kind.AIR;
        public @Nullable String treats;
        public double price;
        public double tirePrice;
        public double renewalPrice;
        public double treatPrice;
        public double treatHours;
        public Spread life = Spread.of(1e6);
        public double lifeUnsure;
        public Spread flatFactor = Spread.of(1);
        public Spread ruinFactor = Spread.of(1);
        public double changeHours;
        public double takeOff;
        public double tradeCredit;
        public double tradeDeduction;
        public double carryOn;
        public double scrapFee;
        public double check;

        ResolvedAssembly build(String id) {
            Position position = id.startsWith("caster") ? Position.CASTER : Position.DRIVE;
            return new ResolvedAssembly(
                    id,
                    kind,
                    position,
                    treats,
                    price,
                    tirePrice,
                    renewalPrice,
                    treatPrice,
                    treatHours,
                    life,
                    lifeUnsure,
                    flatFactor,
                    ruinFactor,
                    changeHours,
                    takeOff,
                    tradeCredit,
                    tradeDeduction,
                    carryOn,
                    scrapFee,
                    check,
                    50);
        }
    }

    /** The assembly of this id, made at its first mention; an id that begins with 'caster' goes there. */
    public AssemblyDraft assembly(String id) {
        return assemblies.computeIfAbsent(id, i -> new AssemblyDraft());
    }

    /** A further entry; the first is the carried one. */
    public Entry entry(String id, When when, String drive, String caster) {
        Entry entry = new Entry(id, when, drive, caster, OptionalDouble.empty());
        assembly(drive);
        assembly(caster);
        entries.add(entry);
        return entry;
    }

    public ResolvedMachine build() {
        Map<String, ResolvedAssembly> built = new LinkedHashMap<>();
        assemblies.forEach((assembly, draft) -> built.put(assembly, draft.build(assembly)));
        Terms terms = new Terms(discountRate, inflation, shopRate, loan, loanApplies, tax);
        ResolvedCrew crew = new ResolvedCrew(
                "crew",
                people,
                hourlyCost,
                overtimePremium,
                billing,
                variableCost,
                day,
                makeUpToday,
                makeUpLater,
                fullWeeks,
                fixes);
        return new ResolvedMachine(
                id,
                "rider",
                isNew,
                asOf,
                season,
                hoursLeft,
                hoursPerYear,
                crewOutput,
                flatsPerSeason,
                List.of(flatsAtDrive, 1 - flatsAtDrive),
                wornTireEffect,
                groundWear,
                List.of(2, casters),
                List.of(wornDrive, wornCaster),
                noNewSetWithin,
                runOut,
                relevel,
                terms,
                crew,
                built,
                entries);
    }
}
