package footing.cli.text;

import footing.core.records.FixShare;
import footing.core.records.Learned;
import footing.core.records.TreadWear;
import footing.io.records.Records;
import footing.io.words.LearnedWords;
import footing.io.words.Lists;

/** What records teach, on a terminal. */
public final class LearnedText {
    private LearnedText() {}

    public static String of(Records records, Learned learned, Letters letters) {
        Lines lines = new Lines(letters);
        lines.paragraph(records.file() + ": " + records.log().rows() + " of " + records.rows() + " rows used.");
        records.notes().forEach(lines::paragraph);
        if (!records.ignored().isEmpty()) {
            lines.paragraph("Columns kept and not read: " + Lists.and(records.ignored()) + ".");
        }
        lines.head("Flats");
        learned.flats().forEach(f -> lines.item(LearnedWords.flats(f)));
        lines.item(LearnedWords.wear(learned.wear()));
        if (!learned.lives().isEmpty()) {
            lines.head("Lives of sets");
            learned.lives().forEach(l -> lines.item(LearnedWords.life(l)));
        }
        treads(lines, learned);
        for (Learned.Fixes fixes : learned.fixes()) {
            String of = fixes.crew().isEmpty() ? "" : ", " + fixes.crew();
            lines.head("What is done about a flat" + of + " (" + fixes.flats() + " written down)");
            for (FixShare share : fixes.shares()) {
                lines.item(LearnedWords.fix(share, fixes.delays()));
            }
        }
        return lines.toString();
    }

    private static void treads(Lines lines, Learned learned) {
        if (learned.treads().isEmpty() && learned.untold().isEmpty()) {
            return;
        }
        lines.head("Hours left by tread depth");
        for (TreadWear.HoursLeft left : learned.treads()) {
            lines.item(LearnedWords.tread(left));
        }
        learned.untold().forEach(set -> lines.item(LearnedWords.untold(set)));
    }
}
