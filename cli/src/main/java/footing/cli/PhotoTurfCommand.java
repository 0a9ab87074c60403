package footing.cli;

import footing.cli.text.PhotoText;
import footing.core.quantity.Length;
import footing.io.answer.PhotoJson;
import footing.io.photo.Card;
import footing.io.photo.Overlay;
import footing.io.photo.Seen;
import footing.io.photo.TurfAsked;
import footing.io.photo.TurfPhoto;
import footing.io.photo.TurfSeen;
import java.io.IOException;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Measures torn turf. */
@Command(
        name = "turf",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        description =
                "Measures torn turf in a frame of known size: the share of bare soil after a turn, less that before.")
final class PhotoTurfCommand implements Callable<Integer> {
    private static final int FEWEST_BORDER = 3;

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "AFTER", description = "The photo after the turn, JPEG or PNG.")
    private String after = "";

    @Option(names = "--before", paramLabel = "FILE", description = "The photo before the turn, the frame at its place.")
    private @Nullable String before;

    @Option(
            names = "--frame",
            required = true,
            paramLabel = "SIZE",
            description = "The frame's outer sides: 24x24in. What it encloses is judged, without its outermost eighth.")
    private String frame = "";

    @Option(
            names = "--ring",
            paramLabel = "R-R",
            description = "Only the ring between two radii about the frame's middle: \"2 in-9 in\".")
    private @Nullable String ring;

    @Option(names = "--corners", paramLabel = "PLACES", description = "The frame's corners after, by hand.")
    private @Nullable String corners;

    @Option(names = "--corners-before", paramLabel = "PLACES", description = "And before.")
    private @Nullable String cornersBefore;

    @Option(names = "--border", paramLabel = "PLACES", description = "The ground to be judged after, by hand.")
    private @Nullable String border;

    @Option(names = "--border-before", paramLabel = "PLACES", description = "And before.")
    private @Nullable String borderBefore;

    @Option(
            names = "--level",
            paramLabel = "GREEN",
            description =
                    "What parts soil from turf, by hand: raise the level told if soil was missed, lower it if turf"
                            + " was taken for soil.")
    private @Nullable Double level;

    @Option(
            names = "--overlay",
            paramLabel = "PLACE",
            description = "The file or the folder where the pictures with what was found go; beside the photos if not"
                    + " given. One before the turn gets -before added to a file's name.")
    private @Nullable String overlay;

    @Option(names = "--json", description = "Print one JSON document, footing-photo/1, and nothing else.")
    private boolean json;

    private final Terminal terminal;

    PhotoTurfCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws BadInput, IOException {
        TurfAsked asked = new TurfAsked(
                PhotoArguments.card("--frame", frame, Card.Place.UNDER),
                ring == null ? null : ring(ring),
                byHand("-before", cornersBefore, borderBefore),
                byHand("", corners, border),
                level());
        List<String> drawn = places();
        byte[] first = before == null ? null : PhotoArguments.file(terminal, before);
        Seen seen = TurfPhoto.read(first, PhotoArguments.file(terminal, after), asked);
        if (seen instanceof Seen.Refused r) {
            throw new BadInput(r.what() + "\n   try: " + r.advice());
        }
        TurfSeen turf = (TurfSeen) seen;
        write(turf, drawn);
        var out = spec.commandLine().getOut();
        if (json) {
            PhotoJson.write(turf, drawn, out);
        } else {
            out.print(PhotoText.of(turf, drawn, terminal.letters()));
        }
        out.flush();
        return 0;
    }

    private @Nullable Double level() throws BadInput {
        if (level != null && !TurfAsked.isLevel(level)) {
            throw new BadInput("--level " + level + ": a number from -0.5 to 1 would fit; found ones lie about 0.1");
        }
        return level;
    }

    /** Where the overlays go, that before the turn first. */
    private List<String> places() throws BadInput {
        String last = PhotoArguments.overlay(terminal, overlay, after);
        return before == null ? List.of(last) : List.of(PhotoArguments.overlay(terminal, overlay, before, last), last);
    }

    private void write(TurfSeen turf, List<String> places) throws BadInput, IOException {
        Overlay of = turf.overlayBefore();
        if (of != null) {
            PhotoArguments.write(terminal, places.get(0), of.png());
        }
        PhotoArguments.write(
                terminal, places.get(places.size() - 1), turf.overlayAfter().png());
    }

    private static TurfAsked.ByHand byHand(String which, @Nullable String corners, @Nullable String border)
            throws BadInput {
        return new TurfAsked.ByHand(
                PhotoArguments.corners("--corners" + which, corners),
                PhotoArguments.border("--border" + which, border, FEWEST_BORDER));
    }

    private static TurfAsked.Ring ring(String text) throws BadInput {
        String[] radii = text.split("-", -1);
        if (radii.length == 2) {
            Length inner = Lengths.read("--ring", radii[0]);
            Length outer = Lengths.read("--ring", radii[1]);
            if (inner.meters() >= 0 && outer.meters() > inner.meters() && Card.isUsable(outer)) {
                return new TurfAsked.Ring(inner, outer);
            }
        }
        throw new BadInput(
                "--ring '" + text + "': two radii would fit, the smaller first\n   try: --ring \"2 in-9 in\"");
    }
}
