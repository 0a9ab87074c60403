package footing.cli;

import static org.assertj.core.api.Assertions.assertThat;

import footing.cli.text.Letters;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What a shop's records teach, from the command line. All logs are invented. */
class LearnTest {
    private static final String DEMO =
            Run.CASES.resolve("quillbrook-records.csv").toString();
    private static final String LOG = """
            date,machine,event,hours,position,assembly,fix,delay,reason
            2026-04-05,mower,begin,0,,,,,
            2026-04-05,mower,fit,0,drive,air,,,
            2026-05-10,mower,flat,60,drive,,plug on site,25 min,
            2026-06-20,mower,flat,150,drive,,plug on site,30 min,
            2026-09-01,mower,off,320,drive,air,,,worn
            2026-09-01,mower,fit,320,drive,air,,,
            2026-10-31,mower,end,400,,,,,
            """;

    @TempDir
    Path folder;

    @BeforeEach
    void copyTheCase() throws IOException {
        Files.copy(Path.of(Run.ONE_MACHINE), folder.resolve("one.yaml"));
    }

    private Run learn(String log, String... more) throws IOException {
        Files.writeString(folder.resolve("log.csv"), log);
        String[] args = new String[more.length + 2];
        args[0] = "learn";
        args[1] = folder.resolve("log.csv").toString();
        System.arraycopy(more, 0, args, 2, more.length);
        return Run.in(folder, "", Letters.ASCII, args);
    }

    private Run learnForTheCase(String log, String... more) throws IOException {
        String[] args = new String[more.length + 2];
        args[0] = "--case";
        args[1] = folder.resolve("one.yaml").toString();
        System.arraycopy(more, 0, args, 2, more.length);
        return learn(log, args);
    }

    private static String said(Run run) {
        assertThat(run.err()).doesNotContain("Exception");
        assertThat(run.out()).doesNotContain("NaN", "Infinity");
        return run.out().replaceAll("\\s+", " ");
    }

    @Test
    void learn_aLog_saysFlatsLivesAndFixesWithCountsAndIntervals() throws IOException {
        Run run = learnForTheCase(LOG);
        assertThat(run.code()).isZero();
        assertThat(run.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80));
        assertThat(said(run))
                .contains("log.csv: 7 of 7 rows used.")
                .contains("mower: 2 flats in 400 h: about ", "four in five that it is ", "By its own count alone, ")
                .contains("Whether worn tires go flat more: can't tell from 2 flats on 2 sets of known age.")
                .contains("air, from 2 sets of which one wore out: half of the sets last about ")
                .contains("plug on site: 2 times, ", "to the shop: not once; that leaves room for up to 68 % of flats")
                .contains("too few times written down, the stated delay stands")
                .doesNotContain("not counted", "0 % to 0 %");
    }

    @Test
    void learn_noFlats_saysAnUpperBoundAlone() throws IOException {
        Run run = learn("date,machine,event,hours\n2026-04-05,mower,begin,0\n2026-10-31,mower,end,400\n");
        assertThat(said(run)).contains("mower: no flats in 400 h. That is an upper bound, no rate: nine in ten that");
    }

    /** The demo's log has four rows that can't be: they are told, not counted, and the rest is an answer. */
    @Test
    void learn_fourRowsThatCantBe_listsThemAndAnswersFromTheRest() {
        Run run = Run.of("learn", DEMO);
        assertThat(run.code()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(said(run))
                .containsSubsequence(
                        "145 of 149 rows used.",
                        "4 rows not counted",
                        "the same row stands in line",
                        "the hours run backwards: 7930 h",
                        "date: read '5/20/2026'; is no date (write 2026-05-20)",
                        "machine 'E9' is seen nowhere else",
                        "Flats");
    }

    @Test
    void write_withRowsThatCantBe_needsLeaveOutAndChangesNothingBefore() throws IOException {
        String bad = LOG + "5/20/2026,mower,flat,90,drive,,plug on site,25 min,\n";
        String before = Files.readString(folder.resolve("one.yaml"));
        Run refused = learnForTheCase(bad, "--write");
        assertThat(refused.code()).isEqualTo(2);
        assertThat(refused.out()).isEmpty();
        assertThat(refused.err()).contains("1 of 8 rows can't be", "write 2026-05-20", "--leave-out");
        assertThat(folder.resolve("one.yaml")).hasContent(before);
        Run written = learnForTheCase(bad, "--write", "--leave-out");
        assertThat(written.code()).isZero();
        assertThat(said(written))
                .contains("1 row not counted", "mower, flats a season on air: ", "by your records; you said ")
                .contains("me, plug on site, ", "by your records beside what was held before; you said 80 %");
        assertThat(Files.readString(folder.resolve("one.yaml")))
                .contains("records: log.csv", "{learned: life}", "{learned: share, stated: 20 %}");
        Run answer = Run.in(
                folder,
                "",
                Letters.ASCII,
                "assess",
                folder.resolve("one.yaml").toString(),
                "--quick",
                "--futures",
                "300");
        assertThat(answer.code()).as(answer.err()).isZero();
        assertThat(answer.out().replaceAll("\\s+", " ")).contains("from your records");
    }

    @Test
    void learn_mostRowsCantBe_isBadInputUnlessLeftOut() throws IOException {
        String bad = LOG.replace("2026-0", "26-0");
        Run run = learn(bad);
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("6 of 7 rows can't be", "is no date", "--leave-out");
        assertThat(learn(bad, "--leave-out").code()).isZero();
        Run none = learn(LOG.replace("2026", "26"), "--leave-out");
        assertThat(none.code()).isEqualTo(2);
        assertThat(none.err()).contains("none of 7 rows can be");
    }

    @Test
    void json_ofALog_holdsCountsIntervalsSentencesAndRefusedRows() throws IOException {
        Run run = learnForTheCase(LOG + "5/20/2026,mower,flat,90,drive,,plug on site,25 min,\n", "--json");
        assertThat(run.code()).isZero();
        JsonNode json = JsonMapper.shared().readTree(run.out());
        assertThat(json.get("format").asString()).isEqualTo("footing-learned/1");
        assertThat(json.get("rows").asInt()).isEqualTo(8);
        assertThat(json.get("used").asInt()).isEqualTo(7);
        JsonNode refused = json.get("refused").get(0);
        assertThat(refused.get("line").asInt()).isEqualTo(9);
        assertThat(refused.get("column").asString()).isEqualTo("date");
        assertThat(refused.get("mend").asString()).isEqualTo("write 2026-05-20");
        JsonNode flats = json.get("flats").get(0);
        assertThat(flats.get("counted").asDouble()).isEqualTo(2);
        assertThat(flats.get("hours").asDouble()).isEqualTo(400);
        assertThat(flats.get("low").asDouble()).isLessThan(flats.get("likely").asDouble());
        assertThat(flats.get("likely").asDouble()).isLessThan(flats.get("high").asDouble());
        assertThat(flats.get("upperBoundOnly").asBoolean()).isFalse();
        assertThat(flats.get("sentence").asString()).startsWith("mower: 2 flats in 400 h");
        assertThat(json.get("wornTires").get("says").asString()).isEqualTo("can't tell");
        JsonNode life = json.get("lives").get(0);
        assertThat(life.get("sets").asInt()).isEqualTo(2);
        assertThat(life.get("wornOut").asInt()).isEqualTo(1);
        assertThat(json.get("crews").get(0).get("differ").asString()).isEqualTo("can't tell");
        assertThat(json.get("trends")).isEmpty();
        assertThat(json.get("wornTires").get("byAge").get(0).get("age").asDouble())
                .isEqualTo(60);
        assertThat(life.get("curveMedian").isNumber()).isTrue();
        JsonNode fix = json.get("fixes").get(0).get("shares").get(0);
        assertThat(fix.get("name").asString()).isEqualTo("plug on site");
        assertThat(fix.get("count").asInt()).isEqualTo(2);
        assertThat(fix.get("share").asDouble()).isEqualTo((0.8 + 2) / 3);
    }

    /** 'Do the foam-filled last longer than the air ones in my own log?' Seven sets of each on two machines. */
    @Test
    void learn_twoKindsOfSets_saysWhichLastsLonger() throws IOException {
        StringBuilder log = new StringBuilder("date,machine,event,hours,position,assembly,reason\n");
        sets(log, "A", "air", 400);
        sets(log, "B", "foam", 700);
        Run run = learn(log.toString());
        assertThat(run.code()).isZero();
        assertThat(said(run))
                .contains(
                        "air against foam: they don't last as long, by 7 sets (7 worn out) and 7 (7) on the machines",
                        "At the same age they wear out at least ");
        JsonNode json = JsonMapper.shared().readTree(learnAgain("--json").out());
        JsonNode contrast = json.get("contrasts").get(0);
        assertThat(contrast.get("lasts").asString()).isEqualTo("shorter");
        assertThat(contrast.get("low").asDouble()).isGreaterThan(1);
    }

    private static void sets(StringBuilder log, String machine, String assembly, int life) {
        int hours = 0;
        LocalDate day = LocalDate.of(2020, 1, 1);
        String row = "%s,%s,%s,%d,%s,%s,%s%n";
        log.append(row.formatted(day, machine, "begin", hours, "", "", ""));
        for (int i = 0; i < 7; i++) {
            log.append(row.formatted(day, machine, "fit", hours, "drive", assembly, ""));
            hours += life + 20 * i;
            day = day.plusDays(200);
            log.append(row.formatted(day, machine, "off", hours, "drive", assembly, "worn"));
        }
        log.append(row.formatted(day, machine, "end", hours, "", "", ""));
    }

    /** A machine whose flats come faster and faster. */
    @Test
    void learn_flatsMoreAndMoreOften_saysSoAndHowFarApartTheyAreByNow() throws IOException {
        StringBuilder log = new StringBuilder("date,machine,event,hours\n2026-04-05,A,begin,0\n");
        int[] at = {400, 620, 750, 840, 900, 945, 980, 995};
        for (int i = 0; i < at.length; i++) {
            log.append("2026-%02d-01,A,flat,%d%n".formatted(5 + i % 6, at[i]));
        }
        Run run = learn(log.append("2026-12-01,A,end,1000\n")
                .toString()
                .replace("2026-05-01,A,flat,980", "2026-10-20,A,flat,980")
                .replace("2026-06-01,A,flat,995", "2026-11-01,A,flat,995"));
        assertThat(run.code()).isZero();
        assertThat(said(run)).contains("A: flats come more and more often, 8 flats in 1,000 h, by now about one in ");
    }

    /** Two seasons of parts purchases without machine and four meter readings. */
    @Test
    void learn_purchasesAndFourReadings_tellsHoursPerSet() throws IOException {
        Run run = learn("""
                date,machine,event,hours,assembly,qty
                2025-03-20,A,reading,200,,
                2026-11-14,A,reading,1600,,
                2025-03-20,B,reading,900,,
                2026-11-14,B,reading,2100,,
                2025-06-02,,bought,,air,2 tires
                2025-09-11,,bought,,air,2
                2026-05-05,,bought,,air,1 set
                2026-08-30,,bought,,air,2 tires
                """);
        assertThat(run.code()).isZero();
        assertThat(said(run))
                .contains("air, from 4 sets bought over 2,600 h of 2 machines: half of the sets last about ")
                .contains("four in five that this is ");
        JsonNode json = JsonMapper.shared().readTree(learnAgain("--json").out());
        assertThat(json.get("lives").get(0).get("bought").asDouble()).isEqualTo(4);
        assertThat(json.get("lives").get(0).get("likely").asDouble()).isBetween(540.0, 720.0);
    }

    private Run learnAgain(String... more) throws IOException {
        return learn(Files.readString(folder.resolve("log.csv")), more);
    }

    /** 'About five last season', and nothing else: the case's season is the hours. */
    @Test
    void learn_aboutFiveLastSeason_tellsARateAsWideAsThatDeserves() throws IOException {
        String about = "date,machine,event,quantity\n2026-11-14,mower,flat,about 5\n";
        Run run = learnForTheCase(about);
        assertThat(run.code()).isZero();
        assertThat(said(run))
                .contains("mower: about 5 flats from memory in 400 h by the calendar, not by a meter: about ");
        assertThat(width(learnForTheCase(about, "--json")))
                .isGreaterThan(1.15 * width(learnForTheCase(counted(), "--json")));
        assertThat(said(learn(about))).contains("Of about 5 flats from memory nobody knows over how many hours");
    }

    private static String counted() {
        return """
                date,machine,event,hours,quantity
                2026-04-05,mower,begin,0,
                2026-06-01,mower,flat,90,5
                2026-10-31,mower,end,400,
                """;
    }

    private static double width(Run run) {
        JsonNode flats = JsonMapper.shared().readTree(run.out()).get("flats").get(0);
        return flats.get("high").asDouble() / flats.get("low").asDouble();
    }

    @Test
    void learn_wrongOptions_areRefusedWithTheReason() throws IOException {
        assertThat(learn(LOG, "--write").err()).contains("--write needs a case");
        assertThat(learnForTheCase(LOG, "--write", "--json").err()).contains("don't go together");
        assertThat(learn(LOG, "--wear-limit", "NaN").code()).isEqualTo(2);
        assertThat(Run.of("learn", "none.csv").err()).contains("there is no file none.csv");
        Run untitled = learn("a,b\n1,2\n");
        assertThat(untitled.code()).isEqualTo(2);
        assertThat(untitled.err()).contains("no column date");
    }

    @Test
    void help_ofLearn_fitsTheTerminal() {
        assertThat(Run.of("learn", "--help").lines())
                .allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80));
    }
}
