package footing.io.proposal;

import footing.core.answer.Answer;
import footing.core.answer.EntryAnswer;
import footing.core.fleet.Position;
import footing.core.fleet.ResolvedAssembly;
import footing.core.fleet.ResolvedMachine;
import footing.core.fleet.Terms;
import footing.core.fleet.When;
import footing.core.future.MeterDate;
import footing.io.words.Advice;
import footing.io.words.Figures;
import footing.io.words.Lists;
import footing.io.words.Pieces;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What comes after a change, by date and hour meter, for every machine that is clearly advised to change. A change at
 * once is counted from the date of the case, one at a worn set from the middle of that set's life.
 */
final class AfterList {
    static final String PRACTICE = "common practice, no source";

    private static final String CASE = "the case";
    private static final String BOOKS = "bookkeeper";
    private static final double FIRST_HOURS = 2;
    private static final double SETTLED_HOURS = 10;
    private static final int CALL_AFTER_DAYS = 30;

    private final Answer answer;
    private final List<Task> tasks = new ArrayList<>();

    /**
     * A thing to do.
     *
     * @param meter what the hour meter shows then; null where it is the date alone that counts
     * @param who usually does it
     * @param basis where it comes from
     */
    private record Task(
            LocalDate date, @Nullable Double meter, String machine, String what, String who, String basis) {}

    private AfterList(Answer answer) {
        this.answer = answer;
    }

    static Table of(Answer answer) {
        AfterList list = new AfterList(answer);
        List<Advice> changing =
                Advice.all(answer).stream().filter(a -> a.verb().changes()).toList();
        if (!changing.isEmpty()) {
            list.all(
                    answer.of().heading().asOf(),
                    "Before anything is ordered: answers of maker and lender in writing, as the order sheet has them.",
                    "adviser",
                    PRACTICE);
        }
        changing.forEach(list::machine);
        list.money(changing);
        Table.Builder table = Table.named(
                "after-list",
                "After-list",
                "date",
                "#hour meter",
                "machine",
                "what to do",
                "who",
                "where it comes from",
                "done");
        list.tasks.stream()
                .sorted(Comparator.comparing(Task::date).thenComparingDouble(t -> t.meter() == null ? 0 : t.meter()))
                .forEach(t -> {
                    Double meter = t.meter();
                    table.row(
                            Cell.text(t.date().toString()),
                            meter == null ? Cell.EMPTY : Cell.meter(meter),
                            Cell.text(t.machine()),
                            Cell.text(t.what()),
                            Cell.text(t.who()),
                            Cell.text(t.basis()),
                            Cell.text("___"));
                });
        return table.built();
    }

    private void machine(Advice a) {
        ResolvedMachine m = a.machine().machine();
        EntryAnswer choice = a.machine().choice();
        double start = start(m, choice);
        if (!(start < m.hoursLeft())) {
            return;
        }
        atTheChange(a, m, start);
        takeOffs(m, choice, start);
        at(m, start + FIRST_HOURS, "Tighten the lug nuts again, by torque wrench to the manual's figure.", "mechanic");
        at(
                m,
                start + SETTLED_HOURS,
                "Lug nuts once more; deck height, pitch and side to side against what was written down; bolts and"
                        + " bearings of the casters.",
                "mechanic");
        pressure(m, choice, start);
        LocalDate fitted = MeterDate.of(m, start);
        add(
                fitted.plusDays(CALL_AFTER_DAYS),
                null,
                m,
                "Ask the operator: flats, ride, marks on turf in turns, how it holds, how it cuts. Write the hour meter"
                        + " down.",
                "adviser",
                PRACTICE);
        followUp(m, choice, start);
        double now = HourMeter.now(answer, m);
        add(
                MeterDate.of(m, m.hoursLeft()),
                now + m.hoursLeft(),
                m,
                "The trade: have the set's hours and what was agreed on it at hand"
                        + (carriedOn(m, choice)
                                ? "; keep the wheels for the next machine and put the old ones on."
                                : "."),
                "adviser",
                CASE);
    }

    /** Hours from the date of the case to the change: none, or to the first of the worn sets that are changed. */
    private static double start(ResolvedMachine m, EntryAnswer choice) {
        if (choice.entry().when() == When.NOW) {
            return 0;
        }
        double first = m.hoursLeft();
        for (Position p : Position.values()) {
            Optional<NextSet> next = NextSet.of(m, choice, p);
            if (next.isPresent() && next.get().changes()) {
                first = Math.min(first, next.get().after());
            }
        }
        return first;
    }

    private void atTheChange(Advice a, ResolvedMachine m, double start) {
        String change = Lists.capital(Pieces.changed(m, a.machine().choice().entry()));
        at(
                m,
                start,
                change + " go on. Before: write down hour meter, axle heights, deck height and pitch. After: bring the"
                        + " deck back to them; torque, pressure and rake as the manual says.",
                "mechanic");
        at(
                m,
                start,
                "Tell the operator what changed: height, ride, how it turns. It is no sign that any slope is safe; stay"
                        + " within the manual's limit.",
                "operator");
        at(m, start, "Register the new wheels for their warranty; keep the invoice with the hour meter.", BOOKS);
    }

    private void takeOffs(ResolvedMachine m, EntryAnswer choice, double start) {
        if (choice.entry().when() != When.NOW || m.isNew()) {
            return;
        }
        for (Position p : Position.values()) {
            ResolvedAssembly wanted = m.assembly(choice.entry(), p);
            ResolvedAssembly off = m.assembly(m.carried(), p);
            if (!m.differs(choice.entry(), p) || wanted.madeByTreating(off)) {
                continue;
            }
            String fate = wanted.carryOn() > 0
                    ? "keep them: they go back on at the trade."
                    : off.takeOff() > 0 ? "sell them, as the answer counts on." : "store or scrap them.";
            at(
                    m,
                    start,
                    "Tag the " + Wheels.position(p) + "s taken off with machine and " + Figures.money(m.worn(p))
                            + " h; " + fate,
                    "mechanic");
        }
    }

    private static boolean carriedOn(ResolvedMachine m, EntryAnswer choice) {
        for (Position p : Position.values()) {
            if (m.differs(choice.entry(), p) && m.assembly(choice.entry(), p).carryOn() > 0) {
                return true;
            }
        }
        return false;
    }

    private void pressure(ResolvedMachine m, EntryAnswer choice, double start) {
        for (Position p : Position.values()) {
            ResolvedAssembly on = m.assembly(choice.entry(), p);
            if (on.kind().holdsAir()) {
                at(
                        m,
                        start + on.checkEvery(),
                        "Pressure of the " + Wheels.position(p) + "s, cold, both alike; then every "
                                + Figures.time(on.checkEvery()) + ".",
                        "operator");
            }
        }
    }

    private void followUp(ResolvedMachine m, EntryAnswer choice, double start) {
        for (Position p : Position.values()) {
            Optional<NextSet> next = NextSet.of(m, choice, p);
            if (next.isPresent() && next.get().after() > start) {
                at(
                        m,
                        next.get().after(),
                        "The " + Wheels.position(p) + "s are about due: see the order sheet; compare hours and flats"
                                + " with what was expected.",
                        "adviser",
                        "middle of the set's life");
            }
        }
    }

    /** Dates of the loan and the tax year, where the case has them. */
    private void money(List<Advice> changing) {
        boolean loan = false;
        double deducted = 0;
        Terms terms = null;
        for (Advice a : changing) {
            terms = a.machine().machine().terms();
            EntryAnswer choice = a.machine().choice();
            loan |= terms.loanApplies() && choice.startCost() > 0;
            deducted += choice.startCost();
        }
        if (terms == null) {
            return;
        }
        LocalDate asOf = answer.of().heading().asOf();
        if (loan && terms.loan().isPresent()) {
            int months = terms.loan().get().months();
            all(asOf.plusMonths(1), "First payment of the loan, if it is taken on the date of the case.", BOOKS, CASE);
            all(asOf.plusMonths(months), "Last payment of the loan.", BOOKS, CASE);
        }
        if (terms.tax().isPresent() && Figures.shows(deducted)) {
            all(
                    LocalDate.of(asOf.getYear(), 12, 31),
                    "Tax year 1 ends: of the " + Figures.money(deducted) + " at the start the share "
                            + Figures.percent(terms.tax().get().schedule().get(0)) + " is deducted by the case's"
                            + " schedule. Ask the tax adviser.",
                    BOOKS,
                    CASE);
        }
    }

    private void all(LocalDate date, String what, String who, String basis) {
        tasks.add(new Task(date, null, "all", what, who, basis));
    }

    private void at(ResolvedMachine m, double hours, String what, String who) {
        at(m, hours, what, who, PRACTICE);
    }

    private void at(ResolvedMachine m, double hours, String what, String who, String basis) {
        if (hours <= m.hoursLeft()) {
            add(MeterDate.of(m, hours), HourMeter.now(answer, m) + hours, m, what, who, basis);
        }
    }

    private void add(LocalDate date, @Nullable Double meter, ResolvedMachine m, String what, String who, String basis) {
        tasks.add(new Task(date, meter, m.id(), what, who, basis));
    }
}
