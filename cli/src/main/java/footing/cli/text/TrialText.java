package footing.cli.text;

import footing.core.trial.BoutResult;
import footing.core.trial.PairedResult;
import footing.core.trial.TrialResult;
import footing.io.trial.StatedTrial;
import footing.io.words.CaveatWords;
import footing.io.words.FindingWords;
import footing.io.words.Lists;
import footing.io.words.PhotoWords;
import footing.io.words.Shown;
import footing.io.words.TrialCautions;
import footing.io.words.TrialWords;
import java.util.List;

/** A trial's result as a page: the verdict first. */
public final class TrialText {
    private TrialText() {}

    public static String of(StatedTrial stated, TrialResult result, Letters letters) {
        Lines lines = new Lines(letters);
        Shown shown = stated.measure().shown(stated.metric());
        TrialWords words = new TrialWords(result, shown);
        lines.paragraph(stated.title()).blank();
        lines.paragraph(words.verdict());
        PairedResult together = result.together();
        if (together != null) {
            lines.blank().paragraph(words.evidence(together));
            lines.paragraph(TrialWords.question(stated.trial().question().goal(), shown));
        }
        BoutResult bouts = result.bouts();
        if (bouts != null) {
            lines.blank().paragraph(words.evidence(bouts));
        }
        result.bySurface().forEach((surface, r) -> lines.hanging("  " + surface + ": ", words.verdict(r)));
        doubts(stated, result, lines);
        List<String> held = stated.trial().question().heldEqual();
        if (!held.isEmpty()) {
            lines.head("Held equal: " + Lists.and(held) + ".");
        }
        String limits = TrialWords.limits(stated.measure().kind());
        if (!limits.isEmpty()) {
            lines.head(limits);
        }
        lines.head("Cautions");
        TrialCautions.of(stated.measure().kind()).forEach(lines::item);
        return lines.toString();
    }

    private static void doubts(StatedTrial stated, TrialResult result, Lines lines) {
        if (!result.caveats().isEmpty()) {
            lines.head("What a skeptic would say");
            result.caveats().forEach(c -> lines.item(CaveatWords.of(c, result.trial(), stated.metric())));
        }
        if (!stated.logs().isEmpty()) {
            lines.head("About the logs");
            for (StatedTrial.LogNote note : stated.logs()) {
                lines.item("run " + note.run() + ", " + note.log() + ": " + FindingWords.of(note.finding()) + ".");
            }
        }
        if (stated.evidence().photos() > 0) {
            lines.head("About the photos");
            lines.item(PhotoWords.counted(stated.evidence().photos()));
            for (StatedTrial.PhotoNote note : stated.evidence().doubts()) {
                lines.item("run " + note.run() + ", " + note.photo() + ", unsure: " + PhotoWords.of(note.doubt()));
            }
        }
    }
}
