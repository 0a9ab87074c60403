package footing.cli.text;

import footing.core.records.FixShare;
import footing.core.records.Learned;
import footing.core.records.TreadWear;
import footing.io.records.Records;
import footing.io.words.LearnedWords;
import footing.io.words.Lists;

/** What records teach, on a terminal. */
public final class LearnedText {
    private static final int MOST_LISTED = 50;

    private LearnedText() {}

    public static String of(Records records, Learned learned, Letters letters) {
        Lines lines = new Lines(letters);
        lines.paragraph(records.file() + ": " + records.log().rows() + " of " + records.rows() + " rows used.");
        records.notes().forEach(lines::paragraph);
        if (!records.ignored().isEmpty()) {
            lines.paragraph("Columns kept and not read: " + Lists.and(records.ignored()) + ".");
        }
        refused(lines, records);
        lines.head("Flats");
        learned.flats().forEach(f -> lines.item(LearnedWords.flats(f)));
        learned.crews().forEach(c -> LearnedWords.crew(c).ifPresent(lines::item));
        learned.trends().forEach(t -> lines.item(LearnedWords.trend(t)));
        lines.item(LearnedWords.wear(learned.wear()));
        LearnedWords.byAge(learned.wear()).ifPresent(lines::item);
        if (!learned.lives().isEmpty()) {
            lines.head("Lives of sets");
            learned.lives().forEach(l -> lines.item(LearnedWords.life(l)));
            learned.contrasts().forEach(c -> lines.item(LearnedWords.contrast(c)));
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

    private static void refused(Lines lines, Records records) {
        int count = records.refused().size();
        if (count == 0) {
            return;
        }
        lines.head((count == 1 ? "1 row" : count + " rows") + " not counted");
        records.refused().stream()
                .limit(MOST_LISTED)
                .forEach(p ->
                        lines.item("line " + p.line() + ": " + (p.path().isEmpty() ? "" : p.path() + ": ") + p.said()));
        if (count > MOST_LISTED) {
            lines.item("and " + (count - MOST_LISTED) + " more; --json lists all");
        }
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
