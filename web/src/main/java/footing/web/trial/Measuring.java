package footing.web.trial;

import footing.core.ground.PrintOutline;
import footing.io.photo.Card;
import footing.io.photo.Overlay;
import footing.io.photo.PrintAsked;
import footing.io.photo.PrintPhoto;
import footing.io.photo.PrintSeen;
import footing.io.photo.Seen;
import footing.io.photo.Spot;
import footing.io.photo.TurfAsked;
import footing.io.photo.TurfPhoto;
import footing.io.photo.TurfSeen;
import footing.io.trial.Measure;
import footing.io.words.Lists;
import footing.io.words.PhotoWords;
import java.util.List;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Component;
import org.springframework.web.server.ResponseStatusException;

/** Has photos measured, one at a time, since each takes a lot of memory, and keeps what was read. */
@Component
class Measuring {
    private static final int MENDABLE = 36;
    private static final long PATIENCE_SECONDS = 60;

    private final PhotoStore photos;
    private final Semaphore one = new Semaphore(1, true);

    Measuring(PhotoStore photos) {
        this.photos = photos;
    }

    /** Measures anew what the photos of a place show: a print each, torn turf from the last before and after. */
    void measure(long trial, Setup setup, String place) {
        try {
            if (!one.tryAcquire(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
                throw new ResponseStatusException(HttpStatus.SERVICE_UNAVAILABLE);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new ResponseStatusException(HttpStatus.SERVICE_UNAVAILABLE, "stopped", e);
        }
        try {
            List<Photo> here = photos.list(trial).stream()
                    .filter(p -> p.place().equals(place) && !p.undone())
                    .toList();
            if (Photo.parts(setup).contains(Photo.PRINT)) {
                here.forEach(p -> print(setup, p));
            } else {
                turf(setup, last(here, Photo.BEFORE), last(here, Photo.AFTER));
            }
        } finally {
            one.release();
        }
    }

    private static @Nullable Photo last(List<Photo> here, String part) {
        return here.stream()
                .filter(p -> p.part().equals(part))
                .reduce((a, b) -> b)
                .orElse(null);
    }

    /** Measures one print anew, with what is pointed at on it. */
    private void print(Setup setup, Photo photo) {
        PrintAsked asked =
                new PrintAsked(card(setup), PhotoSizes.rolling(setup), spots(photo.corners()), spots(photo.border()));
        Seen seen = PrintPhoto.read(photos.content(photo.id()), asked);
        if (seen instanceof PrintSeen print) {
            PrintOutline outline = print.print();
            PhotoWords words = new PhotoWords(setup.metric());
            String said = outline == null ? "No print was measured." : words.measures(outline);
            photos.setRead(
                    photo.id(),
                    new Photo.Read(
                            true,
                            said,
                            print.doubts().stream().map(PhotoWords::of).toList(),
                            outline == null ? "" : value(setup, outline),
                            Pointed.write(print.corners()),
                            Pointed.write(Pointed.thinned(print.border(), MENDABLE))),
                    print.overlay().png());
        } else {
            refused(photo, (Seen.Refused) seen);
        }
    }

    private static String value(Setup setup, PrintOutline print) {
        Measure measure = setup.measure().orElse(Measure.AREA);
        double si = switch (measure) {
            case LONG -> print.length();
            case WIDE -> print.width();
            case SHAPE -> print.shape();
            default -> print.area();
        };
        return measure.shown(setup.metric()).number(si);
    }

    /** With only one of the two the corners are looked for and the overlay is drawn, but no run has a value. */
    private void turf(Setup setup, @Nullable Photo before, @Nullable Photo after) {
        Photo main = after != null ? after : before;
        if (main == null) {
            return;
        }
        TurfAsked asked = new TurfAsked(
                card(setup), PhotoSizes.ring(setup).orElse(null), byHand(after == null ? null : before), byHand(main));
        byte[] first = before == null || after == null ? null : photos.content(before.id());
        Seen seen = TurfPhoto.read(first, photos.content(main.id()), asked);
        if (!(seen instanceof TurfSeen turf)) {
            refused(main, (Seen.Refused) seen);
            return;
        }
        List<String> doubts = turf.doubts().stream().map(PhotoWords::of).toList();
        Double torn = turf.torn();
        String value = torn == null ? "" : Measure.TORN.shown(setup.metric()).number(torn);
        String said = new PhotoWords(setup.metric()).shares(turf);
        photos.setRead(
                main.id(),
                new Photo.Read(true, said, doubts, value, "", ""),
                turf.overlayAfter().png());
        Overlay overlay = turf.overlayBefore();
        if (before != null && overlay != null) {
            photos.setRead(
                    before.id(),
                    new Photo.Read(true, "Before the turn; see the photo after it.", List.of(), "", "", ""),
                    overlay.png());
        }
    }

    private void refused(Photo photo, Seen.Refused seen) {
        String said = Lists.capital(seen.what()) + "; " + seen.advice() + ".";
        photos.setRead(photo.id(), new Photo.Read(false, said, List.of(), "", "", ""), null);
    }

    private static TurfAsked.ByHand byHand(@Nullable Photo photo) {
        return photo == null
                ? TurfAsked.ByHand.NOTHING
                : new TurfAsked.ByHand(spots(photo.corners()), spots(photo.border()));
    }

    private static List<Spot> spots(String text) {
        return Pointed.read(text).orElse(List.of());
    }

    private static Card card(Setup setup) {
        return PhotoSizes.card(setup).orElseThrow();
    }
}
