package footing.io.records;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.charset.StandardCharsets;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.commons.compress.archivers.zip.ZipArchiveInputStream;
import org.apache.poi.openxml4j.exceptions.OpenXML4JException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.usermodel.RichTextString;
import org.apache.poi.util.XMLHelper;
import org.apache.poi.xssf.eventusermodel.ReadOnlySharedStringsTable;
import org.apache.poi.xssf.eventusermodel.XSSFReader;
import org.apache.poi.xssf.eventusermodel.XSSFSheetXMLHandler;
import org.apache.poi.xssf.usermodel.XSSFComment;
import org.jspecify.annotations.Nullable;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.XMLReader;

/**
 * The first sheet of an XLSX workbook, streamed: a hundred thousand rows never stand in memory as a workbook. A cell
 * with a date format is a date, whatever the format shows.
 */
final class XlsxSheet {
    private static final Pattern FROM_1904 = Pattern.compile("date1904\\s*=\\s*[\"'](1|true|on)[\"']");

    private static final String SAVE_ANEW = "save it anew as .xlsx, or as .csv";
    private static final long MOST_UNPACKED = 200_000_000;
    /** Cells farther right are put here, so that a cell at the edge of a sheet doesn't make ten thousand empty ones. */
    private static final int MOST_COLUMNS = 500;
    /** The longest text a workbook may hold in a cell. */
    private static final int LONGEST = 32_767;

    private XlsxSheet() {}

    static Table read(byte[] bytes) throws Table.Unreadable {
        checkUnpacked(bytes);
        try (OPCPackage file = OPCPackage.open(new ByteArrayInputStream(bytes))) {
            return read(file);
        } catch (TooManyRows e) {
            throw RecordsFile.tooManyRows();
        } catch (IOException
                | OpenXML4JException
                | SAXException
                | ParserConfigurationException
                // A broken workbook makes POI throw whatever its parts ran into.
                | RuntimeException e) {
            throw new Table.Unreadable("not a workbook that can be read", SAVE_ANEW);
        }
    }

    /** A small file may unpack to far more than memory holds, so it is unpacked once without keeping anything. */
    private static void checkUnpacked(byte[] bytes) throws Table.Unreadable {
        long unpacked = 0;
        byte[] some = new byte[1 << 16];
        try (ZipArchiveInputStream zip = new ZipArchiveInputStream(new ByteArrayInputStream(bytes))) {
            while (zip.getNextEntry() != null) {
                for (int n = zip.read(some); n >= 0; n = zip.read(some)) {
                    unpacked += n;
                    if (unpacked > MOST_UNPACKED) {
                        throw new Table.Unreadable(
                                "unpacks to more than " + MOST_UNPACKED / 1_000_000 + " MB",
                                "split it by season, or save it as .csv");
                    }
                }
            }
        } catch (IOException | RuntimeException e) {
            throw new Table.Unreadable("not a workbook that can be read", SAVE_ANEW);
        }
    }

    private static Table read(OPCPackage file)
            throws IOException, OpenXML4JException, SAXException, ParserConfigurationException {
        XSSFReader reader = new XSSFReader(file);
        Rows rows = new Rows();
        List<String> notes = new ArrayList<>();
        XSSFReader.SheetIterator sheets = (XSSFReader.SheetIterator) reader.getSheetsData();
        while (sheets.hasNext()) {
            try (InputStream sheet = sheets.next()) {
                if (rows.isRead) {
                    notes.add("sheet '" + sheets.getSheetName() + "' is not read, only the first one is");
                    continue;
                }
                XMLReader xml = XMLHelper.newXMLReader();
                xml.setContentHandler(new XSSFSheetXMLHandler(
                        reader.getStylesTable(),
                        null,
                        new Strings(file),
                        rows,
                        new IsoFormatter(from1904(reader)),
                        false));
                xml.parse(new InputSource(sheet));
                rows.isRead = true;
            }
        }
        return new Table(rows.rows, notes);
    }

    private static boolean from1904(XSSFReader reader) throws IOException, OpenXML4JException {
        try (InputStream book = reader.getWorkbookData()) {
            return FROM_1904
                    .matcher(new String(book.readNBytes(100_000), StandardCharsets.UTF_8))
                    .find();
        }
    }

    /** The workbook's texts; making one anew for each cell that holds it would take half of the time. */
    private static final class Strings extends ReadOnlySharedStringsTable {
        private static final int KEPT = 10_000;

        private final Map<Integer, RichTextString> kept = new HashMap<>();

        Strings(OPCPackage file) throws IOException, SAXException {
            super(file);
        }

        @Override
        public RichTextString getItemAt(int index) {
            if (kept.size() > KEPT) {
                kept.clear();
            }
            return kept.computeIfAbsent(index, super::getItemAt);
        }
    }

    /** Dates in ISO, other numbers as they are, not as they are shown. */
    private static final class IsoFormatter extends DataFormatter {
        private final boolean from1904;

        IsoFormatter(boolean from1904) {
            super(Locale.ROOT);
            this.from1904 = from1904;
        }

        @Override
        public String formatRawCellContents(double value, int index, String format) {
            if (DateUtil.isADateFormat(index, format) && DateUtil.isValidExcelDate(value)) {
                var at = DateUtil.getLocalDateTime(value, from1904);
                return at.toLocalTime().equals(LocalTime.MIDNIGHT)
                        ? at.toLocalDate().toString()
                        : at.toString();
            }
            if (!(Math.abs(value) < Double.POSITIVE_INFINITY)) {
                return Double.toString(value);
            }
            if (value == Math.rint(value) && Math.abs(value) < 1e15) {
                return Long.toString((long) value);
            }
            return new BigDecimal(value)
                    .round(new MathContext(15))
                    .stripTrailingZeros()
                    .toPlainString();
        }
    }

    private static final class Rows implements XSSFSheetXMLHandler.SheetContentsHandler {
        final List<Table.Row> rows = new ArrayList<>();
        boolean isRead;
        private List<String> cells = new ArrayList<>();

        @Override
        public void startRow(int row) {
            cells = new ArrayList<>();
        }

        @Override
        public void endRow(int row) {
            Table.Row read = new Table.Row(row + 1, cells);
            if (!read.isEmpty()) {
                rows.add(read);
            }
            if (rows.size() > RecordsFile.MOST_ROWS + 1) {
                throw new TooManyRows();
            }
        }

        @Override
        public void cell(@Nullable String reference, @Nullable String text, @Nullable XSSFComment comment) {
            int column = Math.min(reference == null ? cells.size() : column(reference), MOST_COLUMNS);
            while (cells.size() <= column) {
                cells.add("");
            }
            String whole = text == null ? "" : text;
            String kept = whole.length() > LONGEST ? whole.substring(0, LONGEST) : whole;
            // Two cells at one place are no table; neither is lost.
            String there = cells.get(column);
            cells.set(column, there.isEmpty() || there.length() > LONGEST ? kept : there + " " + kept);
        }
    }

    /** The column of a cell such as AB12, from 0: letters as digits of base 26; at most one beyond those kept. */
    private static int column(String reference) {
        int column = 0;
        for (int i = 0; i < reference.length() && column <= MOST_COLUMNS; i++) {
            char c = Character.toUpperCase(reference.charAt(i));
            if (c < 'A' || c > 'Z') {
                break;
            }
            column = 26 * column + c - 'A' + 1;
        }
        return Math.max(column - 1, 0);
    }

    /** Stops the reading where nobody will look at the rest. */
    private static final class TooManyRows extends RuntimeException {
        private static final long serialVersionUID = 1;
    }
}
