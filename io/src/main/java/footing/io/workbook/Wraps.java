package footing.io.workbook;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellRangeAddress;

/**
 * The texts of a sheet that may take more than one line. A file has no row heights by itself that fit its wrapped texts,
 * so they are reckoned once the widths of the columns are known.
 */
final class Wraps {
    /** Height of a line and the room around it, in points. */
    private static final float LINE = 15;

    private static final float ROOM = 2;

    /** How wide a letter of a text is, of the digit that a column's width is counted in. */
    private static final double OF_A_DIGIT = 0.95;

    private static final double LETTER = 256;

    private final List<Wrap> wraps = new ArrayList<>();

    private record Wrap(int row, int first, int last, String text) {}

    /** A text over some columns. */
    void add(int row, int first, int last, String text) {
        wraps.add(new Wrap(row, first, last, text));
    }

    void settle(Sheet sheet) {
        Map<Integer, Integer> lines = new HashMap<>();
        for (Wrap wrap : wraps) {
            if (wrap.last() > wrap.first()) {
                sheet.addMergedRegion(new CellRangeAddress(wrap.row(), wrap.row(), wrap.first(), wrap.last()));
            }
            lines.merge(wrap.row(), lines(sheet, wrap), Math::max);
        }
        lines.forEach((row, count) -> {
            Row there = sheet.getRow(row);
            there.setHeightInPoints(Math.max(there.getHeightInPoints(), count * LINE + ROOM));
        });
        wraps.clear();
    }

    private static int lines(Sheet sheet, Wrap wrap) {
        double letters = 0;
        for (int column = wrap.first(); column <= wrap.last(); column++) {
            letters += sheet.getColumnWidth(column) / LETTER;
        }
        return (int) Math.max(1, Math.ceil(wrap.text().length() * OF_A_DIGIT / letters));
    }
}
