package footing.web.trial;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/** Keeps trials and their runs. Each call is one statement; whatever it returns is on the disk. */
@Component
class TrialStore {
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final TypeReference<LinkedHashMap<String, String>> CELLS = new TypeReference<>() {};

    private final JdbcClient sql;

    TrialStore(JdbcClient sql) {
        this.sql = sql;
    }

    /** All of a case, the last begun first. */
    List<StoredTrial> list(String caseId) {
        return sql.sql("select * from trial where case_id = ? order by id desc")
                .param(caseId)
                .query(TrialStore::trial)
                .list();
    }

    /** Empty if this case has none such. */
    Optional<StoredTrial> get(String caseId, long trial) {
        return sql.sql("select * from trial where case_id = ? and id = ?")
                .params(caseId, trial)
                .query(TrialStore::trial)
                .optional();
    }

    /** Keeps a trial begun here, once however often it is sent; gives its number. */
    long begin(String caseId, String sentAs, Setup setup) {
        return add(caseId, sentAs, setup.title(), JSON.writeValueAsString(setup), null, null);
    }

    /** Keeps a file that came; gives the number of its trial. */
    long take(String caseId, String sentAs, String name, String content, String fileName) {
        return add(caseId, sentAs, name, null, content, fileName);
    }

    private long add(
            String caseId,
            String sentAs,
            String name,
            @Nullable String setup,
            @Nullable String content,
            @Nullable String fileName) {
        sql.sql("insert or ignore into trial (case_id, sent_as, name, setup, content, file_name, at)"
                        + " values (?, ?, ?, ?, ?, ?, ?)")
                .params(caseId, sentAs, name)
                .param(setup)
                .param(content)
                .param(fileName)
                .param(now())
                .update();
        return sql.sql("select id from trial where case_id = ? and sent_as = ?")
                .params(caseId, sentAs)
                .query(Long.class)
                .single();
    }

    void setSetup(long trial, Setup setup) {
        sql.sql("update trial set setup = ? where id = ?")
                .params(JSON.writeValueAsString(setup), trial)
                .update();
    }

    void setArchived(long trial, boolean archived) {
        sql.sql("update trial set archived = ? where id = ?")
                .params(archived ? 1 : 0, trial)
                .update();
    }

    /** In the order in which they were made, those taken back too. */
    List<WrittenRun> runs(long trial) {
        return sql.sql("select * from trial_run where trial_id = ? order by made, id")
                .param(trial)
                .query(TrialStore::run)
                .list();
    }

    /** Keeps a run once, however often it is sent. */
    WrittenRun addRun(long trial, String sentAs, String place, String made, Map<String, String> cells) {
        sql.sql("insert or ignore into trial_run (trial_id, sent_as, place, made, cells, at)"
                        + " values (?, ?, ?, ?, ?, ?)")
                .params(trial, sentAs, place, made, JSON.writeValueAsString(cells), now())
                .update();
        return run(trial, sentAs).orElseThrow();
    }

    Optional<WrittenRun> run(long trial, String sentAs) {
        return sql.sql("select * from trial_run where trial_id = ? and sent_as = ?")
                .params(trial, sentAs)
                .query(TrialStore::run)
                .optional();
    }

    /** Takes a run back, or takes that back. */
    void setUndone(long trial, String sentAs, boolean undone) {
        sql.sql("update trial_run set undone = ? where trial_id = ? and sent_as = ?")
                .params(undone ? 1 : 0, trial, sentAs)
                .update();
    }

    private static StoredTrial trial(ResultSet row, int number) throws SQLException {
        String setup = row.getString("setup");
        return new StoredTrial(
                row.getLong("id"),
                row.getString("name"),
                setup == null ? null : JSON.readValue(setup, Setup.class),
                row.getString("content"),
                row.getString("file_name"),
                row.getBoolean("archived"),
                Instant.parse(row.getString("at")));
    }

    private static WrittenRun run(ResultSet row, int number) throws SQLException {
        return new WrittenRun(
                row.getLong("id"),
                row.getString("sent_as"),
                row.getString("place"),
                row.getString("made"),
                JSON.readValue(row.getString("cells"), CELLS),
                row.getBoolean("undone"));
    }

    static String now() {
        return Instant.now().truncatedTo(ChronoUnit.MILLIS).toString();
    }
}
