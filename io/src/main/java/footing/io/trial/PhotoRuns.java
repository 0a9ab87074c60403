package footing.io.trial;

import footing.core.ground.PrintOutline;
import footing.core.quantity.Length;
import footing.core.trial.TrialKind;
import footing.io.form.At;
import footing.io.form.Found;
import footing.io.form.MeasureForm;
import footing.io.form.Problems;
import footing.io.form.Quantity;
import footing.io.photo.Card;
import footing.io.photo.Doubt;
import footing.io.photo.PhotoBytes;
import footing.io.photo.PrintAsked;
import footing.io.photo.PrintPhoto;
import footing.io.photo.PrintSeen;
import footing.io.photo.Seen;
import footing.io.photo.Spot;
import footing.io.photo.TurfAsked;
import footing.io.photo.TurfPhoto;
import footing.io.photo.TurfSeen;
import footing.io.words.PhotoWords;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Values of runs that were photographed. Photos are measured one after the other, so that one at a time is in memory. */
final class PhotoRuns {
    /** More are not measured: each takes a second. */
    static final int MOST = 200;

    private final Found file;
    private final TrialKind kind;
    private final Beside beside;
    private final Problems problems;
    private final List<StatedTrial.PhotoNote> doubts = new ArrayList<>();
    private int measured;
    private boolean told;

    PhotoRuns(Found file, TrialKind kind, Beside beside, Problems problems) {
        this.file = file;
        this.kind = kind;
        this.beside = beside;
        this.problems = problems;
    }

    int measured() {
        return measured;
    }

    List<StatedTrial.PhotoNote> doubts() {
        return doubts;
    }

    /** The print on a run's photo; null if there is none, with what is wrong reported. */
    @Nullable
    PrintSeen print(int run, Found at) {
        Card.Place place = file.has("sheet") ? Card.Place.UNDER : Card.Place.BESIDE;
        Card card = card(file.has("sheet") ? "sheet" : "card", place);
        byte[] photo = card == null ? null : bytes(at.get("photo"));
        if (card == null || photo == null) {
            return null;
        }
        PrintAsked.Rolling rolling =
                "long".equals(file.text("rolled")) ? PrintAsked.Rolling.LONG_SIDE : PrintAsked.Rolling.SHORT_SIDE;
        List<Spot> border = PhotoFields.BORDER.read(at.get("border").node());
        Seen seen = PrintPhoto.read(photo, new PrintAsked(card, rolling, corners(at, "corners"), border));
        if (seen instanceof PrintSeen print) {
            note(run, at, print.doubts());
            PrintOutline found = print.print();
            if (found == null) {
                nothing(at.get("photo"), print.doubts());
            }
            return found == null ? null : print;
        }
        refuse(at.get("photo"), seen);
        return null;
    }

    /** The torn share on a run's photos; null if there is none, with what is wrong reported. */
    @Nullable
    Double torn(int run, Found at) {
        Card frame = card("frame", Card.Place.UNDER);
        TurfAsked asked = frame == null ? null : asked(frame, at);
        byte[] before = asked != null && at.has("photoBefore") ? bytes(at.get("photoBefore")) : null;
        byte[] after = asked == null ? null : bytes(at.get("photo"));
        if (asked == null || after == null || (before == null && at.has("photoBefore"))) {
            return null;
        }
        Seen seen = TurfPhoto.read(before, after, asked);
        if (seen instanceof TurfSeen turf) {
            note(run, at, turf.doubts());
            Double share = before == null ? turf.after() : turf.torn();
            if (share == null) {
                nothing(at.get("photo"), turf.doubts());
            }
            return share;
        }
        refuse(at.get("photo"), seen);
        return null;
    }

    private @Nullable TurfAsked asked(Card frame, Found at) {
        Found ring = file.get("ring");
        TurfAsked.Ring swept = null;
        if (ring.isGroup()) {
            Length inner = length(ring, "inner");
            Length outer = length(ring, "outer");
            if (inner == null || outer == null || !(inner.meters() < outer.meters()) || !Card.isUsable(outer)) {
                once(
                        ring.at(),
                        "the inner radius is smaller than the outer, which is 5 m at the most",
                        "try: " + "{inner: 2 in, outer: 9 in}");
                return null;
            }
            swept = new TurfAsked.Ring(inner, outer);
        }
        return new TurfAsked(
                frame,
                swept,
                new TurfAsked.ByHand(corners(at, "cornersBefore"), ground(at, "borderBefore")),
                new TurfAsked.ByHand(corners(at, "corners"), ground(at, "border")));
    }

    private @Nullable Card card(String key, Card.Place place) {
        Length width = length(file.get(key), "width");
        Length height = length(file.get(key), "height");
        if (width == null || height == null || !Card.isUsable(width) || !Card.isUsable(height)) {
            String what = kind == TrialKind.PRINT ? "sheet" : "frame";
            once(
                    file.get(kind == TrialKind.PRINT && !file.has("card") ? "sheet" : key)
                            .at(),
                    "photos need the size of their " + what + ", sides from 2 cm to 5 m",
                    "try: " + what + ": {width: 11 in, height: 8.5 in}");
            return null;
        }
        return new Card(width, height, place);
    }

    /** What all runs lack is told once. */
    private void once(At at, String message, String advice) {
        if (!told) {
            told = true;
            problems.error(at, "", message, advice);
        }
    }

    private static @Nullable Length length(Found at, String key) {
        Double meters = MeasureForm.of(Quantity.LENGTH).value(at.get(key).node());
        return meters == null ? null : new Length(meters);
    }

    private static List<Spot> corners(Found run, String key) {
        return PhotoFields.CORNERS.read(run.get(key).node());
    }

    private static List<Spot> ground(Found run, String key) {
        return PhotoFields.GROUND.read(run.get(key).node());
    }

    private byte @Nullable [] bytes(Found named) {
        String name = named.text() + "";
        Path path = beside.file(name);
        if (path == null) {
            problems.error(named.at(), name, "there is no such file beside the trial file", "check its name");
            return null;
        }
        if (++measured > MOST) {
            once(named.at(), "more than " + MOST + " photos are not measured", "split the trial");
            return null;
        }
        try {
            return PhotoBytes.of(path);
        } catch (IOException e) {
            problems.error(named.at(), name, "this photo can't be read", "check that it may be opened");
            return null;
        }
    }

    private void refuse(Found named, Seen seen) {
        if (seen instanceof Seen.Refused r) {
            problems.error(named.at(), named.text() + "", r.what(), r.advice());
        }
    }

    private void nothing(Found named, List<Doubt> why) {
        String words = why.isEmpty() ? "" : PhotoWords.of(why.get(0));
        problems.error(named.at(), named.text() + "", "nothing was measured on it", words);
    }

    private void note(int run, Found at, List<Doubt> found) {
        String name = at.get("photo").text() + "";
        found.forEach(d -> doubts.add(new StatedTrial.PhotoNote(run, name, d)));
    }
}
