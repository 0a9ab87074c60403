package footing.io.casefile;

import footing.core.chance.Spread;
import footing.core.fleet.Case;
import footing.core.fleet.Key;
import footing.core.fleet.Numbers;
import footing.core.fleet.Origin;
import footing.core.fleet.Place;
import footing.core.fleet.Season;
import footing.io.form.Found;
import footing.io.form.Problems;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Reads a crew. */
final class CrewReader {
    private final Problems problems;

    CrewReader(Problems problems) {
        this.problems = problems;
    }

    Case.Crew read(String id, Found crew) {
        Numbers numbers = crew.numbers(Place.CREW, Origin.STATED);
        CrewPay.check(crew, numbers, problems);
        return new Case.Crew(id, numbers, fullWeeks(crew.get("fullWeeks")), fixes(crew.get("fixes")));
    }

    private List<Case.FullWeek> fullWeeks(Found list) {
        List<Case.FullWeek> weeks = new ArrayList<>();
        for (Found item : list.items()) {
            MonthDay from = item.day("from");
            MonthDay to = item.day("to");
            if (from != null && to != null) {
                Season days = new Season(from, to);
                if (weeks.stream().anyMatch(w -> overlap(w.days(), days))) {
                    problems.warn(
                            item.at(), "", "these full weeks overlap others above", "the first in the list counts");
                }
                weeks.add(new Case.FullWeek(days, item.numbers(Place.FULL_WEEK, Origin.STATED)));
            }
        }
        return weeks;
    }

    /** Two stretches of the year meet if either holds the other's first day; any year that is no leap year tells. */
    private static boolean overlap(Season one, Season other) {
        int year = 2001;
        return one.contains(other.startIn(year)) || other.contains(one.startIn(year));
    }

    private List<Case.Fix> fixes(Found list) {
        List<Case.Fix> fixes = new ArrayList<>();
        Set<String> names = new HashSet<>();
        double sum = 0;
        boolean complete = true;
        for (Found item : list.items()) {
            String name = item.text("name");
            Spread share = item.get("share").number(Key.FIX_SHARE);
            complete &= share != null;
            sum += share == null ? 0 : share.likely();
            if (name != null && !names.add(name)) {
                problems.warn(
                        item.get("name").at(), name, "two fixes have this name", "tell them apart by their names");
            }
            fixes.add(new Case.Fix(
                    name == null ? "" : name,
                    "tire".equals(item.text("replaces")),
                    item.flag("sealable"),
                    item.numbers(Place.FIX, Origin.STATED)));
        }
        long learned = fixes.stream()
                .filter(f -> f.numbers().origin(Key.FIX_SHARE) == Origin.LEARNED)
                .count();
        if (learned > 0 && learned < fixes.size()) {
            problems.error(
                    list.at(),
                    "",
                    learned + " of " + fixes.size() + " shares are learned; they add up only together",
                    "learn all of them or none: share: {learned: share, stated: 60 %}");
        }
        if (complete && !fixes.isEmpty()) {
            Shares.checkWhole("the shares of the fixes", sum, list, problems);
        }
        return fixes;
    }
}
