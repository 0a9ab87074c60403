package footing.cli.script;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** A copy of the scripts in a directory of its own, with a PATH that has basic tools but neither Java nor Maven. */
final class Sandbox {

    /** Surefire names the module's directory; the scripts are one above. */
    private static final Path REAL_ROOT = Path.of(System.getProperty("basedir", "cli"), "..");

    private static final List<String> SCRIPTS = List.of("footing", "check", "bin/tools.sh");
    private static final List<String> TOOLS = List.of(
            "bash cat cp cut dirname env find flock grep id ls mkdir mv readlink rm sed sha1sum sleep sort tail xargs"
                    .split(" "));

    final Path root;
    private final Path directory;
    private final Path tools;
    private final Map<String, String> environment = new HashMap<>();

    Sandbox(Path directory) throws IOException {
        this.directory = directory;
        root = Files.createDirectories(directory.resolve("a house"));
        tools = Files.createDirectories(directory.resolve("tools"));
        Files.createDirectories(root.resolve("bin"));
        for (var script : SCRIPTS) {
            Files.copy(REAL_ROOT.resolve(script), root.resolve(script));
        }
        for (var tool : TOOLS) {
            script("tools/" + tool, "exec " + onThePath(tool) + " \"$@\"");
        }
        set("PATH", tools.toString());
        set("SANDBOX", directory.toString());
        set("FOOTING_JVM_DIR", directory.resolve("jvm").toString());
    }

    private static Path onThePath(String tool) {
        return Arrays.stream(System.getenv("PATH").split(File.pathSeparator))
                .map(place -> Path.of(place, tool))
                .filter(Files::isExecutable)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("This test needs the tool " + tool));
    }

    void set(String variable, String value) {
        environment.put(variable, value);
    }

    /** Writes a file below the sandbox's directory. */
    void write(String place, String text) throws IOException {
        var file = directory.resolve(place);
        Files.createDirectories(Objects.requireNonNull(file.getParent()));
        Files.writeString(file, text);
    }

    /** Puts one of the pretending tools in a place below the sandbox's directory, instead of the real one. */
    void pretend(String tool, String place) throws IOException {
        var file = directory.resolve(place);
        Files.createDirectories(Objects.requireNonNull(file.getParent()));
        Files.deleteIfExists(file);
        try (var text = Objects.requireNonNull(Sandbox.class.getResourceAsStream(tool + ".sh"), tool)) {
            Files.copy(text, file);
        }
        makeExecutable(file);
    }

    /** Lays out a JDK, or without a compiler a JRE. */
    void java(String place, String version, boolean compiles) throws IOException {
        pretend("java", place + "/bin/java");
        if (compiles) {
            pretend("java", place + "/bin/javac");
        }
        write(place + "/release", "JAVA_VERSION=\"" + version + "\"\n");
    }

    /** Makes the scripts believe that this user runs them; 0 is root. */
    void user(int id) throws IOException {
        script("tools/id", "echo " + id);
    }

    private void script(String place, String command) throws IOException {
        write(place, "#!/bin/sh\n" + command + "\n");
        makeExecutable(directory.resolve(place));
    }

    private static void makeExecutable(Path file) throws IOException {
        if (!file.toFile().setExecutable(true)) {
            throw new IOException("can not be made executable: " + file);
        }
    }

    /** The lines that a pretending tool has left in a file of its own. */
    List<String> lines(String file) throws IOException {
        var path = directory.resolve(file);
        return Files.exists(path) ? Files.readAllLines(path) : List.of();
    }

    /** Starts a command in a directory without waiting for its end. */
    Run start(Path where, String... command) throws IOException {
        var out = Files.createTempFile(directory, "out", "");
        var err = Files.createTempFile(directory, "err", "");
        var builder = new ProcessBuilder(command)
                .directory(where.toFile())
                .redirectOutput(out.toFile())
                .redirectError(err.toFile());
        builder.environment().clear();
        builder.environment().putAll(environment);
        return new Run(builder.start(), out, err);
    }

    Outcome run(String... command) throws IOException, InterruptedException {
        return start(root, command).end();
    }

    /** A command on its way. */
    record Run(Process process, Path out, Path err) {
        Outcome end() throws IOException, InterruptedException {
            return new Outcome(process.waitFor(), Files.readString(out), Files.readString(err));
        }
    }

    /** What a command left. */
    record Outcome(int code, String out, String err) {}
}
