package footing.io.workbook;

/** How a cell looks: a number format and a manner. */
enum Look {
    TEXT("General"),
    TITLE("General"),
    HEAD("General"),
    /** A heading over numbers. */
    HEAD_RIGHT("General"),
    /** A text of more than one line. */
    WRAPPED("General"),
    NOTE("General"),
    STRONG("General"),
    /** A strong text of more than one line. */
    LEAD("General"),
    MONEY("#,##0.00"),
    MONEY_TOTAL("#,##0.00"),
    MONEY_YOURS("#,##0.00"),
    NUMBER("#,##0.0###"),
    NUMBER_YOURS("#,##0.0###"),
    SHARE("0.0#%"),
    SHARE_YOURS("0.0#%"),
    WHOLE("#,##0"),
    DAY("0.0"),
    FACTOR("0.000000"),
    DATE("yyyy-mm-dd"),
    MONTH("yyyy-mm"),
    YEAR("0");

    final String format;

    Look(String format) {
        this.format = format;
    }

    /** True where the reader may write. */
    boolean yours() {
        return this == MONEY_YOURS || this == NUMBER_YOURS || this == SHARE_YOURS;
    }
}
