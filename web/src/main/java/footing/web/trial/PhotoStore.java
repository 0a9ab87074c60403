package footing.web.trial;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import tools.jackson.databind.json.JsonMapper;

/** Keeps photos of trials. Each call is one statement; whatever it returns is on the disk. */
@Component
class PhotoStore {
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final String COLUMNS = "id, sent_as, place, part, made, corners, border, seen, undone";

    private final JdbcClient sql;

    PhotoStore(JdbcClient sql) {
        this.sql = sql;
    }

    /** In the order in which they were made, those taken back too. */
    List<Photo> list(long trial) {
        return sql.sql("select " + COLUMNS + " from trial_photo where trial_id = ? order by made, id")
                .param(trial)
                .query(PhotoStore::photo)
                .list();
    }

    Optional<Photo> get(long trial, long photo) {
        return list(trial).stream().filter(p -> p.id() == photo).findFirst();
    }

    /** Keeps a photo once, however often it is sent. */
    Photo add(long trial, Photo photo, byte[] content) {
        sql.sql("insert or ignore into trial_photo (trial_id, sent_as, place, part, made, content, at)"
                        + " values (?, ?, ?, ?, ?, ?, ?)")
                .params(trial, photo.sentAs(), photo.place(), photo.part(), photo.made(), content, TrialStore.now())
                .update();
        return list(trial).stream()
                .filter(p -> p.sentAs().equals(photo.sentAs()))
                .findFirst()
                .orElseThrow();
    }

    /** The picture as it came. */
    byte[] content(long photo) {
        return sql.sql("select content from trial_photo where id = ?")
                .param(photo)
                .query(byte[].class)
                .single();
    }

    /** The picture with what was found drawn over; empty if nothing was read off it. */
    Optional<byte[]> overlay(long photo) {
        return sql.sql("select overlay from trial_photo where id = ? and overlay is not null")
                .param(photo)
                .query(byte[].class)
                .optional();
    }

    void setByHand(long photo, String corners, String border) {
        sql.sql("update trial_photo set corners = ?, border = ? where id = ?")
                .params(corners, border, photo)
                .update();
    }

    void setRead(long photo, Photo.Read read, byte @org.jspecify.annotations.Nullable [] overlay) {
        sql.sql("update trial_photo set seen = ?, overlay = ? where id = ?")
                .param(JSON.writeValueAsString(read))
                .param(overlay)
                .param(photo)
                .update();
    }

    void setUndone(long photo, boolean undone) {
        sql.sql("update trial_photo set undone = ? where id = ?")
                .params(undone ? 1 : 0, photo)
                .update();
    }

    private static Photo photo(ResultSet row, int number) throws SQLException {
        String seen = row.getString("seen");
        return new Photo(
                row.getLong("id"),
                row.getString("sent_as"),
                row.getString("place"),
                row.getString("part"),
                row.getString("made"),
                row.getString("corners"),
                row.getString("border"),
                seen == null ? null : JSON.readValue(seen, Photo.Read.class),
                row.getBoolean("undone"));
    }
}
