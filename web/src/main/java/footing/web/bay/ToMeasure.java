package footing.web.bay;

import footing.core.fitting.Fit;
import footing.core.fleet.Case;
import footing.io.words.FitWords;
import footing.io.words.Lacking;
import footing.web.answer.FieldView;
import java.util.ArrayList;
import java.util.List;

/**
 * Something left to find out, and the boxes its measures go into.
 *
 * @param words what to do
 */
record ToMeasure(String words, List<Link> links) {
    /** A box to go to. */
    record Link(String field, String label) {
        private static Link of(FieldView field) {
            return new Link(field.id(), field.label());
        }
    }

    /** What would settle whether wheels fit. */
    static List<ToMeasure> of(Fit fit, MeasurePanel panel) {
        List<ToMeasure> all = new ArrayList<>();
        for (Fit.Open open : fit.open()) {
            List<Link> links = open.findings().stream()
                    .flatMap(f -> java.util.stream.Stream.ofNullable(f.settle()))
                    .flatMap(s -> panel.nearest(s.path()).stream())
                    .map(Link::of)
                    .distinct()
                    .toList();
            all.add(new ToMeasure(FitWords.act(open), links));
        }
        return all;
    }

    /** What figures lack. */
    static List<ToMeasure> of(Lacking lacking, MeasurePanel panel, Case stated) {
        List<ToMeasure> all = new ArrayList<>();
        lacking.needs()
                .forEach(n -> all.add(panel.nearest(n.path())
                        .map(f -> new ToMeasure(what(n, f, stated), List.of(Link.of(f))))
                        .orElseGet(() -> new ToMeasure(n.path() + ": " + n.what(), List.of()))));
        lacking.limits().forEach(l -> all.add(new ToMeasure(l, List.of())));
        return all;
    }

    /** The label alone says it where the box is the very one. */
    private static String what(Lacking.Need need, FieldView field, Case stated) {
        String owner = Spot.of(field.path(), stated).map(Spot::owner).orElse("");
        return field.label().equalsIgnoreCase(need.what()) ? owner : owner + ": " + need.what();
    }
}
