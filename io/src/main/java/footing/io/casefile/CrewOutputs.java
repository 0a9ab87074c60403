package footing.io.casefile;

import footing.core.fleet.Case;
import footing.core.fleet.Key;
import footing.io.form.Found;
import footing.io.form.Problems;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Warns of crews whose machines together do more than all of the crew's mowing. */
final class CrewOutputs {
    private CrewOutputs() {}

    static void check(List<Case.Machine> machines, Found file, Problems problems) {
        Map<String, List<Case.Machine>> byCrew = new LinkedHashMap<>();
        machines.forEach(
                m -> byCrew.computeIfAbsent(m.crew(), c -> new ArrayList<>()).add(m));
        file.get("crews").named().forEach((crew, part) -> {
            List<Case.Machine> its = byCrew.getOrDefault(crew, List.of());
            double sum = its.stream()
                    .mapToDouble(m -> m.numbers()
                            .get(Key.CREW_OUTPUT)
                            .map(s -> s.likely())
                            .orElse(0.0))
                    .sum();
            if (sum > 1 + Shares.TOLERANCE) {
                String ids =
                        String.join(", ", its.stream().map(Case.Machine::id).toList());
                problems.warn(
                        part.at(),
                        Shares.percent(sum),
                        "the crewOutput of its machines (" + ids + ") makes more than 100 %",
                        "fine for spare machines; else lower some");
            }
        });
    }
}
