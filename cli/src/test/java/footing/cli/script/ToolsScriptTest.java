package footing.cli.script;

import static org.assertj.core.api.Assertions.assertThat;

import footing.cli.script.Sandbox.Outcome;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the commands do where Java or Maven is missing. */
class ToolsScriptTest {

    @TempDir
    Path directory;

    private Sandbox sandbox;

    @BeforeEach
    void layOutPackages() throws IOException {
        sandbox = new Sandbox(directory);
        sandbox.user(1000);
        sandbox.java("packages/jdk", "17.0.15", true);
        sandbox.pretend("mvn", "packages/mvn");
        sandbox.write("jvm/unrelated/release", "");
    }

    private Outcome look(String function) throws IOException, InterruptedException {
        return sandbox.run("bash", "-c", "source bin/tools.sh; " + function + "; echo \"$java_home $mvn\"");
    }

    private void becomeRootOnDebian() throws IOException {
        sandbox.user(0);
        sandbox.pretend("apt-get", "tools/apt-get");
    }

    @Test
    void java_missing_saysHowToGetIt() throws Exception {
        sandbox.pretend("apt-get", "tools/apt-get");
        var outcome = look("need_java");
        assertThat(outcome.code()).isEqualTo(1);
        assertThat(outcome.err())
                .contains("Java 17 or newer is needed", "apt-get install openjdk-17-jdk-headless maven");
        assertThat(sandbox.lines("installs")).isEmpty();
    }

    @Test
    void bothCommands_withoutJava_saySo() throws Exception {
        assertThat(sandbox.run("./footing").err()).contains("footing: Java 17 or newer is needed");
        assertThat(sandbox.run("./check").err()).contains("check: The Java compiler (JDK) 17 or newer is needed");
    }

    @Test
    void everything_missingForRootOnDebian_isInstalledAloud() throws Exception {
        becomeRootOnDebian();
        var outcome = look("need_build_tools");
        assertThat(outcome.code()).isZero();
        assertThat(outcome.out()).contains("/jvm/java-17 ", "/tools/mvn");
        assertThat(outcome.err()).contains("installing it (apt-get install");
        assertThat(sandbox.lines("installs"))
                .startsWith(
                        "noninteractive -qq update",
                        "noninteractive -qq install -y --no-install-recommends openjdk-17-jdk-headless")
                .endsWith("noninteractive -qq install -y --no-install-recommends maven");
    }

    @Test
    void java17_unknownToANewerDebian_isReplacedByItsDefault() throws Exception {
        becomeRootOnDebian();
        sandbox.set("STUB_UNKNOWN_PACKAGE", "openjdk-17-jdk-headless");
        assertThat(look("need_java").code()).isZero();
        assertThat(sandbox.lines("installs")).last().asString().endsWith("default-jdk-headless");
    }

    @Test
    void installation_failing_stopsWithAWord() throws Exception {
        becomeRootOnDebian();
        sandbox.set("STUB_UNKNOWN_PACKAGE", "jdk-headless");
        var outcome = look("need_java");
        assertThat(outcome.code()).isEqualTo(1);
        assertThat(outcome.err()).contains("The installation failed");
    }

    @Test
    void java_ofAnOlderVersion_isNotTaken() throws Exception {
        sandbox.java("jvm/java-11", "11.0.20", true);
        sandbox.java("jvm/java-8", "1.8.0_392", true);
        assertThat(look("need_java").code()).isEqualTo(1);
    }

    @Test
    void java_newerBehindAnOlderJavaHome_isFound() throws Exception {
        sandbox.java("old", "11.0.20", true);
        sandbox.java("jvm/java-21", "21.0.5", true);
        sandbox.set("JAVA_HOME", directory.resolve("old").toString());
        assertThat(look("need_java").out()).contains("/jvm/java-21 ");
    }

    @Test
    void java_withoutACompiler_runsButDoesNotBuild() throws Exception {
        sandbox.java("jvm/java-17-jre", "17.0.15", false);
        sandbox.pretend("mvn", "tools/mvn");
        assertThat(look("need_java").code()).isZero();
        assertThat(look("need_build_tools").err()).contains("The Java compiler (JDK) 17 or newer is needed");
    }

    @Test
    void maven_missing_saysHowToGetIt() throws Exception {
        sandbox.java("jvm/java-17", "17.0.15", true);
        assertThat(look("need_build_tools").err()).contains("Maven 3.8 or newer is needed", "apt-get install maven");
    }

    @Test
    void maven_byVersion_isTakenFrom38On() throws Exception {
        sandbox.java("jvm/java-17", "17.0.15", true);
        sandbox.pretend("mvn", "tools/mvn");
        assertThat(codeWithMaven("3.6.3")).isEqualTo(1);
        assertThat(codeWithMaven("3.8.7")).isZero();
        assertThat(codeWithMaven("3.10.0")).isZero();
        assertThat(codeWithMaven("4.0.0")).isZero();
    }

    private int codeWithMaven(String version) throws IOException, InterruptedException {
        sandbox.set("STUB_MAVEN_VERSION", version);
        return look("need_build_tools").code();
    }
}
