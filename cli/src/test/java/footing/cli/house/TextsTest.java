package footing.cli.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What no compiler looks at: templates, styles, scripts, documents. */
class TextsTest {
    private static final Path ROOT = Path.of("..");
    private static final Pattern HALF_MERGED = Pattern.compile("(?m)^[<>]{7} \\S");

    private static Stream<Path> files(String below) {
        try (Stream<Path> all = Files.walk(ROOT.resolve(below))) {
            return all.filter(Files::isRegularFile).toList().stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static boolean isHalfMerged(Path file) {
        try {
            String text = Files.readString(file, StandardCharsets.ISO_8859_1);
            return HALF_MERGED.matcher(text).find();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void texts_asTheyStand_areMergedToTheEnd() {
        List<Path> texts = Stream.concat(
                        Stream.of("core/src", "io/src", "web/src", "cli/src", "bench/src", "docs", "cases", "bin")
                                .flatMap(TextsTest::files),
                        Stream.of("README.md", "CHANGELOG.md", "ARCHITECTURE.md", "CONTRIBUTING.md", "footing", "check")
                                .map(ROOT::resolve))
                .toList();
        assertThat(texts).hasSizeGreaterThan(500).noneMatch(TextsTest::isHalfMerged);
    }
}
