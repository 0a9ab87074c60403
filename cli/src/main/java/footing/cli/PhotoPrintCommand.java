package footing.cli;

import footing.cli.text.PhotoText;
import footing.io.answer.PhotoJson;
import footing.io.form.Quantity;
import footing.io.photo.Card;
import footing.io.photo.PrintAsked;
import footing.io.photo.PrintPhoto;
import footing.io.photo.PrintSeen;
import footing.io.photo.Seen;
import java.io.IOException;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Measures the print of a tire. */
@Command(
        name = "print",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        description = "Measures an inked or chalked print of a tire: area, length, width, shape.")
final class PhotoPrintCommand implements Callable<Integer> {
    private static final int FEWEST_BORDER = 12;

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "FILE", description = "The photo, JPEG or PNG.")
    private String file = "";

    @ArgGroup(multiplicity = "1")
    private Size size = new Size();

    /** One of the two. */
    static final class Size {
        @Option(
                names = "--sheet",
                paramLabel = "SIZE",
                description = "The print is on a sheet of this size: 11x8.5in, letter, tabloid, a4, a3.")
        private @Nullable String sheet;

        @Option(names = "--card", paramLabel = "SIZE", description = "A card of this size lies beside the print.")
        private @Nullable String card;
    }

    @Option(
            names = "--rolled",
            paramLabel = "SIDE",
            description = "The tire rolled along the sheet's long or short side (${DEFAULT-VALUE}).")
    private String rolled = "short";

    @Option(
            names = "--corners",
            paramLabel = "PLACES",
            description = "The four corners by hand: \"x,y x,y x,y x,y\", in pixels of the upright photo.")
    private @Nullable String corners;

    @Option(names = "--border", paramLabel = "PLACES", description = "The print's border by hand, 12 places or more.")
    private @Nullable String border;

    @Option(
            names = "--overlay",
            paramLabel = "PLACE",
            description = "The file or the folder where the picture with the border goes; beside the photo if not"
                    + " given.")
    private @Nullable String overlay;

    @Option(names = "--at-load", paramLabel = "MASS", description = "The load on the wheel: \"480 lb\".")
    private @Nullable String load;

    @Option(names = "--at-pressure", paramLabel = "PRESSURE", description = "The tire's pressure: \"12 psi\".")
    private @Nullable String pressure;

    @Option(names = "--si", description = "SI units.")
    private boolean metric;

    @Option(names = "--json", description = "Print one JSON document, footing-photo/1, and nothing else.")
    private boolean json;

    private final Terminal terminal;

    PhotoPrintCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws BadInput, IOException {
        String drawn = PhotoArguments.overlay(terminal, overlay, file);
        PrintAsked asked = asked();
        PhotoText.Taken taken = new PhotoText.Taken(
                metric,
                PhotoArguments.quantity("--at-load", load, Quantity.MASS),
                PhotoArguments.quantity("--at-pressure", pressure, Quantity.PRESSURE));
        Seen seen = PrintPhoto.read(PhotoArguments.file(terminal, file), asked);
        if (seen instanceof Seen.Refused r) {
            throw new BadInput(file + ": " + r.what() + "\n   try: " + r.advice());
        }
        PrintSeen print = (PrintSeen) seen;
        PhotoArguments.write(terminal, drawn, print.overlay().png());
        var out = spec.commandLine().getOut();
        if (json) {
            PhotoJson.write(print, drawn, out);
        } else {
            out.print(PhotoText.of(print, drawn, taken, terminal.letters()));
        }
        out.flush();
        return 0;
    }

    private PrintAsked asked() throws BadInput {
        if (!rolled.equals("long") && !rolled.equals("short")) {
            throw new BadInput("--rolled '" + rolled + "': long or short would fit");
        }
        Card card = size.sheet != null
                ? PhotoArguments.card("--sheet", size.sheet, Card.Place.UNDER)
                : PhotoArguments.card("--card", size.card == null ? "" : size.card, Card.Place.BESIDE);
        return new PrintAsked(
                card,
                rolled.equals("long") ? PrintAsked.Rolling.LONG_SIDE : PrintAsked.Rolling.SHORT_SIDE,
                PhotoArguments.corners("--corners", corners),
                PhotoArguments.border("--border", border, FEWEST_BORDER));
    }
}
