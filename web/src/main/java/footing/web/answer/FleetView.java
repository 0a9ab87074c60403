package footing.web.answer;

import footing.core.answer.Answer;
import footing.core.fleet.ResolvedCrew;
import footing.io.figure.Figure;
import footing.io.figure.FleetFigure;
import footing.io.figure.Scale;
import footing.io.words.Advice;
import footing.io.words.Figures;
import footing.io.words.Lists;
import footing.io.words.Naming;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What the page of a whole fleet shows: a line for each machine, by crew, on one scale. */
record FleetView(List<Bar.Tick> ticks, String zero, List<Crew> crews, FigureView figure) {
    record Crew(String title, List<FleetRow> rows) {}

    static FleetView of(Answer answer) {
        Figure figure = FleetFigure.of(answer);
        Scale scale = Scale.of(figure);
        Map<ResolvedCrew, List<FleetRow>> byCrew = new LinkedHashMap<>();
        for (Advice a : Advice.all(answer)) {
            byCrew.computeIfAbsent(a.machine().machine().crew(), c -> new ArrayList<>())
                    .add(FleetRow.of(answer, a, scale));
        }
        List<Crew> crews = new ArrayList<>();
        byCrew.forEach((crew, rows) -> crews.add(new Crew(title(crew), rows)));
        boolean nothing = Advice.all(answer).stream().allMatch(a -> a.about() == null);
        List<Bar.Tick> ticks = nothing ? List.of() : Bar.ticks(scale);
        String zero = ticks.stream()
                .filter(t -> t.label().equals("no gain"))
                .map(Bar.Tick::at)
                .findFirst()
                .orElse("0%");
        return new FleetView(ticks, zero, crews, FigureView.of(figure));
    }

    /** 'Crew streets'; an id that says so itself keeps its case. */
    static String crewName(String id) {
        String name = Naming.crew(id);
        return name.equals(id) ? id : Lists.capital(name);
    }

    private static String title(ResolvedCrew crew) {
        return crewName(crew.id()) + ", "
                + (crew.people() == 1 ? "one person" : Figures.count(crew.people()) + " people");
    }
}
