package footing.io.words;

import footing.core.fitting.Aspect;
import footing.core.fitting.Finding;
import footing.core.fitting.Fit;
import footing.core.fitting.Fits;
import footing.core.fitting.Settle;
import footing.core.fleet.Position;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * What is said of a fit: each test in a line, and what is left to find out.
 *
 * @param si how quantities are shown
 */
public record FitWords(boolean si) {
    /** What came of it, in a word or three. */
    public static String verdict(Fits verdict) {
        return switch (verdict) {
            case FITS -> "fits";
            case CHECK -> "check";
            case DOES_NOT_FIT -> "does not fit";
        };
    }

    /** 'drive wheels: bolt holes'. */
    public static String subject(Finding finding) {
        Position position = finding.position();
        String whose = position == null ? "" : position == Position.DRIVE ? "drive: " : "caster: ";
        return whose + aspect(finding.aspect());
    }

    public static String aspect(Aspect aspect) {
        return switch (aspect) {
            case BOLTS -> "bolt holes";
            case CIRCLE -> "bolt circle";
            case SEAT -> "seat of the lug nuts";
            case AXLE -> "bore for the axle bolt";
            case HUB_LENGTH -> "hub length";
            case ROOM -> "gap left around it";
            case LOAD -> "load";
            case SPEED -> "speed";
            case GATE -> "width at the gate";
            case TRAILER -> "width on the trailer";
            case CATCHER -> "gap left to the catcher";
            case SULKY -> "gap left to the sulky";
        };
    }

    /** The two numbers, where there are two. */
    public String numbers(Finding finding) {
        if (finding.why() == Finding.Why.AS_CARRIED) {
            return "the wheel it has now";
        }
        String have = shown(finding.aspect(), finding.have());
        String need = shown(finding.aspect(), finding.need());
        return switch (finding.aspect()) {
            case BOLTS, CIRCLE, AXLE, HUB_LENGTH -> have + ", machine " + need;
            case SEAT -> seats(finding);
            case ROOM, CATCHER, SULKY -> have + ", usual " + need + " or more";
            case LOAD, SPEED -> "rated " + have + ", needs " + need;
            case GATE, TRAILER -> have + ", over the tires " + need;
        };
    }

    private static String seats(Finding finding) {
        return switch (finding.verdict()) {
            case FITS -> "alike";
            case CHECK -> "?";
            case DOES_NOT_FIT -> "not alike: seats are never mixed";
        };
    }

    private String shown(Aspect aspect, OptionalDouble x) {
        return x.isPresent() ? new Quantities(si).value(aspect.counts(), x.getAsDouble()) : "?";
    }

    /** What there is to spare; empty where two numbers only have to be alike. */
    public String margin(Finding finding) {
        boolean counts = switch (finding.aspect()) {
            case ROOM, CATCHER, SULKY, LOAD, SPEED, GATE, TRAILER -> true;
            case BOLTS, CIRCLE, SEAT, AXLE, HUB_LENGTH -> false;
        };
        OptionalDouble margin = finding.margin();
        if (margin.isEmpty()) {
            return "";
        }
        String shown = new Quantities(si).value(finding.aspect().counts(), margin.getAsDouble());
        return counts && margin.getAsDouble() > 0 ? "+" + shown : shown;
    }

    /** 'drive: load: rated 400 lb, needs 515 lb'. */
    public String brief(Finding finding) {
        return subject(finding) + ": " + numbers(finding);
    }

    /** What one thing would settle a test: 'offset of drive24-airless (tire's middle outside its mounting face)'. */
    public static String settle(Settle settle) {
        String what = settle.measure() == null
                ? "look whether the nuts seat on a cone, a ball or flat"
                : "measure " + settle.measure().label();
        return what + " (" + settle.path() + ")";
    }

    /** One act for what is open at a wheel, or at the machine. */
    public static String act(Fit.Open open) {
        List<String> things = new ArrayList<>();
        open.findings().stream().map(f -> aspect(f.aspect())).distinct().forEach(things::add);
        String what = Lists.and(things) + whose(open);
        List<String> settles = open.findings().stream()
                .flatMap(f -> Stream.ofNullable(f.settle()))
                .distinct()
                .map(FitWords::settle)
                .toList();
        if (open.position() == null || settles.size() == 1) {
            return what + ": " + Lists.and(settles);
        }
        return open.group() == Aspect.Group.RATING
                ? what + ": read both on its sidewall or in its maker's table"
                : what + ": try one on and turn it once; 3/4 in free all round, 1 in to the deck (common practice, no"
                        + " source)";
    }

    private static String whose(Fit.Open open) {
        Position position = open.position();
        if (position == null) {
            return open.group() == Aspect.Group.RATING ? " of the wheels" : "";
        }
        return position == Position.DRIVE ? " of a drive wheel" : " of a caster";
    }
}
