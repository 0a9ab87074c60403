package footing.web.records;

import footing.web.store.KeptWithCase;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/** Keeps sheets and their mends. Each call is one transaction; whatever it returns is on the disk. */
@Component
class RecordStore implements KeptWithCase {
    private final JdbcClient sql;
    private final TransactionTemplate transaction;

    RecordStore(JdbcClient sql, PlatformTransactionManager transactions) {
        this.sql = sql;
        transaction = new TransactionTemplate(transactions);
    }

    /** Counts every change of a case's records. */
    long version(String caseId) {
        return sql.sql("select version from record_state where case_id = ?")
                .param(caseId)
                .query(Long.class)
                .optional()
                .orElse(0L);
    }

    /** All of them, in the order they came. */
    List<Kept.SheetFile> sheets(String caseId) {
        return sql.sql("select id, name, mapping, archived, at from record_sheet where case_id = ? order by id")
                .param(caseId)
                .query((row, n) -> new Kept.SheetFile(
                        row.getLong("id"),
                        row.getString("name"),
                        Cells.read(row.getString("mapping")),
                        row.getBoolean("archived"),
                        Instant.parse(row.getString("at"))))
                .list();
    }

    /** A sheet as it came; empty if this case has none such. */
    Optional<byte[]> content(String caseId, long sheet) {
        return sql.sql("select content from record_sheet where case_id = ? and id = ?")
                .params(caseId, sheet)
                .query(byte[].class)
                .optional();
    }

    /** Keeps a sheet; the same one sent again is taken out of the archive if it lies there. */
    void addSheet(String caseId, String digest, String name, byte[] content) {
        change(caseId, () -> {
            int added = sql.sql("insert or ignore into record_sheet (case_id, sent_as, name, content, at)"
                            + " values (?, ?, ?, ?, ?)")
                    .params(caseId, digest, name, content, now())
                    .update();
            return added == 1
                    ? added
                    : sql.sql("update record_sheet set archived = 0 where case_id = ? and sent_as = ? and archived = 1")
                            .params(caseId, digest)
                            .update();
        });
    }

    void setMapping(String caseId, long sheet, Map<String, String> mapping) {
        change(
                caseId,
                () -> sql.sql("update record_sheet set mapping = ? where case_id = ? and id = ?")
                        .params(Cells.write(mapping), caseId, sheet)
                        .update());
    }

    void setArchived(String caseId, long sheet, boolean archived) {
        change(
                caseId,
                () -> sql.sql("update record_sheet set archived = ? where case_id = ? and id = ?")
                        .params(archived ? 1 : 0, caseId, sheet)
                        .update());
    }

    /** In the order they were made. */
    List<Kept.Mended> mends(String caseId) {
        return sql.sql("select m.* from record_mend m join record_sheet s on s.id = m.sheet_id where s.case_id = ?"
                        + " order by m.id")
                .param(caseId)
                .query((row, n) -> new Kept.Mended(
                        row.getLong("id"),
                        row.getLong("sheet_id"),
                        row.getInt("line"),
                        Cells.read(row.getString("cells")),
                        row.getBoolean("undone")))
                .list();
    }

    /** Keeps mends of rows of this case's sheets, all or none. */
    void addMends(String caseId, Map<RowKey, Map<String, String>> mends) {
        change(caseId, () -> {
            int added = 0;
            for (Map.Entry<RowKey, Map<String, String>> mend : mends.entrySet()) {
                added += sql.sql("insert into record_mend (sheet_id, line, cells, at)"
                                + " select id, ?, ?, ? from record_sheet where case_id = ? and id = ?")
                        .params(
                                mend.getKey().line(),
                                Cells.write(mend.getValue()),
                                now(),
                                caseId,
                                mend.getKey().sheet())
                        .update();
            }
            return added;
        });
    }

    void undoMend(String caseId, long mend) {
        change(
                caseId,
                () -> sql.sql("update record_mend set undone = 1 where id = ? and sheet_id in"
                                + " (select id from record_sheet where case_id = ?)")
                        .params(mend, caseId)
                        .update());
    }

    /** In the order they came. */
    List<Kept.Written> entries(String caseId) {
        return sql.sql("select * from record_entry where case_id = ? order by id")
                .param(caseId)
                .query(RecordStore::written)
                .list();
    }

    /**
     * Keeps a row once, however often it is sent. Another row under the same mark, as from a page gone back to, is
     * another row.
     */
    Kept.Written addEntry(String caseId, String sentAs, Map<String, String> cells) {
        String json = Cells.write(cells);
        Optional<Kept.Written> first = entry(caseId, sentAs);
        String mark = first.isEmpty() || first.get().cells().equals(cells)
                ? sentAs
                : sentAs + "-" + Integer.toHexString(json.hashCode());
        change(
                caseId,
                () -> sql.sql("insert or ignore into record_entry (case_id, sent_as, cells, at)"
                                + " values (?, ?, ?, ?)")
                        .params(caseId, mark, json, now())
                        .update());
        return entry(caseId, mark).orElseThrow();
    }

    Optional<Kept.Written> entry(String caseId, String sentAs) {
        return sql.sql("select * from record_entry where case_id = ? and sent_as = ?")
                .params(caseId, sentAs)
                .query(RecordStore::written)
                .optional();
    }

    /** Takes a row back, or takes that back. */
    void setUndone(String caseId, long entry, boolean undone) {
        change(
                caseId,
                () -> sql.sql("update record_entry set undone = ? where case_id = ? and id = ?")
                        .params(undone ? 1 : 0, caseId, entry)
                        .update());
    }

    @Override
    public void copy(String fromCase, String toCase) {
        sql.sql("insert into record_state (case_id, version) select ?, version from record_state where case_id = ?")
                .params(toCase, fromCase)
                .update();
        sql.sql("insert into record_sheet (case_id, sent_as, name, content, mapping, archived, at)"
                        + " select ?, sent_as, name, content, mapping, archived, at from record_sheet"
                        + " where case_id = ? order by id")
                .params(toCase, fromCase)
                .update();
        sql.sql("insert into record_mend (sheet_id, line, cells, undone, at)"
                        + " select n.id, m.line, m.cells, m.undone, m.at from record_mend m"
                        + " join record_sheet o on o.id = m.sheet_id and o.case_id = ?"
                        + " join record_sheet n on n.case_id = ? and n.sent_as = o.sent_as order by m.id")
                .params(fromCase, toCase)
                .update();
        sql.sql("insert into record_entry (case_id, sent_as, cells, undone, at)"
                        + " select ?, sent_as, cells, undone, at from record_entry where case_id = ? order by id")
                .params(toCase, fromCase)
                .update();
    }

    private static Kept.Written written(ResultSet row, int number) throws SQLException {
        return new Kept.Written(
                row.getLong("id"),
                row.getString("sent_as"),
                Cells.read(row.getString("cells")),
                row.getBoolean("undone"),
                Instant.parse(row.getString("at")));
    }

    /** @param work returns how many rows it changed */
    private void change(String caseId, Supplier<Integer> work) {
        transaction.executeWithoutResult(status -> {
            if (Objects.requireNonNull(work.get()) > 0) {
                sql.sql("insert into record_state (case_id, version) values (?, 1)"
                                + " on conflict (case_id) do update set version = version + 1")
                        .param(caseId)
                        .update();
            }
        });
    }

    private static String now() {
        return Instant.now().truncatedTo(ChronoUnit.MILLIS).toString();
    }
}
