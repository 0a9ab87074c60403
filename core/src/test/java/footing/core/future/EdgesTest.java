package footing.core.future;

import static org.assertj.core.api.Assertions.assertThat;

import footing.core.chance.Spread;
import footing.core.fleet.ResolvedCrew;
import footing.core.fleet.Season;
import java.time.LocalDate;
import java.time.MonthDay;
import org.junit.jupiter.api.Test;

/** Where a calendar is at its smallest or fullest. */
class EdgesTest {
    private static final Season SUMMER = new Season(MonthDay.of(4, 1), MonthDay.of(9, 30));

    @Test
    void hourCalendar_restOfNoHours_stillHasADay() {
        HourCalendar calendar = new HourCalendar(LocalDate.of(2027, 5, 1), SUMMER, 400, 1e-10);
        assertThat(calendar.days()).isPositive();
        assertThat(calendar.daysAt(1e-10)).isBetween(0.0, 1e-6);
    }

    @Test
    void weekOfDay_moreFullWeeksThanAByteCounts_findsEach() {
        footing.core.plain.MachineDraft draft = new footing.core.plain.MachineDraft();
        draft.asOf = LocalDate.of(2027, 1, 1);
        draft.flatsPerSeason = Spread.of(20);
        for (int i = 0; i < 130; i++) {
            MonthDay day = MonthDay.from(LocalDate.of(2027, 1, 1).plusDays(i));
            draft.fullWeeks.add(new ResolvedCrew.FullWeeks(new Season(day, day), 0, Spread.of(0)));
        }
        draft.fixes.add(new ResolvedCrew.ResolvedFix("plug", 1, Spread.of(1), 4, false, true, 0));
        draft.assemblies.put("air", air());
        draft.assemblies.put("caster", air());
        draft.entries.add(new footing.core.fleet.ResolvedMachine.Entry(
                "on-air", footing.core.fleet.When.NOW, "air", "caster", java.util.OptionalDouble.empty()));
        MachinePlan plan = new MachinePlan(draft.build(), 1, false);
        assertThat(plan.weekOfDay[0]).isEqualTo(1);
        assertThat(plan.weekOfDay[129]).isEqualTo(130);
        assertThat(new MachineFutures(draft.build(), 1).runAll(50).costs(0)).hasSize(50);
    }

    private static footing.core.plain.MachineDraft.AssemblyDraft air() {
        return new footing.core.plain.MachineDraft.AssemblyDraft();
    }
}
