package footing.web.answer;

import footing.core.answer.Answer;
import footing.core.answer.EntryAnswer;
import footing.core.answer.MachineAnswer;
import footing.io.figure.EntryName;
import footing.io.figure.FlatByTheClock;
import footing.io.figure.GroundLines;
import footing.io.figure.MachineFigures;
import footing.io.words.Advice;
import footing.io.words.ClockedFlat;
import footing.io.words.Figures;
import footing.io.words.Lists;
import footing.io.words.Odds;
import footing.io.words.Payment;
import footing.io.words.Pieces;
import footing.io.words.Reason;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What the page of one machine shows below the sentence.
 *
 * @param figures by id
 * @param output why an hour of the machine isn't an hour of the crew; empty where it is
 * @param asItIs what it carries, the lowest step of the ladder
 * @param entry what the figures are about; null if there is nothing else to choose from
 */
record MachineView(
        String id,
        String kind,
        String reason,
        FleetRow.@Nullable Entry entry,
        FleetRow.Entry carried,
        List<Choice> choices,
        String asItIs,
        List<Rung> ladder,
        List<String> clock,
        String output,
        String averageFlat,
        List<String> loan,
        GroundLines ground,
        Map<String, FigureView> figures) {
    /** A step of the ladder. */
    record Rung(String name, String extraStart, String extraSaving, String pays) {}

    static MachineView of(Answer answer) {
        Advice a = Advice.all(answer).get(0);
        MachineAnswer m = a.machine();
        EntryAnswer about = a.about();
        return new MachineView(
                m.id(),
                FleetRow.kind(m),
                Reason.of(answer, a),
                about == null ? null : FleetRow.Entry.of(about),
                FleetRow.Entry.of(m.carried()),
                Choice.all(a),
                EntryName.of(a, m.carried()),
                m.ladder().stream().map(r -> rung(m, r)).toList(),
                clock(m),
                ClockedFlat.output(a).orElse(""),
                ClockedFlat.average(m),
                Payment.told(a),
                GroundLines.of(answer, a),
                figures(answer, a));
    }

    private static Rung rung(MachineAnswer m, MachineAnswer.Rung r) {
        return new Rung(
                Lists.capital(Pieces.changedWhen(m.machine(), r.entry())),
                Figures.money(r.extraStart()),
                Figures.money(r.extraSaving()),
                Odds.sentence(r.chance()));
    }

    /** Each fix by the clock, and what becomes of the minutes it pushes back. */
    private static List<String> clock(MachineAnswer m) {
        MachineAnswer.CostPerFlat cost = m.costPerFlat();
        return cost == null
                ? List.of()
                : cost.fixes().stream()
                        .filter(f -> f.flats() > 0)
                        .map(f -> (ClockedFlat.told(cost.fixes(), f) + " "
                                        + FlatByTheClock.of(m.machine().crew(), f)
                                                .told())
                                .strip())
                        .toList();
    }

    private static Map<String, FigureView> figures(Answer answer, Advice a) {
        MachineFigures figures = new MachineFigures(answer, a);
        Map<String, FigureView> views = new LinkedHashMap<>();
        List.of(
                        figures.flatByTheClock(),
                        figures.pricesOfAnHour(),
                        Optional.of(figures.overHours()),
                        Optional.of(figures.whereItGoes()),
                        figures.howSure(),
                        figures.whatMovesIt(),
                        figures.byYear())
                .forEach(f -> f.map(FigureView::of)
                        .ifPresent(v -> views.put(v.figure().id(), v)));
        return views;
    }
}
