package footing.io.workbook;

import footing.io.sheet.SafeCell;
import java.time.LocalDate;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellRangeAddress;

/** One sheet, written cell by cell. Texts stay texts: they are never read as formulas. */
final class Tab {
    private static final int MOST_LETTERS = 2000;
    private static final int LETTER = 256;
    private static final short HEAD_HEIGHT = 900;

    private final Sheet sheet;
    private final Styles styles;
    private final Wraps wraps = new Wraps();

    Tab(Sheet sheet, Styles styles) {
        this.sheet = sheet;
        this.styles = styles;
    }

    String name() {
        return sheet.getSheetName();
    }

    private Cell cell(int row, int column) {
        Row there = sheet.getRow(row);
        Row of = there == null ? sheet.createRow(row) : there;
        return of.createCell(column);
    }

    At at(int row, int column) {
        return At.cell(name(), row, column);
    }

    At text(int row, int column, String value, Look look) {
        Cell cell = cell(row, column);
        String shown = value.length() > MOST_LETTERS ? value.substring(0, MOST_LETTERS) + "\u2026" : value;
        cell.setCellValue(shown);
        cell.setCellStyle(SafeCell.looksLikeFormula(shown) ? styles.literal(look) : styles.of(look));
        return at(row, column);
    }

    /** A text that is broken into lines within its cell. */
    At wrapped(int row, int column, String value) {
        wraps.add(row, column, column, value);
        return text(row, column, value, Look.WRAPPED);
    }

    /** A remark over the sheet, broken into lines at the end of its columns. */
    void note(int row, int lastColumn, String value) {
        wraps.add(row, 0, lastColumn, value);
        text(row, 0, value, Look.NOTE);
    }

    /** The same, to be read first. */
    void lead(int row, int lastColumn, String value) {
        wraps.add(row, 0, lastColumn, value);
        text(row, 0, value, Look.LEAD);
    }

    /** Gives the rows the height that their texts take; once the widths of the columns are set. */
    void settle() {
        wraps.settle(sheet);
    }

    At text(int row, int column, String value) {
        return text(row, column, value, Look.TEXT);
    }

    At number(int row, int column, double value, Look look) {
        Cell cell = cell(row, column);
        cell.setCellValue(value);
        cell.setCellStyle(styles.of(look));
        return at(row, column);
    }

    At date(int row, int column, LocalDate value, Look look) {
        Cell cell = cell(row, column);
        cell.setCellValue(value);
        cell.setCellStyle(styles.of(look));
        return at(row, column);
    }

    /** A live formula, without the equals sign. */
    At formula(int row, int column, String formula, Look look) {
        Cell cell = cell(row, column);
        cell.setCellFormula(formula);
        cell.setCellStyle(styles.of(look));
        return at(row, column);
    }

    /** A formula that works on whole ranges at once and gives one value. */
    At array(int row, int column, String formula, Look look) {
        sheet.setArrayFormula(formula, new CellRangeAddress(row, row, column, column));
        sheet.getRow(row).getCell(column).setCellStyle(styles.of(look));
        return at(row, column);
    }

    /** A row of headings over numbers. */
    void heads(int row, int column, List<String> heads) {
        heads(row, column, 0, heads);
    }

    /** A row of headings, the first ones over texts, the others over numbers. */
    void heads(int row, int column, int texts, List<String> heads) {
        for (int i = 0; i < heads.size(); i++) {
            text(row, column + i, heads.get(i), i < texts ? Look.HEAD : Look.HEAD_RIGHT);
        }
        sheet.getRow(row).setHeight(HEAD_HEIGHT);
    }

    void widths(int from, int... letters) {
        for (int i = 0; i < letters.length; i++) {
            sheet.setColumnWidth(from + i, letters[i] * LETTER);
        }
    }

    /** Keeps the first rows and columns in sight, and repeats the rows on every printed page. */
    void freeze(int rows, int columns) {
        sheet.createFreezePane(columns, rows);
        sheet.setRepeatingRows(new CellRangeAddress(0, rows - 1, -1, -1));
    }

    /** Leaves all but the first rows and columns out of printing. */
    void printOnly(int rows, int columns) {
        sheet.getWorkbook().setPrintArea(sheet.getWorkbook().getSheetIndex(sheet), 0, columns - 1, 0, rows - 1);
    }

    /** Prints across, one page wide. */
    void print() {
        sheet.setFitToPage(true);
        PrintSetup print = sheet.getPrintSetup();
        print.setLandscape(true);
        print.setFitWidth((short) 1);
        print.setFitHeight((short) 0);
        sheet.getFooter().setLeft("&A");
        sheet.getFooter().setRight("&P / &N");
    }
}
