package footing.io.casefile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import footing.core.answer.Assessment;
import footing.core.answer.EntryAnswer;
import footing.core.answer.Options;
import footing.core.answer.Watch;
import footing.core.chance.Metalog;
import footing.core.fleet.Case;
import footing.core.fleet.ResolvedAssembly;
import footing.core.fleet.ResolvedCrew;
import footing.core.fleet.ResolvedMachine;
import footing.core.fleet.Resolver;
import footing.core.records.Learned;
import footing.core.records.Learner;
import footing.core.records.LifePosterior;
import footing.core.records.Posterior;
import footing.io.answer.Threads;
import footing.io.edit.LearnedEdit;
import footing.io.form.Problem;
import footing.io.records.CaseBackground;
import footing.io.records.RecordsFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From an invented log through a case that says {@code {learned: …}} to the answer. */
class LearnedAnswerTest {
    private static final Path EXAMPLE = Path.of("../cases/one-machine.yaml");

    @TempDir
    Path folder;

    /** A log of so many sets of a given life, with so many flats on each, all taken to the shop. */
    private Path log(int sets, int life, int flatsPerSet) throws IOException {
        StringBuilder log = new StringBuilder("date,machine,event,hours,position,assembly,reason,fix,delay\n");
        LocalDate day = LocalDate.of(2018, 1, 1);
        log.append(day).append(",mower,begin,0,,,,,\n");
        for (int i = 0; i < sets; i++) {
            int from = i * life;
            log.append(day).append(",mower,fit,").append(from).append(",drive,air,,,\n");
            for (int f = 1; f <= flatsPerSet; f++) {
                day = day.plusDays(20);
                int at = from + life * f / (flatsPerSet + 1);
                log.append("%s,mower,flat,%d,drive,,,to the shop,%d min%n"
                        .formatted(day, at, 60 + 10 * ((i * flatsPerSet + f) % 12)));
            }
            // Lives a little apart, so that they say how far they spread.
            day = day.plusDays(20);
            log.append(day).append(",mower,off,").append(from + life - i % 3).append(",drive,air,worn,,\n");
        }
        log.append(day.plusDays(1)).append(",mower,end,").append(sets * life).append(",,,,,\n");
        Path file = folder.resolve("log.csv");
        Files.writeString(file, log);
        return file;
    }

    private Learned learned(Case stated) throws IOException {
        return Learner.learn(RecordsFile.read(folder.resolve("log.csv"), null).log(), new CaseBackground(stated), 1.6);
    }

    /** The example with all that the log teaches written into it. */
    private Case withLog() throws IOException {
        String text = Files.readString(EXAMPLE);
        Case stated = CaseFile.read(text, "case").found().orElseThrow();
        LearnedEdit.Result result =
                LearnedEdit.write(text, stated, learned(stated), "log.csv").orElseThrow();
        Path file = folder.resolve("one.yaml");
        Files.writeString(file, result.text());
        Reading reading = CaseFile.read(file);
        assertThat(reading.problems()).extracting(Problem::message).isEmpty();
        return reading.found().orElseThrow();
    }

    private static ResolvedMachine resolved(Case known) {
        return Resolver.resolve(known, known.machine("mower"));
    }

    private static ResolvedAssembly air(Case known) {
        return java.util.Objects.requireNonNull(resolved(known).assemblies().get("air"));
    }

    private static EntryAnswer carried(Case known) {
        try (Threads threads = new Threads(1)) {
            Options options = Options.usual().withFutures(2_000).quickly();
            return Assessment.answer(known, options, threads, Watch.NOBODY)
                    .machines()
                    .get(0)
                    .entries()
                    .get(0);
        }
    }

    @Test
    void resolve_learnedFlatsAndLife_areThePosteriors() throws IOException {
        log(4, 200, 6);
        Case known = withLog();
        Learned learned = learned(known);
        Posterior rate = learned.flats().get(0).rate();
        Metalog flats = (Metalog) resolved(known).flatsPerSeason();
        assertThat(flats.low()).isCloseTo(rate.quantile(0.1) * 400, within(1e-9));
        assertThat(flats.likely()).isCloseTo(rate.median() * 400, within(1e-9));
        assertThat(flats.high()).isCloseTo(rate.quantile(0.9) * 400, within(1e-9));
        LifePosterior life = learned.lives().get(0).posterior();
        Metalog varies = (Metalog) air(known).life();
        assertThat(varies.low()).isCloseTo(life.life(0.1), within(1e-9));
        assertThat(varies.high()).isCloseTo(life.life(0.9), within(1e-9));
        assertThat(air(known).lifeUnsure()).isCloseTo(life.median().deviation(), within(1e-9));
    }

    /** 24 flats in 800 h at the drives alone are 30 per 1,000 h, so about 60 in the 2,000 h left; the example says 9. */
    @Test
    void answer_learnedFlatsAndLives_followTheLog() throws IOException {
        log(4, 200, 6);
        EntryAnswer learned = carried(withLog());
        EntryAnswer stated = carried(CaseFile.read(EXAMPLE).found().orElseThrow());
        assertThat(stated.counts().flats()).isBetween(6.0, 12.0);
        assertThat(learned.counts().flats()).isBetween(42.0, 72.0);
        // Sets last 200 h and 650 h; the last is run on until the trade.
        assertThat(learned.counts().sets()).isBetween(7.0, 11.0);
        assertThat(stated.counts().sets()).isBetween(1.5, 4.5);
    }

    /** The same rate and life from a fifth of the records: the futures lie farther apart. */
    @Test
    void answer_fewerRecords_isWider() throws IOException {
        log(10, 200, 6);
        Case many = withLog();
        EntryAnswer wellKnown = carried(many);
        double unsure = air(many).lifeUnsure();
        log(2, 200, 6);
        Case few = withLog();
        EntryAnswer littleKnown = carried(few);
        assertThat(air(few).lifeUnsure()).isGreaterThan(1.3 * unsure);
        assertThat(width(littleKnown)).isGreaterThan(1.4 * width(wellKnown));
    }

    private static double width(EntryAnswer answer) {
        return (answer.cost().p90() - answer.cost().p10()) / answer.cost().mean();
    }

    @Test
    void resolve_learnedFixes_addTheCountsToWhatWasStated() throws IOException {
        log(4, 200, 6);
        Case known = withLog();
        ResolvedCrew.ResolvedFix plug = resolved(known).crew().fixes().get(0);
        ResolvedCrew.ResolvedFix shop = resolved(known).crew().fixes().get(1);
        assertThat(plug.share()).isCloseTo(0.8 / 25, within(1e-12));
        assertThat(shop.share()).isCloseTo(24.2 / 25, within(1e-12));
        // Two rounds of 60, 70 … 170 min: their middle is 115 min. The plug was never used: as stated.
        assertThat(((Metalog) shop.delay()).likely() * 60).isCloseTo(115, within(1e-9));
        assertThat(((Metalog) plug.delay()).likely() * 60).isCloseTo(25, within(1e-9));
    }

    /** What was stated stays the prior, however often the case is read and learned from anew. */
    @Test
    void learn_fromACaseThatLearned_teachesTheSame() throws IOException {
        log(4, 200, 6);
        Case known = withLog();
        assertThat(new CaseBackground(known).fixes("me")).containsEntry("plug on site", 0.8);
        Case stated = CaseFile.read(EXAMPLE).found().orElseThrow();
        assertThat(learned(known).fixes()).isEqualTo(learned(stated).fixes());
        String text = Files.readString(folder.resolve("one.yaml"));
        assertThat(LearnedEdit.write(text, known, learned(known), "log.csv")
                        .orElseThrow()
                        .text())
                .isEqualTo(text);
    }

    @Test
    void read_someSharesLearnedOrNothingStated_isRefused() throws IOException {
        log(4, 200, 6);
        String text = Files.readString(EXAMPLE).replace("format:", "records: log.csv\nformat:");
        String some = text.replace("share: 80 %", "share: {learned: share, stated: 80 %}");
        assertThat(messages(some)).anyMatch(m -> m.contains("1 of 2 shares are learned"));
        String bare = text.replace("share: 80 %", "share: {learned: share}");
        assertThat(messages(bare)).anyMatch(m -> m.contains("beside what is stated"));
        String twice = text.replace("share: 80 %", "share: {learned: share, stated: {learned: share, stated: 80 %}}");
        assertThat(messages(twice)).anyMatch(m -> m.contains("only share can be learned here"));
    }

    private java.util.List<String> messages(String text) {
        return CaseFile.read(text, "case", folder).problems().stream()
                .map(p -> p.toString().toLowerCase(Locale.ROOT))
                .toList();
    }

    /** A fix the case doesn't state has no cost to count; the rest add up to a whole and a warning names it. */
    @Test
    void read_fixTheCaseDoesntState_isLeftOutWithAWarning() throws IOException {
        Path log = log(4, 200, 6);
        withLog();
        Files.writeString(log, Files.readString(log).replaceFirst("to the shop", "towed home"));
        Reading reading = CaseFile.read(folder.resolve("one.yaml"));
        assertThat(reading.warnings())
                .singleElement()
                .satisfies(p -> assertThat(p.message()).contains("leave out what the case doesn't state: towed home"));
        ResolvedMachine machine = resolved(reading.found().orElseThrow());
        assertThat(machine.crew().fixes().get(1).share()).isCloseTo(23.2 / 24, within(1e-12));
        assertThat(machine.crew().fixes().stream().mapToDouble(f -> f.share()).sum())
                .isCloseTo(1, within(1e-12));
    }
}
