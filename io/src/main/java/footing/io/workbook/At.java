package footing.io.workbook;

import org.apache.poi.ss.util.CellReference;

/** A cell or, with its last one, a range of a sheet; written into formulas of any sheet. */
record At(String sheet, int row, int column, int lastRow, int lastColumn) {
    static At cell(String sheet, int row, int column) {
        return new At(sheet, row, column, row, column);
    }

    /** The range from this cell to another of the same sheet. */
    At to(At last) {
        return new At(sheet, row, column, last.row, last.column);
    }

    /** As formulas of its own sheet write it: {@code $B$3} or {@code $B$3:$B$9}. */
    String local() {
        String first = new CellReference(row, column, true, true).formatAsString();
        return row == lastRow && column == lastColumn
                ? first
                : first + ":" + new CellReference(lastRow, lastColumn, true, true).formatAsString();
    }

    /** As formulas of any sheet write it. */
    @Override
    public String toString() {
        return "'" + sheet.replace("'", "''") + "'!" + local();
    }
}
