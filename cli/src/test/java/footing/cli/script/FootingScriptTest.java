package footing.cli.script;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FootingScriptTest {

    private static final String SOURCE = "a house/core/src/main/Some Source.java";

    @TempDir
    Path directory;

    private Sandbox sandbox;

    @BeforeEach
    void layOut() throws IOException {
        sandbox = new Sandbox(directory);
        sandbox.java("jvm/java-17", "17.0.15", true);
        sandbox.pretend("mvn", "tools/mvn");
        sandbox.write("a house/.mvn/jvm.config", "");
        sandbox.write("a house/pom.xml", "<project/>");
        for (var module : List.of("core", "io", "web", "cli")) {
            sandbox.write("a house/" + module + "/pom.xml", "<project/>");
            sandbox.write("a house/" + module + "/src/main/A.java", "class A {}");
        }
    }

    @Test
    void start_firstAndSecond_buildsOnceAndSaysSo() throws Exception {
        var first = sandbox.run("./footing");
        var second = sandbox.run("./footing");
        assertThat(first.err()).isEqualTo("footing: building, as the sources are new or have changed ...\n");
        assertThat(second.err()).isEmpty();
        assertThat(first.out()).startsWith("in ").contains("<footing.cli.Main>");
        assertThat(second.out()).startsWith("in ").contains("<footing.cli.Main>");
        assertThat(sandbox.lines("builds")).hasSize(1);
        assertThat(sandbox.lines("dumps")).hasSize(1);
    }

    @Test
    void build_asCalled_neverInstalls() throws Exception {
        sandbox.run("./footing");
        assertThat(sandbox.lines("builds"))
                .first()
                .asString()
                .contains(" package")
                .doesNotContain("install");
    }

    @Test
    void starts_twoAtOnce_buildOnceAndBothRun() throws Exception {
        var one = sandbox.start(sandbox.root, "./footing", "one");
        var two = sandbox.start(sandbox.root, "./footing", "two");
        assertThat(one.end().out()).endsWith("<one>\n");
        assertThat(two.end().out()).endsWith("<two>\n");
        assertThat(sandbox.lines("builds")).hasSize(1);
        assertThat(sandbox.lines("dumps")).hasSize(1);
    }

    @Test
    void arguments_withSpacesAndSigns_arriveAsTheyAre() throws Exception {
        var outcome = sandbox.run("./footing", "a  b", "*", "", "$HOME", "-x=\"1\"");
        assertThat(outcome.out()).endsWith("<footing.cli.Main>\n<a  b>\n<*>\n<>\n<$HOME>\n<-x=\"1\">\n");
    }

    @Test
    void exitCode_ofTheProgram_isPassedOn() throws Exception {
        sandbox.set("STUB_EXIT", "7");
        assertThat(sandbox.run("./footing").code()).isEqualTo(7);
    }

    @Test
    void program_started_takesTheScriptsPlaceSoThatSignalsReachIt() throws Exception {
        var run = sandbox.start(sandbox.root, "./footing");
        assertThat(run.end().out()).contains("as process " + run.process().pid() + "\n");
    }

    @Test
    void directory_ofTheUser_isKeptThroughASymbolicLink() throws Exception {
        var elsewhere = Files.createDirectories(directory.resolve("else where"));
        Files.createSymbolicLink(elsewhere.resolve("link"), Path.of("../a house/footing"));
        assertThat(sandbox.start(elsewhere, "./link").end().out()).startsWith("in " + elsewhere + "\n");
        assertThat(sandbox.start(directory, "a house/footing").end().out()).startsWith("in " + directory + "\n");
        assertThat(sandbox.lines("builds")).hasSize(1);
    }

    @Test
    void source_addedAndTakenAway_isBuiltForButNotBuiltAgain() throws Exception {
        sandbox.run("./footing");
        sandbox.write(SOURCE, "class B {}");
        sandbox.run("./footing");
        assertThat(sandbox.lines("builds")).hasSize(2);
        Files.delete(directory.resolve(SOURCE));
        sandbox.run("./footing");
        assertThat(sandbox.lines("builds")).hasSize(2);
    }

    @Test
    void build_failing_showsItsEndAndTheNextStep() throws Exception {
        sandbox.set("STUB_MAVEN_FAILS", "yes");
        var outcome = sandbox.run("./footing");
        assertThat(outcome.code()).isEqualTo(1);
        assertThat(outcome.out()).isEmpty();
        assertThat(outcome.err()).contains("[ERROR] this source is broken", "build.log", "Then start again");
    }

    @Test
    void build_afterAFailedOne_isTriedAgain() throws Exception {
        sandbox.set("STUB_MAVEN_FAILS", "yes");
        sandbox.run("./footing");
        sandbox.set("STUB_MAVEN_FAILS", "");
        assertThat(sandbox.run("./footing").code()).isZero();
    }

    @Test
    void archive_thatCanNotBeMade_isDoneWithoutAndNotTriedAgain() throws Exception {
        sandbox.set("STUB_NO_ARCHIVE", "yes");
        sandbox.run("./footing");
        var second = sandbox.run("./footing");
        assertThat(second.code()).isZero();
        assertThat(second.out()).doesNotContain("SharedArchiveFile");
        assertThat(sandbox.lines("dumps")).hasSize(1);
    }

    @Test
    void serve_firstAndSecond_rehearsesOnceForAnArchiveOfItsOwn() throws Exception {
        var first = sandbox.run("./footing", "serve", "--port", "0");
        var second = sandbox.run("./footing", "serve");
        assertThat(first.err()).contains("preparing for quick starts");
        assertThat(second.err()).isEmpty();
        assertThat(second.out()).contains("/serve-17.0.15.jsa>").endsWith("<footing.cli.Main>\n<serve>\n");
        assertThat(sandbox.lines("rehearsals")).hasSize(1);
        assertThat(sandbox.run("./footing", "check").out()).contains("/java-17.0.15.jsa>");
    }

    @Test
    void serve_thatDoesNotComeUp_isDoneWithoutAnArchive() throws Exception {
        sandbox.set("STUB_NO_SERVER", "0");
        assertThat(sandbox.run("./footing", "serve").out()).doesNotContain("SharedArchiveFile");
        assertThat(sandbox.run("./footing", "serve").code()).isZero();
        assertThat(sandbox.lines("rehearsals")).hasSize(1);
    }

    @Test
    void serve_askedForHelp_needsNoRehearsal() throws Exception {
        sandbox.run("./footing", "serve", "--help");
        assertThat(sandbox.lines("rehearsals")).isEmpty();
    }

    @Test
    void archive_ofAnotherJava_isNotUsed() throws Exception {
        sandbox.run("./footing");
        sandbox.write("jvm/java-17/release", "JAVA_VERSION=\"17.0.16\"\n");
        assertThat(sandbox.run("./footing").out()).contains("java-17.0.16.jsa");
        assertThat(sandbox.lines("builds")).hasSize(1);
        assertThat(sandbox.lines("dumps")).hasSize(2);
    }

    @Test
    void javaFlags_ofTheUser_replaceOurs() throws Exception {
        assertThat(sandbox.run("./footing").out()).contains("<-XX:TieredStopAtLevel=1>");
        sandbox.set("FOOTING_JAVA_OPTS", "-Xmx1g -XX:+UseParallelGC");
        assertThat(sandbox.run("./footing").out())
                .contains("<-Xmx1g>\n<-XX:+UseParallelGC>\n")
                .contains("<-Xlog:all=error:stderr>")
                .doesNotContain("TieredStopAtLevel");
    }
}
