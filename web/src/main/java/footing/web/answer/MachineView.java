package footing.web.answer;

import footing.core.answer.Answer;
import footing.core.answer.EntryAnswer;
import footing.core.answer.MachineAnswer;
import footing.core.future.FixOutcome;
import footing.io.figure.EntryName;
import footing.io.figure.FlatByTheClock;
import footing.io.figure.MachineFigures;
import footing.io.words.Advice;
import footing.io.words.ClockedFlat;
import footing.io.words.Figures;
import footing.io.words.Odds;
import footing.io.words.Pieces;
import footing.io.words.Reason;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What the page of one machine shows below the sentence.
 *
 * @param figures by id
 * @param entry what the figures are about; null if there is nothing else to choose from
 */
record MachineView(
        String id,
        String kind,
        String reason,
        String about,
        FleetRow.@Nullable Entry entry,
        FleetRow.Entry carried,
        List<Choice> choices,
        List<Rung> ladder,
        List<String> clock,
        String averageFlat,
        List<String> loan,
        Map<String, FigureView> figures) {
    /** A line of the table of all choices. */
    record Choice(
            String name,
            boolean carried,
            boolean best,
            String start,
            String cost,
            String saves,
            String pays,
            FleetRow.Entry entry) {}

    /** A step of the ladder. */
    record Rung(String name, String extraStart, String extraSaving, String pays) {}

    static MachineView of(Answer answer) {
        Advice a = Advice.all(answer).get(0);
        MachineAnswer m = a.machine();
        EntryAnswer about = a.about();
        return new MachineView(
                m.id(),
                m.machine().kind() + (m.machine().isNew() ? ", new" : ""),
                Reason.of(answer, a),
                a.piecesWhen(),
                about == null ? null : FleetRow.Entry.of(about),
                FleetRow.Entry.of(m.carried()),
                choices(a),
                m.ladder().stream().map(r -> rung(m, r)).toList(),
                clock(m),
                averageFlat(m),
                LoanTest.told(a),
                figures(answer, a));
    }

    private static List<Choice> choices(Advice a) {
        List<Choice> choices = new ArrayList<>();
        a.machine().entries().stream()
                .sorted(Comparator.comparingDouble(e -> e.cost().mean()))
                .forEach(e -> {
                    boolean carried = EntryName.isCarried(a, e);
                    choices.add(new Choice(
                            EntryName.of(a, e),
                            carried,
                            e.equals(a.machine().choice()),
                            Figures.money(e.startCost()),
                            Figures.money(e.cost().mean()),
                            carried ? "" : Figures.money(e.saving().mean()).replace('-', '−'),
                            carried ? "" : Odds.column(e.saving().chance()),
                            FleetRow.Entry.of(e)));
                });
        return choices;
    }

    private static Rung rung(MachineAnswer m, MachineAnswer.Rung r) {
        return new Rung(
                Pieces.changedWhen(m.machine(), r.entry()),
                Figures.money(r.extraStart()),
                Figures.money(r.extraSaving()),
                Odds.sentence(r.chance()));
    }

    private static List<String> clock(MachineAnswer m) {
        MachineAnswer.CostPerFlat cost = m.costPerFlat();
        return cost == null
                ? List.of()
                : cost.fixes().stream()
                        .filter(f -> f.flats() > 0)
                        .map(f -> ClockedFlat.told(f) + after(m, f))
                        .toList();
    }

    /** What becomes of the minutes pushed back. */
    private static String after(MachineAnswer m, FixOutcome f) {
        FlatByTheClock flat = FlatByTheClock.of(m.machine().crew(), f);
        return Figures.shows(flat.pushedBack())
                ? " Of those minutes " + Figures.money(flat.madeUp()) + " are made up and " + Figures.money(flat.lost())
                        + " lost."
                : "";
    }

    private static String averageFlat(MachineAnswer m) {
        MachineAnswer.CostPerFlat cost = m.costPerFlat();
        return cost == null
                ? "On what it has now it never goes flat."
                : "The average flat costs " + Figures.money(cost.total()) + ": " + Figures.money(cost.cash())
                        + " for parts, " + Figures.money(cost.paid()) + " paid to make up time, "
                        + Figures.money(cost.lost()) + " of work lost.";
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
