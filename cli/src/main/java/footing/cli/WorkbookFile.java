package footing.cli;

import footing.core.answer.Answer;
import footing.core.answer.Watch;
import footing.core.answer.Workers;
import footing.io.workbook.CaseWorkbook;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;

/** Writes a workbook beside its place first, so that it is there as a whole or not at all. */
final class WorkbookFile {
    private WorkbookFile() {}

    /** False if it was stopped. */
    static boolean write(Answer answer, List<String> warnings, Workers workers, Watch watch, Path to)
            throws IOException {
        Path aside = to.resolveSibling("." + to.getFileName() + ".part");
        try {
            boolean written;
            try (OutputStream out = Files.newOutputStream(aside)) {
                written = CaseWorkbook.write(answer, warnings, workers, watch, out);
            }
            if (written) {
                Files.move(aside, to, StandardCopyOption.REPLACE_EXISTING);
            }
            return written;
        } finally {
            Files.deleteIfExists(aside);
        }
    }
}
