package footing.web.records;

import footing.core.records.FixShare;
import footing.core.records.Learned;
import footing.io.figure.FlatsByMachine;
import footing.io.figure.LivesOfSets;
import footing.io.words.LearnedWords;
import footing.web.answer.FigureView;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What records teach, part by part: a figure where there is one to draw, and a sentence for each result. */
record LearnedView(List<Part> parts) {
    /**
     * One part.
     *
     * @param figure has the title as its own; null if there is none
     */
    record Part(String id, String title, @Nullable FigureView figure, List<String> sentences) {}

    static LearnedView of(Learned learned) {
        List<Part> parts = new ArrayList<>();
        List<String> flats = new ArrayList<>();
        learned.flats().forEach(f -> flats.add(LearnedWords.flats(f)));
        learned.crews().forEach(c -> LearnedWords.crew(c).ifPresent(flats::add));
        learned.trends().forEach(t -> flats.add(LearnedWords.trend(t)));
        flats.add(LearnedWords.wear(learned.wear()));
        LearnedWords.byAge(learned.wear()).ifPresent(flats::add);
        add(parts, "flats", "Flats by machine", FlatsByMachine.of(learned.flats()), flats);
        int number = 0;
        for (Learned.SetLife life : learned.lives()) {
            number++;
            add(
                    parts,
                    "life-" + number,
                    "How long sets last",
                    LivesOfSets.of(life, number),
                    List.of(LearnedWords.life(life)));
        }
        List<String> kinds =
                learned.contrasts().stream().map(LearnedWords::contrast).toList();
        add(parts, "kinds", "Which sets last longer", Optional.empty(), kinds);
        List<String> left = new ArrayList<>();
        learned.treads().forEach(t -> left.add(LearnedWords.tread(t)));
        learned.untold().forEach(s -> left.add(LearnedWords.untold(s)));
        add(parts, "left", "Hours left by tread depth", Optional.empty(), left);
        int crew = 0;
        for (Learned.Fixes fixes : learned.fixes()) {
            crew++;
            String of = fixes.crew().isEmpty() ? "" : ", crew " + fixes.crew();
            List<String> shares = new ArrayList<>();
            for (FixShare share : fixes.shares()) {
                shares.add(LearnedWords.fix(share, fixes.delays()));
            }
            String title = "What is done about a flat" + of + " (" + fixes.flats() + " written down)";
            add(parts, "fixes-" + crew, title, Optional.empty(), shares);
        }
        return new LearnedView(parts);
    }

    private static void add(
            List<Part> parts,
            String id,
            String title,
            Optional<footing.io.figure.Figure> figure,
            List<String> sentences) {
        if (!sentences.isEmpty()) {
            parts.add(new Part(id, title, figure.map(FigureView::of).orElse(null), sentences));
        }
    }
}
