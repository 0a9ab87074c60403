package footing.core.records;

/** What a row of records tells. */
public enum Event {
    BEGIN,
    READING,
    FIT,
    OFF,
    FLAT,
    TREAD,
    BOUGHT,
    END
}
