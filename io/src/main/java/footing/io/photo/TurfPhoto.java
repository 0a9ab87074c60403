package footing.io.photo;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Measures torn turf: the share of bare soil in the ring a wheel swept, after the turn and before it, by the green of
 * each pixel. One level parts soil from turf in both photos.
 */
public final class TurfPhoto {
    /** Pixels this near the level may be either. */
    private static final double UNSURE = 0.02;

    private static final double MOST_NEAR = 0.15;
    private static final double DARK = 25;
    private static final double UNLIKE = 2.5;
    private static final double HEALED = 0.05;

    private TurfPhoto() {}

    /**
     * Reads one or two JPEG or PNG files; gives a {@link TurfSeen} or {@link Seen.Refused}.
     *
     * @param before null without one
     */
    public static Seen read(byte @Nullable [] before, byte[] after, TurfAsked asked) {
        Decoded second = PictureFile.decode(after);
        if (second instanceof Decoded.Unreadable u) {
            return PrintPhoto.refused(u);
        }
        Decoded first = before == null ? null : PictureFile.decode(before);
        if (first instanceof Decoded.Unreadable u) {
            return new Seen.Refused("of the photo before the turn, " + u.what(), u.advice());
        }
        return seen(
                first == null ? null : ((Decoded.Opened) first).picture(), ((Decoded.Opened) second).picture(), asked);
    }

    private static TurfSeen seen(@Nullable Picture before, Picture after, TurfAsked asked) {
        List<Doubt> doubts = new ArrayList<>();
        Overlay overlayAfter = Overlay.of(after);
        Overlay overlayBefore = before == null ? null : Overlay.of(before);
        TurfView second = TurfView.of(after, asked, asked.after(), overlayAfter, doubts);
        TurfView first = before == null || overlayBefore == null
                ? null
                : TurfView.of(before, asked, asked.before(), overlayBefore, doubts);
        if (second == null || (before != null && first == null)) {
            doubts.add(Doubt.NO_CARD);
            return new TurfSeen(
                    overlayBefore == null ? null : half(first, null, overlayBefore),
                    half(second, null, overlayAfter),
                    null,
                    doubts);
        }
        double level = asked.level() == null ? level(first, second) : asked.level();
        TurfView.Bare bareAfter = second.bare(level, UNSURE);
        TurfView.Bare bareBefore = first == null ? null : first.bare(level, UNSURE);
        judge(bareBefore, bareAfter, doubts);
        return new TurfSeen(
                overlayBefore == null ? null : half(first, bareBefore, overlayBefore),
                half(second, bareAfter, overlayAfter),
                level,
                doubts);
    }

    private static double level(@Nullable TurfView first, TurfView second) {
        int[] histogram = Greenness.histogram();
        second.count(histogram);
        if (first != null) {
            first.count(histogram);
        }
        return Greenness.level(histogram);
    }

    private static TurfSeen.Half half(@Nullable TurfView view, TurfView.@Nullable Bare bare, Overlay overlay) {
        List<Spot> corners = view == null ? List.of() : view.corners();
        return new TurfSeen.Half(bare == null ? null : Double.valueOf(bare.share()), corners, overlay);
    }

    private static void judge(TurfView.@Nullable Bare before, TurfView.Bare after, List<Doubt> doubts) {
        double near = before == null ? after.near() : Math.max(before.near(), after.near());
        double dark = before == null ? after.brightness() : Math.min(before.brightness(), after.brightness());
        if (!(near <= MOST_NEAR && dark >= DARK)) {
            doubts.add(Doubt.BLEND);
        }
        if (before != null) {
            double ratio = before.brightness() / after.brightness();
            if (!(ratio < UNLIKE && 1 / ratio < UNLIKE && after.share() >= before.share() - HEALED)) {
                doubts.add(Doubt.UNLIKE);
            }
        }
    }
}
