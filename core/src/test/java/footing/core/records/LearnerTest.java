package footing.core.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;

/** From rows to what they teach. */
class LearnerTest {
    private static final Rows ROWS = new Rows();

    private static Learned learn(String... rows) {
        return learn(Background.NONE, rows);
    }

    private static Learned learn(Background background, String... rows) {
        Log log = Log.of(ROWS.read(rows));
        assertThat(log.troubles()).isEmpty();
        return Learner.learn(log, background, 1.6);
    }

    @Test
    void learn_noFlats_isAnUpperBoundAlone() {
        Learned.Flats flats =
                learn("2026-04-01 A begin 300", "2026-11-01 A end 900").flats().get(0);
        assertThat(flats.boundOnly()).isTrue();
        assertThat(flats.exact().orElseThrow().low()).isZero();
        assertThat(flats.exact().orElseThrow().high()).isCloseTo(2.302585 / 600, within(1e-8));
    }

    @Test
    void learn_fourFlats_countsThemOverTheHoursWatched() {
        Learned.Flats flats = learn(
                        "2026-04-01 A begin 300",
                        "2026-05-01 A flat 350",
                        "2026-05-20 A flat - caster",
                        "2026-06-01 A flat 420 quantity=2",
                        "2026-11-01 A end 900")
                .flats()
                .get(0);
        assertThat(flats.counted()).isEqualTo(4);
        assertThat(flats.hours()).isEqualTo(600);
        assertThat(flats.exposure()).isCloseTo(600, within(1e-9));
        assertThat(flats.exact().orElseThrow().low()).isCloseTo(1.744770 / 600, within(1e-8));
        assertThat(flats.rate().median() * 1000).isBetween(5.0, 7.5);
    }

    @Test
    void learn_setThatSeldomGoesFlat_countsForFewerHours() {
        Background sealant = new Background() {
            @Override
            public double ofAir(String machine, String assembly) {
                return assembly.equals("sealant") ? 0.3 : 1;
            }
        };
        Learned.Flats flats = learn(
                        sealant,
                        "2026-04-01 A begin 300",
                        "2026-04-01 A fit 300 drive assembly=air",
                        "2026-07-01 A fit 500 drive assembly=sealant",
                        "2026-11-01 A end 900")
                .flats()
                .get(0);
        assertThat(flats.exposure()).isCloseTo(0.6 * (200 + 0.3 * 400) + 0.4 * 600, within(1e-9));
    }

    @Test
    void learn_machineWithoutRows_isToldOfByItsCrew() {
        Background two = new Background() {
            @Override
            public java.util.Set<String> machines() {
                return java.util.Set.of("B");
            }
        };
        Learned learned =
                learn(two, "2026-04-01 A begin 300", "2026-05-01 A flat 350 quantity=30", "2026-11-01 A end 900");
        Learned.Flats b = learned.flats().get(1);
        assertThat(b.machine()).isEqualTo("B");
        assertThat(b.unwatched()).isTrue();
        assertThat(b.rate().median() * 1000).isGreaterThan(10);
    }

    @Test
    void learn_setWornBeforeRecordingBegan_isTakenFromItsAgeOn() {
        String[] rows = {
            "2025-05-01 A fit 100 drive assembly=air",
            "2026-04-01 A begin 600",
            "2026-07-01 A off 800 drive reason=worn",
            "2026-07-01 A fit 800 drive assembly=air",
            "2026-11-01 A end 1100"
        };
        Learned.SetLife life = learn(rows).lives().get(0);
        assertThat(life.sets()).isEqualTo(2);
        assertThat(life.wornOut()).isEqualTo(1);
        assertThat(life.curve().steps().get(0).age()).isEqualTo(700);
        assertThat(life.curve().steps().get(0).atRisk()).isEqualTo(1);
    }

    /** Ten machines whose long-lived sets alone reached the recording: forgetting that makes lives visibly longer. */
    @Test
    void posterior_entriesForgotten_isVisiblyLonger() {
        double truth = median("truncated");
        double wrong = median("truncated-forgotten");
        assertThat(wrong / truth).isGreaterThan(1.02);
    }

    private static double median(String id) {
        return LifePosterior.of(DataSet.lives(id), java.util.List.of(), LifePrior.COMMON)
                .median()
                .median();
    }

    /** A meter replaced in the middle of a set's life; without the row the set would seem to have lasted 150 h. */
    @Test
    void learn_meterReplaced_setsLifeRunsOn() {
        Learned.SetLife life = learn(
                        "2026-04-01 A begin 300",
                        "2026-04-01 A fit 300 drive assembly=air",
                        "2026-07-01 A reading 800",
                        "2026-07-02 A fit 0 meter",
                        "2026-11-01 A off 150 drive reason=worn",
                        "2026-11-02 A end 160")
                .lives()
                .get(0);
        assertThat(life.curve().steps().get(0).age()).isEqualTo(650);
        assertThat(life.posterior().median().median()).isGreaterThan(550);
    }

    /** Two seasons of purchases without machine and four meter readings. */
    @Test
    void learn_purchasesAndFourReadings_teachHoursPerSet() {
        Learned learned = learn(
                "2025-03-20 A reading 200",
                "2026-11-14 A reading 1600",
                "2025-03-20 B reading 900",
                "2026-11-14 B reading 2100",
                "2025-06-02 - bought - quantity=1 assembly=air",
                "2025-09-11 - bought - quantity=1 assembly=air",
                "2026-05-05 - bought - quantity=1 assembly=air",
                "2026-08-30 - bought - quantity=1 assembly=air");
        Learned.SetLife life = learned.lives().get(0);
        assertThat(life.bought().orElseThrow()).isEqualTo(new Bought(4, 2600, 2));
        Posterior median = life.posterior().median();
        assertThat(median.median()).isBetween(540.0, 720.0);
        Limits limits = median.limits(0.8);
        assertThat(limits.high() / limits.low()).isBetween(1.4, 2.6);
        double prior = 2 * 1.2816 * LifePrior.COMMON.unsure();
        assertThat(Math.log(limits.high() / limits.low())).isLessThan(prior / 1.8);
    }

    @Test
    void learn_noRecords_givesThePrior() {
        LifePosterior none = LifePosterior.of(java.util.List.of(), java.util.List.of(), LifePrior.COMMON);
        assertThat(none.median().median()).isCloseTo(800, within(0.5));
        assertThat(none.median().deviation()).isCloseTo(0.7, within(1e-3));
        assertThat(none.shape().median()).isCloseTo(3.5, within(0.01));
    }

    @Test
    void learn_fixes_addToTheStatedShares() {
        Background stated = new Background() {
            @Override
            public Map<String, Double> fixes(String crew) {
                return Map.of("plug", 0.6, "shop", 0.4);
            }
        };
        Learned.Fixes fixes = learn(
                        stated,
                        "2026-04-01 A begin 300",
                        "2026-05-01 A flat 350 fix=plug minutes=30",
                        "2026-05-09 A flat 360 fix=plug minutes=25",
                        "2026-05-19 A flat 370 fix=plug minutes=40",
                        "2026-11-01 A end 900")
                .fixes()
                .get(0);
        FixShare plug = fixes.shares().stream()
                .filter(f -> f.name().equals("plug"))
                .findFirst()
                .orElseThrow();
        assertThat(plug.mean()).isCloseTo(3.6 / 4, within(1e-12));
        assertThat(plug.limits().low()).isLessThan(0.9);
        assertThat(plug.limits().high()).isGreaterThan(0.95);
        assertThat(fixes.delays().get(0).minutes()).isEmpty();
        assertThat(fixes.delays().get(0).count()).isEqualTo(3);
    }

    @Test
    void fixDelay_eightTimes_givesTheirPercentiles() {
        FixDelay delay = FixDelay.of("plug", java.util.List.of(20.0, 22.0, 25.0, 30.0, 35.0, 36.0, 50.0, 90.0));
        assertThat(delay.minutes().orElseThrow().likely()).isEqualTo(32.5);
        assertThat(delay.minutes().orElseThrow().low()).isCloseTo(21.4, within(1e-9));
    }

    @Test
    void wear_tooFewFlats_cantTell() {
        Learned learned = learn(
                "2026-04-01 A begin 300",
                "2026-04-01 A fit 300 drive assembly=air",
                "2026-05-01 A flat 350 drive",
                "2026-10-01 A flat 850 drive",
                "2026-11-01 A end 900");
        assertThat(learned.wear().flats()).isEqualTo(2);
        assertThat(learned.wear().says()).isEqualTo(Learned.Wear.Says.CANT_TELL);
        assertThat(learned.wear().effect()).isEmpty();
    }

    @Test
    void wear_valveSeats_rise() {
        java.util.List<PowerLaw.Window> seats = DataSet.windows("seats");
        Learned.Wear wear = new Learned.Wear(48, 41, PowerLaw.of(seats), MeanCumulative.of(seats));
        assertThat(wear.says()).isEqualTo(Learned.Wear.Says.MORE);
        assertThat(wear.effect().orElseThrow()).isCloseTo(4 - 8 * Math.pow(2, -1.399579267), within(1e-7));
    }

    @Test
    void learn_depths_giveHoursLeftOrAreRefused() {
        Learned learned = learn(
                "2026-04-01 A begin 0",
                "2026-04-01 A fit 0 drive assembly=air",
                "2026-04-02 A tread 1 drive depth=11",
                "2026-05-05 A tread 100 drive depth=9.6",
                "2026-06-05 A tread 200 drive depth=8.3",
                "2026-07-05 A tread 300 drive depth=6.8",
                "2026-07-06 A end 301");
        assertThat(learned.treads()).singleElement().satisfies(t -> {
            assertThat(t.set()).isEqualTo("A drive");
            assertThat(t.left()).isBetween(340.0, 400.0);
        });
        assertThat(learn("2026-04-01 A begin 0", "2026-04-02 A tread 10 drive depth=11", "2026-11-01 A end 301")
                        .untold())
                .containsExactly("A drive");
    }
}
