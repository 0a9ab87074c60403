package footing.cli;

import footing.io.trial.TrialFile;
import footing.io.trial.TrialQuote;
import footing.io.trial.TrialReading;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The invented trial day that comes with the program. */
final class TrialDay {
    static final String FOLDER = "trial-day";

    private static final List<String> TRIALS = List.of("pull.yaml", "ride.yaml", "opposed.yaml");
    private static final List<String> OTHERS = List.of(
            "pivot.csv",
            "prints.yaml",
            "logged-pull.yaml",
            "logs/pull-1.csv",
            "logs/pull-2.csv",
            "logs/pull-3.csv",
            "logs/pull-4.csv",
            "logs/pull-5.csv",
            "logs/pull-6.csv",
            "photos/print.jpg",
            "photos/turn-before.jpg",
            "photos/turn-after.jpg");

    private TrialDay() {}

    /** Leaves the day's files in a folder of its own; gives the verdicts to quote. */
    static List<TrialQuote> leave(Path in) throws IOException {
        Path folder = in.resolve(FOLDER);
        List<String> all = new ArrayList<>(TRIALS);
        all.addAll(OTHERS);
        for (String name : all) {
            Path file = folder.resolve(name);
            Path holder = file.getParent();
            Files.createDirectories(holder == null ? folder : holder);
            Files.write(file, bytes(name));
        }
        List<TrialQuote> quotes = new ArrayList<>();
        for (String name : TRIALS) {
            if (!(TrialFile.read(folder.resolve(name)) instanceof TrialReading.Accepted read)) {
                throw new IllegalStateException("the example's trial " + name + " is broken in this build");
            }
            quotes.add(TrialQuote.of(read.stated()));
        }
        return quotes;
    }

    private static byte[] bytes(String name) throws IOException {
        try (InputStream in = TrialDay.class.getResourceAsStream(FOLDER + "/" + name)) {
            if (in == null) {
                throw new IllegalStateException("the example's " + name + " is missing from this build");
            }
            return in.readAllBytes();
        }
    }
}
