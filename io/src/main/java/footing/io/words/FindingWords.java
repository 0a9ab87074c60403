package footing.io.words;

import footing.core.signal.Finding;

/** What is remarkable about a log, in words. */
public final class FindingWords {
    private static final String[] CHANNELS = {"first", "second", "third"};

    private FindingWords() {}

    public static String of(Finding finding) {
        if (finding instanceof Finding.Resampled f) {
            return "its clock is unsteady (up to " + Shown.digits(f.largestStep())
                    + " times the usual step); resampled to " + Shown.digits(f.rate()) + " a second";
        }
        if (finding instanceof Finding.LowRate f) {
            return Shown.digits(f.rate()) + " samples a second: nothing above " + Shown.digits(f.highest())
                    + " Hz is counted, " + Figures.percent(f.missingOctaves())
                    + " of the octaves between 0.5 and 80 Hz";
        }
        if (finding instanceof Finding.Gaps f) {
            return Figures.counted(f.count(), "gap") + ", " + Shown.digits(f.seconds()) + " s in all; left out";
        }
        if (finding instanceof Finding.TooShortParts f) {
            return "parts between gaps too short to weigh, " + Shown.digits(f.seconds()) + " s in all; left out";
        }
        if (finding instanceof Finding.Clipped f) {
            return Figures.counted(f.samples(), "sample") + " of the " + CHANNELS[Math.min(f.channel(), 2)]
                    + " channel lie at the end of the instrument's range; the true value is larger";
        }
        if (finding instanceof Finding.NoSteadyPull f) {
            return "the pull ends " + Shown.digits(f.seconds()) + " s after the slip; it has a peak alone";
        }
        if (finding instanceof Finding.LooksLike f) {
            return "its values look like " + f.unit().written();
        }
        return "gravity is not in it, so that its unit could not be checked";
    }
}
