package footing.web.answer;

import footing.core.answer.Answer;
import footing.core.answer.EntryAnswer;
import footing.core.answer.MachineAnswer;
import footing.io.figure.Scale;
import footing.io.words.Advice;
import footing.io.words.Figures;
import footing.io.words.Odds;
import footing.io.words.Reason;
import footing.io.words.Verb;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A machine's line.
 *
 * @param style gain, loss or flat, and kept where nothing changes: how loudly it is drawn
 * @param dearer what the next best costs more, where nothing changes
 * @param entry what its figures are about; null if there is nothing else to choose from
 */
record FleetRow(
        String id,
        String kind,
        String does,
        String style,
        @Nullable Bar bar,
        String saves,
        String pays,
        String start,
        String dearer,
        String reason,
        @Nullable Entry entry) {
    /** How an entry is named in a request. */
    record Entry(String wheels, String when) {
        static Entry of(EntryAnswer e) {
            return new Entry(e.entry().id(), e.entry().when().name().toLowerCase(java.util.Locale.ROOT));
        }
    }

    static FleetRow of(Answer answer, Advice a, Scale scale) {
        EntryAnswer about = a.about();
        boolean kept = a.verb() == Verb.KEEP || a.verb() == Verb.ORDER_AS_IT_COMES;
        String kind = kind(a.machine());
        if (about == null) {
            return new FleetRow(a.id(), kind, a.row(), "flat kept", null, "", "", "", "", Reason.of(answer, a), null);
        }
        return new FleetRow(
                a.id(),
                kind,
                a.row(),
                style(a, kept),
                Bar.of(scale, about.saving()),
                kept ? "" : Figures.money(about.saving().mean()).replace('-', '−'),
                kept ? "" : Odds.column(about.saving().chance()),
                kept ? "" : Figures.money(about.startCost()),
                kept ? Figures.size(about.saving().mean()) + " more" : "",
                Reason.of(answer, a),
                Entry.of(about));
    }

    /** '60 in riding mower, new', as far as it is stated. */
    static String kind(MachineAnswer machine) {
        return Stream.of(machine.machine().kind(), machine.machine().isNew() ? "new" : "")
                .filter(word -> !word.isEmpty())
                .collect(Collectors.joining(", "));
    }

    private static String style(Advice a, boolean kept) {
        if (kept) {
            return "flat kept";
        }
        return a.verb().changes() ? "gain" : "flat";
    }

    public boolean isKept() {
        return style.endsWith("kept");
    }
}
