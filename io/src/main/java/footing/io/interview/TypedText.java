package footing.io.interview;

import footing.core.fleet.SidewallSize;
import footing.io.form.DayText;
import footing.io.form.Node;
import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Reads what somebody typed, a little more leniently than a case file is read. */
final class TypedText {
    private static final Pattern NUMBER =
            Pattern.compile("(?:\\d{1,9}|\\d{1,3}(?:,\\d{3}){1,2})(?:\\.\\d{1,6})?|\\.\\d{1,6}");
    private static final Pattern CLOCK = Pattern.compile(
            "(?:([\\d.]{1,9}) ?(?:h|hr|hrs|hour|hours))?(?: |^)?(?:([\\d.]{1,9}) ?(?:m|min|mins|minute|minutes))?");
    private static final Set<String> CURRENCIES = Currency.getAvailableCurrencies().stream()
            .map(Currency::getCurrencyCode)
            .collect(Collectors.toSet());
    private static final String BELOW_ZERO = "is below zero, which makes no sense here";
    private static final int SURELY_MINUTES = 10;
    private static final BigDecimal SIXTY = new BigDecimal(60);

    private TypedText() {}

    static Read read(Shape shape, String typed) {
        return switch (shape.kind()) {
            case TEXT -> text(shape, typed);
            case NUMBER -> number(shape, typed, typed.strip());
            case MONEY -> number(shape, typed, typed.strip().replaceFirst("^\\$ ?", ""));
            case HOURS -> number(shape, typed, typed.strip().replaceFirst(" ?(?:h|hr|hrs|hours?)$", ""));
            case SHARE -> share(shape, typed);
            case DURATION -> duration(shape, typed);
            case CHOICE -> choice(shape, typed);
            case DATE -> date(typed);
            case SIZE -> size(typed);
            case CURRENCY -> currency(typed);
        };
    }

    private static Read text(Shape shape, String typed) {
        if (typed.codePoints().anyMatch(c -> c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE)) {
            return Read.wrong("a text with half a character in it; type it again");
        }
        return typed.length() > shape.most()
                ? Read.wrong("longer than " + Plain.number(shape.most()) + " characters; a few words would fit")
                : Read.fine(typed);
    }

    private static Read number(Shape shape, String typed, String digits) {
        if (!NUMBER.matcher(digits).matches()) {
            return wrong(typed, isBelowZero(digits) ? BELOW_ZERO : "is not a number", fits(shape));
        }
        return ranged(shape, typed, new BigDecimal(digits.replace(",", "")), "");
    }

    private static boolean isBelowZero(String digits) {
        return digits.matches("[-\u2212].+")
                && NUMBER.matcher(digits.substring(1).strip()).matches();
    }

    private static Read share(Shape shape, String typed) {
        String digits = typed.strip().replaceFirst(" ?%$", "");
        if (!NUMBER.matcher(digits).matches()) {
            return wrong(typed, isBelowZero(digits) ? BELOW_ZERO : "is not a share", fits(shape));
        }
        BigDecimal value = new BigDecimal(digits.replace(",", ""));
        boolean bare = digits.equals(typed.strip());
        if (bare && value.signum() > 0 && value.compareTo(BigDecimal.ONE) < 0) {
            return wrong(typed, "could be a fraction or percent", "try: " + Plain.share(value.movePointRight(2)));
        }
        return ranged(shape, typed, value, " %");
    }

    /** A number without its unit is in minutes where nobody would wait so many hours. */
    private static Read duration(Shape shape, String typed) {
        String text = typed.strip().toLowerCase(Locale.ROOT);
        if (NUMBER.matcher(text).matches()) {
            BigDecimal bare = new BigDecimal(text.replace(",", ""));
            return bare.intValue() >= SURELY_MINUTES
                    ? duration(shape, bare.toPlainString() + " min")
                    : wrong(typed, "could be minutes or hours", "write " + text + " min or " + text + " h");
        }
        Matcher m = CLOCK.matcher(text);
        boolean some = m.matches() && (m.group(1) != null || m.group(2) != null);
        boolean numbers = some && isNumber(m.group(1)) && isNumber(m.group(2));
        if (!numbers) {
            boolean below = isBelowZero(text.replaceFirst(" ?[a-z]+$", ""));
            return wrong(typed, below ? BELOW_ZERO : "is not a time with its unit", fits(shape));
        }
        BigDecimal minutes = part(m.group(1)).multiply(SIXTY).add(part(m.group(2)));
        Read read = ranged(shape, typed, minutes, " min");
        return read.isFine() ? Read.fine(Plain.minutes(minutes), minutes) : read;
    }

    private static boolean isNumber(@org.jspecify.annotations.Nullable String digits) {
        return digits == null || NUMBER.matcher(digits).matches();
    }

    private static BigDecimal part(@org.jspecify.annotations.Nullable String digits) {
        return digits == null ? BigDecimal.ZERO : new BigDecimal(digits);
    }

    private static Read ranged(Shape shape, String typed, BigDecimal value, String unit) {
        double x = value.doubleValue();
        if (!(x >= shape.least() && x <= shape.most())) {
            return wrong(typed, "is outside what makes sense here", fits(shape));
        }
        if (shape.whole() && x != Math.rint(x)) {
            return wrong(typed, "is not a whole number", fits(shape));
        }
        return Read.fine(Plain.number(value) + unit, value);
    }

    private static Read choice(Shape shape, String typed) {
        String said = typed.strip().toLowerCase(Locale.ROOT);
        List<Choice> choices = shape.choices();
        for (int i = 0; i < choices.size(); i++) {
            if (said.equals(choices.get(i).value()) || said.equals(Integer.toString(i + 1))) {
                return Read.fine(choices.get(i).value());
            }
        }
        return choices.stream()
                .filter(c -> isAsShown(c, said))
                .findFirst()
                .map(c -> Read.fine(c.value()))
                .orElseGet(() -> wrong(typed, "is none of the choices", fits(shape)));
    }

    /** The words of a choice, whole or up to their comma; a hyphen may be a blank. */
    private static boolean isAsShown(Choice choice, String said) {
        String plain = loose(said);
        String words = choice.words().toLowerCase(Locale.ROOT);
        return plain.equals(loose(words)) || plain.equals(loose(words.split(",", 2)[0]));
    }

    private static String loose(String words) {
        return words.replaceAll("[-\\s]+", " ").strip();
    }

    private static Read date(String typed) {
        String text = typed.strip();
        boolean leap = text.matches("(?i)0?2[-/]29|feb\\w*\\.? 29|29 feb\\w*\\.?");
        return DayText.of(text)
                .map(day -> Read.fine(DayText.written(day)))
                .orElseGet(() -> leap
                        ? wrong(typed, "is not a day of every year", "try: 02-28 or 03-01")
                        : wrong(typed, "is not a day of the year", "month and day fit, such as 04-05 or April 5"));
    }

    private static Read size(String typed) {
        return SidewallSize.of(typed)
                .map(s -> Read.fine(Plain.number(s.diameterInches()) + "x" + Plain.number(s.widthInches()) + "-"
                        + Plain.number(s.rimInches())))
                .orElseGet(() ->
                        wrong(typed, "is not a size", "diameter x width - rim fits, as on the sidewall: 24x12-12"));
    }

    private static Read currency(String typed) {
        String code = typed.strip().toUpperCase(Locale.ROOT);
        return CURRENCIES.contains(code)
                ? Read.fine(code)
                : wrong(typed, "is not a currency", "a code fits, such as USD, CAD or EUR");
    }

    private static Read wrong(String typed, String fault, String fits) {
        return Read.wrong("'" + Node.shown(typed) + "' " + fault + "; " + fits);
    }

    private static String fits(Shape shape) {
        String least = Plain.number(shape.least());
        String most = Plain.number(shape.most());
        return switch (shape.kind()) {
            case NUMBER -> (shape.whole() ? "a whole number" : "a number") + " from " + least + " to " + most + " fits";
            case MONEY -> "an amount from " + least + " to " + most + " fits, such as 20 or 19.50";
            case HOURS -> "hours from " + least + " to " + most + " fit";
            case SHARE -> "percent from 0 % to " + most + " % fit, such as 15 %";
            case DURATION -> "minutes or hours fit, such as 25 min, 1.5 h or 1 h 45 min, up to 100 h";
            case CHOICE ->
                "choose " + shape.choices().stream().map(Choice::value).collect(Collectors.joining(", "));
            case TEXT, DATE, SIZE, CURRENCY -> "";
        };
    }
}
