package footing.web.records;

import footing.core.follow.Forecast;
import footing.io.follow.ForecastFile;
import footing.web.store.KeptWithCase;
import java.io.StringWriter;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Keeps what was forecast of cases; what is kept can't be made again. */
@Component
class ForecastStore implements KeptWithCase {
    private final JdbcClient sql;

    ForecastStore(JdbcClient sql) {
        this.sql = sql;
    }

    /** One that is kept, without its bands; days as ISO writes them. */
    record Heading(long id, String made, String asOf, long seed) {}

    /** Latest first. */
    List<Heading> kept(String caseId) {
        return sql.sql("select id, made, as_of, seed from kept_forecast where case_id = ?"
                        + " order by made desc, as_of desc")
                .param(caseId)
                .query((row, n) -> new Heading(
                        row.getLong("id"), row.getString("made"), row.getString("as_of"), row.getLong("seed")))
                .list();
    }

    /** One of a case's forecasts; empty if it has none such. */
    Optional<Forecast> forecast(String caseId, long id) {
        return sql.sql("select content from kept_forecast where case_id = ? and id = ?")
                .params(caseId, id)
                .query(String.class)
                .optional()
                .map(ForecastStore::read);
    }

    private static Forecast read(String content) {
        ForecastFile.Kept kept = ForecastFile.read(content, "forecast");
        if (kept.forecasts().size() != 1) {
            throw new IllegalStateException("a forecast kept can't be read: " + kept.problems());
        }
        return kept.forecasts().get(0);
    }

    /** Keeps a forecast; it takes the place of one made on the same day of a case of the same day. */
    void keep(String caseId, Forecast forecast) {
        StringWriter content = new StringWriter();
        ForecastFile.write(List.of(forecast), content);
        sql.sql("insert into kept_forecast (case_id, made, as_of, seed, content) values (?, ?, ?, ?, ?)"
                        + " on conflict (case_id, made, as_of)"
                        + " do update set seed = excluded.seed, content = excluded.content")
                .params(
                        caseId,
                        forecast.made().toString(),
                        forecast.asOf().toString(),
                        forecast.seed(),
                        content.toString())
                .update();
    }

    @Override
    public void copy(String fromCase, String toCase) {
        sql.sql("insert into kept_forecast (case_id, made, as_of, seed, content)"
                        + " select ?, made, as_of, seed, content from kept_forecast where case_id = ? order by id")
                .params(toCase, fromCase)
                .update();
    }
}
