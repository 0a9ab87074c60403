package footing.cli;

import footing.io.form.Quantity;
import footing.io.photo.Card;
import footing.io.photo.PhotoBytes;
import footing.io.photo.PrintAsked;
import footing.io.photo.SheetSize;
import footing.io.photo.Spot;
import footing.io.photo.Spots;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** What the photo commands are told: sizes, places in a picture, files. */
final class PhotoArguments {
    private static final Pattern AMOUNT = Pattern.compile(SheetSize.NUMBER + " ?([a-zA-Z]{1,3})");

    private PhotoArguments() {}

    static Card card(String option, String text, Card.Place place) throws BadInput {
        SheetSize size = SheetSize.read(text).orElse(null);
        if (size == null) {
            throw new BadInput(option + " '" + text.strip() + "': a size would fit, or letter, tabloid, a4, a3\n"
                    + "   try: " + option + " 11x8.5in");
        }
        if (!Card.isUsable(size.width()) || !Card.isUsable(size.height())) {
            throw new BadInput(option + " '" + text.strip() + "': sides from 2 cm to 5 m (0.8 in to 16 ft) would fit");
        }
        return new Card(size.width(), size.height(), place);
    }

    /** A quantity as written, once it is known to be one; dots for none. */
    static String quantity(String option, @Nullable String text, Quantity quantity) throws BadInput {
        if (text == null) {
            return "...";
        }
        Matcher m = AMOUNT.matcher(text.strip());
        if (!m.matches() || quantity.unit(m.group(2)).isEmpty()) {
            throw new BadInput(option + " '" + text.strip() + "': " + quantity.words()
                    + " with its unit would fit\n   try: " + option + " \"" + quantity.example() + "\"");
        }
        return m.group(1) + " " + m.group(2);
    }

    /** Places such as "10,20 30,40"; none if null. */
    static List<Spot> places(String option, @Nullable String text) throws BadInput {
        List<Spot> places = text == null ? List.of() : Spots.read(text);
        if (places == null) {
            throw new BadInput(option + ": places in pixels from the photo's upper left corner would fit, at most "
                    + Spots.MOST + "\n   try: " + option + " \"" + Spots.EXAMPLE + "\"");
        }
        return places;
    }

    static List<Spot> corners(String option, @Nullable String text) throws BadInput {
        List<Spot> corners = places(option, text);
        if (!corners.isEmpty() && !PrintAsked.areCorners(corners)) {
            throw new BadInput(option + ": four corners of the sheet, card or frame would fit, as \"x,y x,y x,y x,y\"");
        }
        return corners;
    }

    static List<Spot> border(String option, @Nullable String text, int fewest) throws BadInput {
        List<Spot> border = places(option, text);
        if (!border.isEmpty() && border.size() < fewest) {
            throw new BadInput(option + ": a border has at least " + fewest + " places, one after the other");
        }
        return border;
    }

    /** The whole file, or as much of it as tells that it is too large. */
    static byte[] file(Terminal terminal, String name) throws BadInput {
        Path path = PaperFile.path(terminal, name);
        try {
            return PhotoBytes.of(path);
        } catch (NoSuchFileException e) {
            throw new BadInput("there is no file " + name);
        } catch (IOException e) {
            throw new BadInput("can't read " + name + (Files.isDirectory(path) ? ": it is a folder" : ""));
        }
    }

    /** Where an overlay goes: as told, in the folder told, or beside the photo. Refuses to write over a photo. */
    static String overlay(Terminal terminal, @Nullable String told, String photo) throws BadInput {
        String usual = split(photo)[0] + "-overlay.png";
        String name = usual;
        if (told != null && Files.isDirectory(PaperFile.path(terminal, told))) {
            String last = usual.substring(slash(usual) + 1);
            name = told + (slash(told) == told.length() - 1 ? "" : "/") + last;
        } else if (told != null) {
            name = told;
        }
        if (PaperFile.path(terminal, name).equals(PaperFile.path(terminal, photo))) {
            throw new BadInput("the overlay would be written over the photo; name another file with --overlay");
        }
        return name;
    }

    /** Where the overlay of a second photo goes: as usual, or marked where one name is told for both. */
    static String overlay(Terminal terminal, @Nullable String told, String photo, String first) throws BadInput {
        String name = overlay(terminal, told, photo);
        String[] parts = split(first);
        return name.equals(first) ? overlay(terminal, parts[0] + "-before" + parts[1], photo) : name;
    }

    /** A name without its ending, and the ending. */
    private static String[] split(String name) {
        int dot = name.lastIndexOf('.');
        return dot > slash(name) + 1
                ? new String[] {name.substring(0, dot), name.substring(dot)}
                : new String[] {name, ""};
    }

    private static int slash(String name) {
        return Math.max(name.lastIndexOf('/'), name.lastIndexOf('\\'));
    }

    /** Writes an overlay. */
    static void write(Terminal terminal, String name, byte[] png) throws BadInput, IOException {
        Path path = PaperFile.path(terminal, name);
        Path folder = path.toAbsolutePath().getParent();
        if (Files.isDirectory(path) || folder == null || !Files.isDirectory(folder)) {
            throw new BadInput("can't write " + name + "; name a file in a folder that is there");
        }
        Files.write(path, png);
    }
}
