package footing.core.specimen;

import footing.io.specimen.Shelf;
import java.io.File;
import java.nio.file.Files;
import java.util.concurrent.Executors;
import java.util.concurrent.ForkJoinPool;
import java.util.logging.Logger;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;

/** Leans on all that core must not. */
public final class Impure {
    @Nullable
    Shelf shelf;

    boolean file() {
        return Files.exists(new File("case.yaml").toPath());
    }

    CommandLine framework() {
        Logger.getLogger("core").info("called");
        return new CommandLine(this);
    }

    void threads() {
        new Thread(this::file).start();
        Executors.newCachedThreadPool().shutdown();
        ForkJoinPool.commonPool().shutdown();
    }

    int system() {
        System.out.println(System.getenv("HOME"));
        return Runtime.getRuntime().availableProcessors();
    }
}
