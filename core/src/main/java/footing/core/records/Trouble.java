package footing.core.records;

/** A row that can't be: where it stands, why it can't, and what would mend it where that is plain, else empty. */
public record Trouble(int line, String reason, String mend) {}
