package footing.core.plain;

import footing.core.fleet.Position;
import footing.core.fleet.ResolvedAssembly;
import footing.core.fleet.ResolvedCrew;
import footing.core.fleet.ResolvedCrew.ResolvedFix;
import footing.core.fleet.ResolvedMachine;
import footing.core.fleet.ResolvedMachine.Entry;
import footing.core.fleet.When;
import footing.core.future.DrawKeys;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** Rules 1 to 5 and 7: what happens at one position from the start to the trade, event by event. */
final class PlainPosition {
    private final ResolvedMachine m;
    private final Position position;
    private final PlainDraws draws;
    private final PlainLedger ledger;
    private final ResolvedAssembly wanted;
    private final ResolvedAssembly carried;
    private final boolean differs;
    private final double count;
    private final double trade;

    private ResolvedAssembly on;
    private int set;
    private double fittedAt;
    private double life;
    private boolean bald;
    private double lookedAfterUntil;

    final List<PlainFuture.Flat> flats = new ArrayList<>();
    int sets;
    boolean wantedFitted;

    PlainPosition(Position position, Entry entry, PlainDraws draws, PlainLedger ledger) {
        this.m = draws.m();
        this.position = position;
        this.draws = draws;
        this.ledger = ledger;
        wanted = m.assembly(entry, position);
        carried = m.assembly(m.carried(), position);
        differs = m.differs(entry, position);
        count = PlainModel.at(m.counts(), position);
        trade = m.hoursLeft();
        on = entry.when() == When.NOW ? wanted : carried;
        wantedFitted = differs && entry.when() == When.NOW;
        boolean newSet = wantedFitted && !wanted.madeByTreating(carried);
        double worn = newSet ? 0 : PlainModel.at(m.worn(), position);
        fittedAt = -worn;
        life = newSet ? draws.life(on, position, 0) : draws.lifeBeyond(on, position, worn);
    }

    void run() {
        double rate = 2 * draws.flatsPerSeason() / m.hoursPerYear() * PlainModel.at(m.flatsAt(), position);
        long number = 0;
        double encounter = gap(number, rate);
        while (true) {
            double wornOut = bald ? Double.POSITIVE_INFINITY : Math.max(0, fittedAt + life);
            if (wornOut < trade && wornOut <= encounter) {
                wearOut(wornOut);
            } else if (encounter < trade) {
                encounter(number, encounter);
                number++;
                encounter += gap(number, rate);
            } else {
                break;
            }
        }
        lookAfterUntil(trade);
    }

    private double gap(long number, double rate) {
        return -Math.log(draws.encounter(position, number, DrawKeys.GAP)) / rate;
    }

    private void wearOut(double x) {
        if (trade - x < m.runOut()) {
            bald = true;
            return;
        }
        ResolvedAssembly next = choice(x);
        ledger.spend(PlainPart.RENEWALS, x, renewal(next));
        sets++;
        fit(next, x);
    }

    /** The wanted assembly, or the carried one where the rest is short and it is much cheaper. */
    private ResolvedAssembly choice(double x) {
        double medianLife = wanted.life().likely() * m.groundWear();
        boolean shortRest = trade - x < m.noNewSetWithin() * medianLife;
        return shortRest && price(carried) < 0.7 * price(wanted) ? carried : wanted;
    }

    private double price(ResolvedAssembly next) {
        return count * (next.id().equals(on.id()) ? next.renewalPrice() : next.price());
    }

    private double renewal(ResolvedAssembly next) {
        double shopHours = next.changeHours() + m.relevel();
        return price(next) + count * on.scrapFee() + shopHours * m.terms().shopRate();
    }

    private void fit(ResolvedAssembly next, double x) {
        lookAfterUntil(x);
        on = next;
        set++;
        fittedAt = x;
        life = draws.life(next, position, set);
        bald = false;
        wantedFitted |= differs && next.id().equals(wanted.id());
    }

    private void lookAfterUntil(double x) {
        ledger.upkeep(
                lookedAfterUntil, x, on.check() / on.checkEvery() * m.crew().hourlyCost());
        lookedAfterUntil = x;
    }

    /** Share of the set's life behind it. */
    private double ageShare(double x) {
        return Math.min(1, (x - fittedAt) / life);
    }

    private void encounter(long number, double x) {
        int fix = pickFix(draws.encounter(position, number, DrawKeys.FIX));
        double probability =
                susceptible(m.crew().fixes().get(fix)) * (1 + m.wornTireEffect() * (ageShare(x) - 0.5)) / 2;
        if (draws.encounter(position, number, DrawKeys.ACCEPTANCE) < probability) {
            flat(number, x, fix);
        }
    }

    private int pickFix(double u) {
        List<ResolvedFix> fixes = m.crew().fixes();
        double cumulated = 0;
        for (int i = 0; i < fixes.size(); i++) {
            cumulated += fixes.get(i).share();
            if (cumulated > u) {
                return i;
            }
        }
        return fixes.size() - 1;
    }

    private double susceptible(ResolvedFix fix) {
        if (fix.replacesTire()) {
            return draws.ruinFactor(on);
        }
        if (fix.sealable()) {
            return draws.flatFactor(on);
        }
        return on.kind().holdsAir() ? 1 : 0;
    }

    private void flat(long number, double x, int index) {
        ResolvedCrew crew = m.crew();
        ResolvedFix fix = crew.fixes().get(index);
        double delay = fix.delay().draw(draws.encounter(position, number, DrawKeys.DELAY));
        double restOfDay = crew.day() * draws.encounter(position, number, DrawKeys.HOUR);
        boolean finishedThatDay = delay - restOfDay <= 2;
        double down = finishedThatDay ? Math.min(delay, restOfDay) : delay;
        double after = finishedThatDay ? Math.max(delay - restOfDay, 0) : 0;

        double displaced = down * m.crewOutput() * (1 - fix.output());
        MakeUp makeUp = makeUp(x);
        double today = Math.min(displaced, makeUp.today);
        double later = (displaced - today) * makeUp.laterShare;
        double lost = displaced - today - later;
        double overtime = crew.hourlyCost() * (1 + crew.overtimePremium());
        double paid = (today + later) * crew.people() * overtime + after * overtime;
        double lostWork = lost * crew.billing() * (1 - crew.variableCost());
        double cash = fix.cost() + (fix.replacesTire() ? replaceTire(x) : 0);
        ledger.spend(PlainPart.REPAIRS, x, cash);
        ledger.spend(PlainPart.CREW_TIME, x, paid);
        ledger.spend(PlainPart.LOST_WORK, x, lostWork);
        flats.add(new PlainFuture.Flat(x, index, delay, down, displaced, lost, cash, paid, lostWork));
    }

    private record MakeUp(double today, double laterShare) {}

    /** What can be made up on the day of an hour; the first range of full weeks that holds it counts. */
    private MakeUp makeUp(double x) {
        ResolvedCrew crew = m.crew();
        LocalDate day = ledger.clock.at(x).date();
        for (ResolvedCrew.FullWeeks weeks : crew.fullWeeks()) {
            if (weeks.days().contains(day)) {
                return new MakeUp(weeks.makeUpToday(), weeks.makeUpLater().draw(draws.makeUpLater()));
            }
        }
        return new MakeUp(crew.makeUpToday(), crew.makeUpLater().draw(draws.makeUpLater()));
    }

    /** What a ruined tire adds to the repairs; on air past half its life both sides are made new. */
    private double replaceTire(double x) {
        if (!on.kind().holdsAir() || !(ageShare(x) > 0.5)) {
            return on.tirePrice();
        }
        ResolvedAssembly next = choice(x);
        double repairs = 0;
        if (next.id().equals(on.id())) {
            repairs = count * (on.tirePrice() + on.scrapFee())
                    + 0.5 * on.changeHours() * m.terms().shopRate();
        } else {
            ledger.spend(PlainPart.RENEWALS, x, renewal(next));
        }
        fit(next, x);
        return repairs;
    }

    /** What the set adds at the trade, in today's money before tax. */
    double tradeValue() {
        double a = ageShare(trade);
        double sold = count
                * (on.tradeCredit() * on.price() * (1 - a)
                        - on.tradeDeduction() * on.renewalPrice() * Math.max(0, (a - 0.5) / 0.5));
        if (differs && on.carryOn() > 0) {
            double kept = count * on.carryOn() * on.price() * (1 - a)
                    - on.changeHours() * m.terms().shopRate();
            return Math.max(sold, kept);
        }
        return sold;
    }
}
