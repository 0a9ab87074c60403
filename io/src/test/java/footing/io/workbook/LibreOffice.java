package footing.io.workbook;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Assumptions;

/** Opens workbooks in LibreOffice without a screen, which works all formulas out anew, and saves them again. */
final class LibreOffice {
    private static final String LEAVE_OUT = "FOOTING_NO_OFFICE";
    private static final int MINUTES = 15;

    private LibreOffice() {}

    private static Path program() {
        Optional<Path> found = Arrays.stream(System.getenv("PATH").split(File.pathSeparator))
                .flatMap(folder -> Stream.of("soffice", "libreoffice").map(n -> Path.of(folder, n)))
                .filter(Files::isExecutable)
                .findFirst();
        if (found.isEmpty()) {
            if (System.getenv(LEAVE_OUT) == null) {
                throw new IllegalStateException(
                        "No LibreOffice on the PATH. On Debian, as root: apt-get install libreoffice-calc. To do without its"
                                + " tests, set " + LEAVE_OUT + "=1.");
            }
            Assumptions.abort("LibreOffice is left out: " + LEAVE_OUT + " is set");
        }
        return found.orElseThrow();
    }

    /** The same workbooks as LibreOffice saves them, in a folder; in the order given. */
    static List<Path> recalculated(List<Path> books, Path folder) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                program().toString(),
                "--headless",
                "-env:UserInstallation=" + folder.resolve("profile").toUri(),
                "--convert-to",
                "xlsx",
                "--outdir",
                folder.toString()));
        books.forEach(b -> command.add(b.toString()));
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("said.txt").toFile())
                .start();
        if (!process.waitFor(MINUTES, TimeUnit.MINUTES)) {
            process.destroyForcibly();
            throw new IOException("LibreOffice did not come to an end");
        }
        return books.stream().map(b -> folder.resolve(b.getFileName())).toList();
    }

    /** One workbook as LibreOffice works it out. */
    static XSSFWorkbook recalculated(Path book, Path folder) throws IOException, InterruptedException {
        try (var in = Files.newInputStream(recalculated(List.of(book), folder).get(0))) {
            return new XSSFWorkbook(in);
        }
    }
}
