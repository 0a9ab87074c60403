package footing.io.workbook;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.util.WorkbookUtil;

/** The workbook being written: its sheets, looks and names. */
final class Book {
    private static final int MOST_LETTERS = 31;

    private final Workbook workbook;
    private final Styles styles;
    private final Set<String> taken = new HashSet<>();
    private final List<Tab> tabs = new ArrayList<>();

    Book(Workbook workbook) {
        this.workbook = workbook;
        styles = new Styles(workbook);
    }

    /** A new sheet whose name begins with somebody's text and ends in ours; unique, and fit for a sheet. */
    Tab tab(String begins, String ends) {
        for (int n = 1; ; n++) {
            String end = (n == 1 ? "" : " " + n) + ends;
            String free = WorkbookUtil.createSafeSheetName(begins, '-');
            String name = free.substring(0, Math.min(free.length(), MOST_LETTERS - end.length())) + end;
            if (taken.add(name.toLowerCase(Locale.ROOT))) {
                return tab(name);
            }
        }
    }

    private Tab tab(String name) {
        Sheet sheet = workbook.createSheet(name);
        Tab tab = new Tab(sheet, styles);
        tab.print();
        tabs.add(tab);
        return tab;
    }

    /** Lays out what is on all sheets. */
    void settle() {
        tabs.forEach(Tab::settle);
    }

    /** Gives a cell a name that formulas of all sheets may use. */
    void name(String name, At cell) {
        Name given = workbook.createName();
        given.setNameName(name);
        given.setRefersToFormula(cell.toString());
    }
}
