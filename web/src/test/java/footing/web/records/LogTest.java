package footing.web.records;

import static org.assertj.core.api.Assertions.assertThat;

import footing.web.serve.Served;
import java.net.http.HttpResponse;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Flats and readings written down one by one. */
class LogTest extends Served {
    private final RecordsVisit visit = new RecordsVisit(visitor());

    private static Map<String, String> flat(String mark) {
        Map<String, String> form = new LinkedHashMap<>();
        form.put("sentAs", mark);
        form.put("event", "flat");
        form.put("machine", "E1");
        form.put("position", "drive");
        form.put("hours", "1240,5");
        form.put("minutes", "35");
        form.put("date", "2026-05-04");
        return form;
    }

    private String all() {
        return visit.get("/records.csv").body();
    }

    @Test
    void entry_sentTenTimesAtOnce_isOneRecord() {
        List<Integer> codes = IntStream.range(0, 10)
                .parallel()
                .mapToObj(i -> visit.post("/log/entry", flat("mark-0001")).statusCode())
                .toList();
        assertThat(codes).containsOnly(200);
        assertThat(all().lines()).hasSize(2);
        assertThat(all()).contains("2026-05-04,E1,flat,1240.5,drive,");
    }

    @Test
    void entry_anotherRowUnderTheSameMark_isKeptToo() {
        visit.post("/log/entry", flat("mark-0002"));
        Map<String, String> other = flat("mark-0002");
        other.put("position", "caster");
        visit.post("/log/entry", other);
        visit.post("/log/entry", other);
        assertThat(all().lines()).hasSize(3);
    }

    @Test
    void undo_ofAnEntry_takesItBackAndSendingItAgainDoesNotBringItBack() {
        visit.post("/log/entry", flat("mark-0003"));
        assertThat(visit.post("/log/undo", Map.of("sentAs", "mark-0003")).body())
                .contains("Flat on E1, drive");
        assertThat(all().lines()).hasSize(1);
        visit.post("/log/entry", flat("mark-0003"));
        assertThat(all().lines()).hasSize(1);
        assertThat(visit.post("/log/undo", Map.of("sentAs", "never-came")).statusCode())
                .isEqualTo(200);
    }

    @Test
    void entry_hoursBelowThoseBefore_isKeptAndSaysSo() {
        Map<String, String> reading = Map.of(
                "sentAs", "mark-0004", "event", "reading", "machine", "E1", "hours", "1300", "date", "2026-05-01");
        visit.post("/log/entry", reading);
        Map<String, String> later = new LinkedHashMap<>(reading);
        later.put("sentAs", "mark-0005");
        later.put("date", "2026-05-02");
        later.put("hours", "1310");
        visit.post("/log/entry", later);
        HttpResponse<String> back = visit.post("/log/entry", flat("mark-0006"));
        assertThat(back.statusCode()).isEqualTo(200);
        assertThat(back.body()).contains("run backwards");
        assertThat(visit.page()).contains("Written here", "to mend");
    }

    @ParameterizedTest
    @CsvSource({
        "machine, '', Choose a machine",
        "machine, Z9, no machine",
        "hours, soon, Hours",
        "minutes, -3, Minutes",
        "position, roof, Position",
        "date, 4/5/2026, Date",
        "date, 2099-01-01, ahead",
    })
    void entry_thatCantBe_isRefusedWithTheReason(String field, String value, String why) {
        Map<String, String> form = flat("mark-0007");
        form.put(field, value);
        HttpResponse<String> refused = visit.post("/log/entry", form);
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains(why);
        assertThat(visit.post("/log", form).body()).contains(why);
        assertThat(all().lines()).hasSize(1);
    }

    @Test
    void form_withoutScripts_keepsOnceAndOffersToTakeBack() {
        visit.post("/log", flat("mark-0008"));
        HttpResponse<String> response = visit.post("/log", flat("mark-0008"));
        assertThat(response.statusCode()).isEqualTo(302);
        String to = response.headers().firstValue("Location").orElseThrow().replaceAll(".*/log", "/log");
        assertThat(visit.get(to).body()).contains("Kept.", "Take back: Flat on E1, drive, 35 min, at 1240.5 h");
        assertThat(all().lines()).hasSize(2);
    }

    @Test
    void page_isSmallEnoughForASlowLine() {
        HttpResponse<String> page = visit.get("/log");
        int bytes = page.body().length();
        for (String file : List.of("/queue.js", "/log.js", "/log.css", "/footing.css", "/mark.svg")) {
            assertThat(page.body()).contains(file);
            bytes += visitor().get(file).body().length();
        }
        // 15 s on the slowest line one meets in the field, 50 kbit/s, is 94 kB; the page takes a third of that.
        assertThat(bytes).isLessThan(40_000);
        assertThat(page.body()).doesNotContain("htmx", "echarts");
    }

    @Test
    void entry_withoutAMark_isRefused() {
        assertThat(visit.post("/log/entry", flat("x")).statusCode()).isEqualTo(400);
    }
}
