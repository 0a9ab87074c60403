package footing.io.interview;

/** How a field is typed and what it means. */
public enum FieldKind {
    /** Any text that isn't blank; kept to the letter. */
    TEXT,
    NUMBER,
    /** An amount in the case's currency. */
    MONEY,
    /** Hours of an hour meter, a season or a day. */
    HOURS,
    /** One of a few values, by its name or its place in the list. */
    CHOICE,
    /** Percent. */
    SHARE,
    /** A time with its unit; read in minutes. */
    DURATION,
    /** A day of every year, month first. */
    DATE,
    /** A tire's size as the sidewall has it. */
    SIZE,
    /** An ISO 4217 code. */
    CURRENCY
}
