package footing.web.store;

import java.lang.reflect.Proxy;
import java.nio.file.Path;
import org.flywaydb.core.Flyway;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.DriverManagerDataSource;
import org.springframework.jdbc.support.JdbcTransactionManager;

/** Stores for tests, in the way the page opens its own. */
final class Stores {
    private Stores() {}

    static CaseStore in(@Nullable Path folder) {
        if (folder == null) {
            throw new IllegalStateException("no folder");
        }
        DriverManagerDataSource source = new DriverManagerDataSource(DataFile.url(folder));
        Flyway.configure().dataSource(source).load().migrate();
        JdbcClient sql = JdbcClient.create(source);
        LinkedRecords records = new LinkedRecords(folder.toString(), sql);
        return new SqliteCaseStore(sql, new JdbcTransactionManager(source), records, java.util.List.of());
    }

    /** Stands for a store before there is one. */
    static CaseStore none() {
        return (CaseStore)
                Proxy.newProxyInstance(Stores.class.getClassLoader(), new Class<?>[] {CaseStore.class}, (p, m, a) -> {
                    throw new IllegalStateException("no store is open");
                });
    }
}
