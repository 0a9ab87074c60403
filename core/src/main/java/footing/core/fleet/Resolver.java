package footing.core.fleet;

import footing.core.chance.Spread;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Turns a stated case into one self-contained question per machine. Expects a case without errors. */
public final class Resolver {
    private final Case stated;
    private final Case.Machine machine;
    private final Values values;

    private Resolver(Case stated, Case.Machine machine) {
        this.stated = stated;
        this.machine = machine;
        this.values = new Values(stated, machine);
    }

    public static List<ResolvedMachine> resolve(Case stated) {
        return stated.machines().stream().map(m -> resolve(stated, m)).toList();
    }

    public static ResolvedMachine resolve(Case stated, Case.Machine machine) {
        return new Resolver(stated, machine).machine();
    }

    private ResolvedMachine machine() {
        double perYear = own(Key.HOURS_PER_YEAR);
        double atDrive = own(Key.FLATS_AT_DRIVE);
        Map<String, ResolvedAssembly> assemblies = new LinkedHashMap<>();
        for (String id : values.assembliesInPlay()) {
            assemblies.put(id, assembly(stated.assembly(id)));
        }
        return new ResolvedMachine(
                machine.id(),
                machine.kind(),
                machine.isNew(),
                stated.heading().asOf(),
                stated.season(),
                own(Key.KEEP_UNTIL) - own(Key.HOURS_NOW),
                perYear,
                own(Key.CREW_OUTPUT),
                flatsPerSeason(perYear),
                List.of(atDrive, 1 - atDrive),
                own(Key.WORN_TIRE_EFFECT),
                own(Key.GROUND_WEAR),
                List.of((int) own(Key.COUNT_DRIVE), (int) own(Key.COUNT_CASTER)),
                List.of(own(Key.WORN_DRIVE), own(Key.WORN_CASTER)),
                own(Key.NO_NEW_SET_WITHIN),
                own(Key.RUN_OUT),
                own(Key.RELEVEL),
                terms(),
                crew(stated.crew(machine.crew())),
                assemblies,
                entries());
    }

    private Spread flatsPerSeason(double perYear) {
        Optional<Spread> perSeason = machine.numbers().get(Key.FLATS_PER_SEASON);
        return perSeason.orElseGet(
                () -> values.get(Input.of(Key.FLATS_PER_1000H, machine.id())).times(perYear / 1000));
    }

    private List<ResolvedMachine.Entry> entries() {
        Case.WheelPackage carried = machine.carries();
        List<ResolvedMachine.Entry> entries = new ArrayList<>();
        entries.add(entry(carried, When.NOW));
        List<When> times = machine.when();
        if (times.isEmpty()) {
            times = machine.isNew() ? List.of(When.NOW) : List.of(When.NOW, When.WORN);
        }
        for (Case.WheelPackage p : machine.consider()) {
            for (When when : times) {
                if (!p.id().equals(carried.id())) {
                    entries.add(entry(p, when));
                }
            }
        }
        return entries;
    }

    private ResolvedMachine.Entry entry(Case.WheelPackage p, When when) {
        Double upcharge = when == When.NOW ? machine.upcharge().get(p.id()) : null;
        OptionalDouble price = upcharge == null ? OptionalDouble.empty() : OptionalDouble.of(upcharge);
        return new ResolvedMachine.Entry(p.id(), when, p.drive(), p.caster(), price);
    }

    private Terms terms() {
        Case.Loan loan = stated.money().loan();
        Case.Tax tax = stated.money().tax();
        return new Terms(
                number(Key.DISCOUNT_RATE, ""),
                number(Key.INFLATION, ""),
                number(Key.SHOP_RATE, ""),
                loan == null
                        ? Optional.empty()
                        : Optional.of(new Terms.Loan(
                                number(Key.LOAN_RATE, ""),
                                (int) number(Key.LOAN_MONTHS, ""),
                                number(Key.LOAN_DOWN, ""))),
                loan != null && (machine.isNew() || !loan.newOnly()),
                tax == null ? Optional.empty() : Optional.of(new Terms.Tax(number(Key.TAX_RATE, ""), tax.schedule())));
    }

    private ResolvedCrew crew(Case.Crew crew) {
        String id = crew.id();
        List<ResolvedCrew.FullWeeks> weeks = new ArrayList<>();
        for (int i = 0; i < crew.fullWeeks().size(); i++) {
            Case.FullWeek week = crew.fullWeeks().get(i);
            weeks.add(new ResolvedCrew.FullWeeks(
                    week.days(), listed(Key.FULL_TODAY, id, i).likely(), listed(Key.FULL_LATER, id, i)));
        }
        List<ResolvedCrew.ResolvedFix> fixes = new ArrayList<>();
        for (int i = 0; i < crew.fixes().size(); i++) {
            fixes.add(fix(crew.fixes().get(i), id, i));
        }
        return new ResolvedCrew(
                id,
                number(Key.PEOPLE, id),
                number(Key.WAGE, id) * (1 + number(Key.BURDEN, id)),
                number(Key.OVERTIME_PREMIUM, id),
                number(Key.BILLING, id),
                number(Key.VARIABLE_COST, id),
                number(Key.DAY, id),
                number(Key.MAKE_UP_TODAY, id),
                values.get(Input.of(Key.MAKE_UP_LATER, id)),
                weeks,
                fixes);
    }

    private ResolvedCrew.ResolvedFix fix(Case.Fix fix, String crew, int i) {
        return new ResolvedCrew.ResolvedFix(
                fix.name(),
                listed(Key.FIX_SHARE, crew, i).likely(),
                listed(Key.DELAY, crew, i),
                listed(Key.FIX_COST, crew, i).likely(),
                fix.replacesTire(),
                fix.sealable(),
                listed(Key.OUTPUT, crew, i).likely());
    }

    private ResolvedAssembly assembly(Case.Assembly a) {
        String id = a.id();
        return new ResolvedAssembly(
                id,
                a.kind(),
                a.position(),
                a.treats(),
                number(Key.PRICE, id),
                number(Key.TIRE_PRICE, id),
                number(Key.RENEWAL_PRICE, id),
                number(Key.TREAT_PRICE, id),
                number(Key.TREAT_HOURS, id),
                values.get(Input.of(Key.LIFE, id)),
                number(Key.LIFE_UNSURE, id),
                values.get(Input.of(Key.FLAT_FACTOR, id)),
                values.get(Input.of(Key.RUIN_FACTOR, id)),
                number(Key.CHANGE_HOURS, id),
                number(Key.TAKE_OFF, id),
                number(Key.TRADE_CREDIT, id),
                number(Key.TRADE_DEDUCTION, id),
                number(Key.CARRY_ON, id),
                number(Key.SCRAP_FEE, id),
                number(Key.CHECK, id),
                number(Key.CHECK_EVERY, id));
    }

    private double own(Key key) {
        return number(key, machine.id());
    }

    private double number(Key key, String owner) {
        return values.get(Input.of(key, owner)).likely();
    }

    private Spread listed(Key key, String owner, int index) {
        return values.get(new Input(key, owner, Integer.toString(index)));
    }
}
