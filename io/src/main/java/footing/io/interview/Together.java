package footing.io.interview;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** What is wrong only with several answers together; said at the one that was asked last. */
final class Together {
    private static final BigDecimal ALL = new BigDecimal(100);
    private static final double MOST_YEARS = 60;
    private static final double MOST_BILLING = 1e6;

    private final Given given;
    private final Map<String, String> faults = new LinkedHashMap<>();

    Together(Given given) {
        this.given = given;
    }

    Map<String, String> faults() {
        checkTrade();
        checkSeason();
        checkShares();
        checkBilling();
        return faults;
    }

    private void checkTrade() {
        BigDecimal now = given.number("hoursNow");
        BigDecimal rest = given.number("keepUntil").subtract(now);
        double season = given.number("hoursPerYear").doubleValue();
        if (rest.signum() <= 0) {
            String above = Plain.number(now);
            add("the meter already stands at " + above + "; a trade above " + above + " fits", "hoursNow", "keepUntil");
        } else if (rest.doubleValue() / season > MOST_YEARS) {
            String years = Plain.number(Math.floor(rest.doubleValue() / season));
            add(
                    "that would take " + years + " seasons; a sooner trade or more hours a season fit",
                    "hoursNow",
                    "hoursPerYear",
                    "keepUntil");
        }
    }

    private void checkSeason() {
        long days = SeasonDays.count(given);
        if (given.number("hoursPerYear").doubleValue() > 24.0 * days) {
            add(
                    "more hours than these " + days + " days have; a longer season or fewer hours fit",
                    "hoursPerYear",
                    "firstCut",
                    "lastCut");
        }
    }

    private void checkShares() {
        BigDecimal sum = WorkQuestions.SHARES.stream().map(given::number).reduce(BigDecimal.ZERO, BigDecimal::add);
        if (sum.compareTo(ALL) != 0) {
            BigDecimal off = ALL.subtract(sum);
            String what = off.signum() > 0
                    ? Plain.share(off) + " of the flats is missing"
                    : Plain.share(off.negate()) + " too much";
            add(
                    "the ways to mend a flat make " + Plain.share(sum) + "; " + what + ", 100 % fit",
                    WorkQuestions.SHARES.toArray(String[]::new));
        }
    }

    private void checkBilling() {
        if (CrewText.billing(given) > MOST_BILLING) {
            add("more than a crew-hour can bring; a smaller amount fits", "people", "charge", "day");
        }
    }

    private void add(String fault, String... ids) {
        Optional<String> last = Arrays.stream(ids).filter(given::isYours).reduce((a, b) -> b);
        faults.putIfAbsent(last.orElse(ids[ids.length - 1]), fault);
    }
}
