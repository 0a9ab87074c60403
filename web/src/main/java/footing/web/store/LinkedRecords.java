package footing.web.store;

import footing.io.casefile.CaseFile;
import footing.io.casefile.Reading;
import footing.web.safety.OwnFolder;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.HexFormat;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/**
 * Records as they stood when a case took them in. Their name says their content, so they never change, an undone case
 * finds its own again, and an answer belongs to the case's text alone. They are kept with the cases; the files that
 * reading a case needs are made from them.
 */
@Component
public final class LinkedRecords {
    private static final Pattern NAME = Pattern.compile("records-[0-9a-f]{16}\\.csv");
    private static final int DIGITS = 16;

    private final Path folder;
    private final JdbcClient sql;

    LinkedRecords(@Value("${footing.data}") String data, JdbcClient sql) {
        folder = Path.of(data).resolve("records");
        this.sql = sql;
    }

    /** Keeps records; twice the same are kept once. Returns the name a case calls them by. */
    public String keep(String csv) {
        String name = name(csv);
        sql.sql("insert or ignore into linked_records (name, content, at) values (?, ?, ?)")
                .params(name, csv, Instant.now().toString())
                .update();
        return name;
    }

    /** The name a case would call records by. */
    public static String name(String csv) {
        return "records-" + digest(csv).substring(0, DIGITS) + ".csv";
    }

    /** The case as a text states it, with the records it names. */
    public Reading read(String text) {
        return CaseFile.read(text, "case file", beside(text));
    }

    /** The folder that holds the records a text names; null if it names none that are kept here. */
    @Nullable
    Path beside(String text) {
        Matcher name = NAME.matcher(text);
        return name.find() && isThere(name.group()) ? folder : null;
    }

    private boolean isThere(String name) {
        Path file = folder.resolve(name);
        if (Files.exists(file)) {
            return true;
        }
        Optional<String> kept = sql.sql("select content from linked_records where name = ?")
                .param(name)
                .query(String.class)
                .optional();
        kept.ifPresent(csv -> write(file, csv));
        return kept.isPresent();
    }

    /** Aside and then into place, so that nobody reads half of it. */
    private void write(Path file, String csv) {
        try {
            OwnFolder.make(folder);
            Path aside = Files.createTempFile(folder, "aside", ".csv");
            Files.writeString(aside, csv);
            Files.move(aside, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String digest(String text) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
