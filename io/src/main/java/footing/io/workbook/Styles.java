package footing.io.workbook;

import java.util.EnumMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.Font;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.IndexedColors;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.ss.usermodel.Workbook;

/** One cell style for each look, and each once more for texts that could be taken for a formula. */
final class Styles {
    private static final short TITLE_POINTS = 14;

    private final Workbook workbook;
    private final Map<Look, CellStyle> plain = new EnumMap<>(Look.class);
    private final Map<Look, CellStyle> literal = new EnumMap<>(Look.class);

    Styles(Workbook workbook) {
        this.workbook = workbook;
    }

    CellStyle of(Look look) {
        return plain.computeIfAbsent(look, this::build);
    }

    /** The same, marked as text even where the cell is edited. */
    CellStyle literal(Look look) {
        return literal.computeIfAbsent(look, l -> {
            CellStyle style = build(l);
            style.setQuotePrefixed(true);
            return style;
        });
    }

    private CellStyle build(Look look) {
        CellStyle style = workbook.createCellStyle();
        style.setDataFormat(workbook.createDataFormat().getFormat(look.format));
        style.setVerticalAlignment(VerticalAlignment.TOP);
        switch (look) {
            case TITLE -> style.setFont(font(true, TITLE_POINTS));
            case STRONG -> style.setFont(font(true, (short) 11));
            case LEAD -> {
                style.setFont(font(true, (short) 11));
                style.setWrapText(true);
            }
            case NOTE -> note(style);
            case HEAD -> head(style, HorizontalAlignment.LEFT);
            case HEAD_RIGHT -> head(style, HorizontalAlignment.RIGHT);
            case WRAPPED -> style.setWrapText(true);
            case MONEY_TOTAL -> {
                style.setFont(font(true, (short) 11));
                style.setBorderTop(BorderStyle.THIN);
            }
            default -> {}
        }
        if (look.yours()) {
            style.setFillForegroundColor(IndexedColors.LIGHT_YELLOW.getIndex());
            style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
            style.setBorderBottom(BorderStyle.HAIR);
        }
        return style;
    }

    private Font font(boolean bold, short points) {
        Font font = workbook.createFont();
        font.setBold(bold);
        font.setFontHeightInPoints(points);
        return font;
    }

    private void note(CellStyle style) {
        Font font = font(false, (short) 10);
        font.setItalic(true);
        style.setFont(font);
        style.setWrapText(true);
    }

    private void head(CellStyle style, HorizontalAlignment side) {
        style.setFont(font(true, (short) 10));
        style.setWrapText(true);
        style.setBorderBottom(BorderStyle.THIN);
        style.setAlignment(side);
        style.setVerticalAlignment(VerticalAlignment.BOTTOM);
    }
}
