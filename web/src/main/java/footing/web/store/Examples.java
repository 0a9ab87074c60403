package footing.web.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.springframework.beans.factory.InitializingBean;
import org.springframework.boot.sql.init.dependency.DependsOnDatabaseInitialization;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Puts the example cases into a new data folder, once, before the first page: who deletes them doesn't get them again. */
@Component
@DependsOnDatabaseInitialization
final class Examples implements InitializingBean {
    private static final String GIVEN = "examples-given";

    private final CaseStore store;
    private final JdbcClient sql;

    Examples(CaseStore store, JdbcClient sql) {
        this.store = store;
        this.sql = sql;
    }

    @Override
    public void afterPropertiesSet() {
        int isNew = sql.sql("insert or ignore into setting (name, value) values (?, '1')")
                .param(GIVEN)
                .update();
        if (isNew == 1) {
            add("One machine (example)", "one-machine.yaml");
            add("Quillbrook Grounds (example)", "quillbrook.yaml");
        }
    }

    private void add(String name, String file) {
        store.create(name, text(file), "Came with Footing; all of it is invented");
    }

    private static String text(String file) {
        try (InputStream in = Examples.class.getResourceAsStream("examples/" + file)) {
            if (in == null) {
                throw new IllegalStateException("example missing: " + file);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
