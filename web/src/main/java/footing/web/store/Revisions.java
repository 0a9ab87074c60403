package footing.web.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The tables of cases, row by row. */
final class Revisions {
    private static final String ROW = "select r.* from revision r ";

    private final JdbcClient sql;

    Revisions(JdbcClient sql) {
        this.sql = sql;
    }

    List<CaseSummary> list() {
        return sql.sql("select c.*, r.name, r.at from case_file c"
                        + " join revision r on r.case_id = c.id and r.version = c.version order by r.at desc, c.id")
                .query((row, n) -> new CaseSummary(
                        row.getString("id"),
                        row.getString("name"),
                        row.getLong("version"),
                        row.getBoolean("archived"),
                        Instant.parse(row.getString("at")),
                        row.getInt("machines"),
                        row.getInt("crews")))
                .list();
    }

    /** The state in force. */
    Revision current(String id) {
        return sql.sql(ROW + "join case_file c on c.id = r.case_id and c.version = r.version where c.id = ?")
                .param(id)
                .query(Revisions::revision)
                .optional()
                .orElseThrow(() -> new NoSuchCase(id));
    }

    /** The case as it stands, in one statement and so of one moment. */
    Optional<StoredCase> shown(String id) {
        return sql.sql("select r.*, c.archived, exists (select 1 from revision n where n.case_id = r.case_id"
                        + " and n.parent = r.stands_for and n.stands_for = n.version) as undone"
                        + " from revision r join case_file c on c.id = r.case_id and c.version = r.version"
                        + " where c.id = ?")
                .param(id)
                .query((row, n) -> {
                    Revision r = revision(row, n);
                    return new StoredCase(
                            id,
                            r.name(),
                            r.version(),
                            r.text(),
                            row.getBoolean("archived"),
                            r.at(),
                            r.parent() != null,
                            row.getBoolean("undone"),
                            null);
                })
                .optional();
    }

    boolean isArchived(String id) {
        return sql.sql("select archived from case_file where id = ?")
                .param(id)
                .query(Boolean.class)
                .single();
    }

    Revision of(String id, long version) {
        return sql.sql(ROW + "where r.case_id = ? and r.version = ?")
                .params(id, version)
                .query(Revisions::revision)
                .optional()
                .orElseThrow(() -> new NoSuchCase(id));
    }

    /** The state made last of those made from a version. */
    Optional<Revision> lastChild(String id, long parent) {
        return sql.sql(ROW + "where r.case_id = ? and r.parent = ? and r.stands_for = r.version"
                        + " order by r.version desc limit 1")
                .params(id, parent)
                .query(Revisions::revision)
                .optional();
    }

    List<Revision> all(String id) {
        return sql.sql(ROW + "where r.case_id = ? order by r.version desc")
                .param(id)
                .query(Revisions::revision)
                .list();
    }

    void insertCase(String id) {
        sql.sql("insert into case_file (id, version) values (?, 0)").param(id).update();
    }

    void append(String id, Revision r) {
        sql.sql("insert into revision (case_id, version, kind, stands_for, parent, name, text, what, at)"
                        + " values (:id, :version, :kind, :standsFor, :parent, :name, :text, :what, :at)")
                .param("id", id)
                .param("version", r.version())
                .param("kind", r.kind().name())
                .param("standsFor", r.standsFor())
                .param("parent", r.parent())
                .param("name", r.name())
                .param("text", r.text())
                .param("what", r.what())
                .param("at", r.at().toString())
                .update();
        sql.sql("update case_file set version = ? where id = ?")
                .params(r.version(), id)
                .update();
    }

    void setArchived(String id, boolean archived) {
        sql.sql("update case_file set archived = ? where id = ?")
                .params(archived ? 1 : 0, id)
                .update();
    }

    void setSize(String id, int machines, int crews) {
        sql.sql("update case_file set machines = ?, crews = ? where id = ?")
                .params(machines, crews, id)
                .update();
    }

    void delete(String id) {
        sql.sql("delete from case_file where id = ?").param(id).update();
    }

    private static Revision revision(ResultSet row, int number) throws SQLException {
        long parent = row.getLong("parent");
        boolean first = row.wasNull();
        return new Revision(
                row.getLong("version"),
                Change.Kind.valueOf(row.getString("kind")),
                row.getLong("stands_for"),
                first ? null : parent,
                row.getString("name"),
                row.getString("text"),
                row.getString("what"),
                Instant.parse(row.getString("at")));
    }
}
