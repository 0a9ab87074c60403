package footing.web.records;

import footing.core.follow.Bands;
import footing.core.follow.FollowUp;
import footing.core.follow.Forecast;
import footing.core.follow.Line;
import footing.core.follow.Standing;
import footing.core.follow.Step;
import footing.core.future.Followed;
import footing.core.records.Log;
import footing.io.figure.ForecastFigure;
import footing.io.follow.ForecastFile;
import footing.io.words.FollowWords;
import footing.io.words.Lists;
import footing.web.answer.FigureView;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What came, held against a forecast.
 *
 * @param said everything in a sentence
 * @param intro where the forecast comes from; empty if none is kept
 * @param drawn what can be drawn, one of them chosen
 * @param fleet null if no forecast is kept
 * @param silent machines nothing was written down of since; empty if there are none
 */
record FollowView(
        String said,
        String intro,
        List<Drawn> drawn,
        @Nullable Part fleet,
        List<Part> machines,
        String silent) {
    /** Drawings are large; of further machines there are the sentences, and each can be looked at alone. */
    private static final int MOST_DRAWN = 24;

    private static final String READ = "The solid line is what came, the dotted one what was due on average; between"
            + " the thin edges lie eight in ten of the ways it could go.";
    private static final String FORECAST = "The dotted line is what is due on average; between the thin edges lie eight"
            + " in ten of the ways it could go.";

    /** Something that can be drawn. */
    record Drawn(String name, String words, boolean chosen) {}

    /**
     * A machine, or all of them.
     *
     * @param figure has the title and the head as its own; null if it is not drawn
     */
    record Part(String title, String head, @Nullable FigureView figure, List<Told> lines) {}

    /** A sentence. */
    record Told(String words, boolean strays) {
        static Told of(Line line, String currency) {
            boolean strays = line.standing() == Standing.MORE || line.standing() == Standing.LESS;
            return new Told(FollowWords.line(line, currency), strays);
        }
    }

    static FollowView of(Optional<Forecast> kept, Log log, FollowChoice choice) {
        if (kept.isEmpty()) {
            return new FollowView("No forecast is kept yet.", "", List.of(), null, List.of(), "");
        }
        FollowUp up = FollowUp.of(kept.get(), log);
        Followed what = choice.what();
        List<Drawn> drawn = Arrays.stream(Followed.values())
                .map(w -> new Drawn(ForecastFile.name(w), Lists.capital(FollowWords.followed(w)), w == what))
                .toList();
        List<Part> machines = new ArrayList<>();
        for (FollowUp.Machine m : up.machines()) {
            if (choice.machine().isEmpty()
                    || choice.machine().equals(m.forecast().id())) {
                machines.add(machine(m, machines.size(), what, kept.get().currency()));
            }
        }
        return new FollowView(
                FollowWords.summary(up),
                FollowWords.intro(kept.get()),
                drawn,
                choice.machine().isEmpty() ? fleet(up, what) : null,
                machines,
                Lists.and(up.silent()));
    }

    private static Part machine(FollowUp.Machine m, int number, Followed what, String currency) {
        String id = m.forecast().id();
        String head = FollowWords.head(m);
        FigureView figure = number < MOST_DRAWN
                ? drawn("follow-" + number, id, head, what, m.forecast().bands(), m.came(), currency)
                : null;
        return new Part(id, head, figure, told(m.lines(), currency));
    }

    /** Of all machines: what came, or what is due as long as one of them is silent. */
    private static Part fleet(FollowUp up, Followed what) {
        String currency = up.forecast().currency();
        Optional<FollowUp.Fleet> fleet = up.fleet();
        String head = fleet.map(FollowWords::head).orElse("");
        List<Step> came = fleet.map(FollowUp.Fleet::came).orElse(List.of());
        String caption = fleet.isPresent() ? head + " " + READ : FORECAST;
        List<Told> lines = fleet.map(f -> told(f.lines(), currency)).orElse(List.of());
        return new Part(
                "All machines",
                head,
                drawn("follow-all", "All machines", caption, what, up.forecast().fleet(), came, currency),
                lines);
    }

    private static FigureView drawn(
            String id, String of, String head, Followed what, Bands bands, List<Step> came, String currency) {
        return FigureView.of(ForecastFigure.of(id, of, head, what, bands, came, currency));
    }

    private static List<Told> told(List<Line> lines, String currency) {
        return lines.stream().map(l -> Told.of(l, currency)).toList();
    }
}
