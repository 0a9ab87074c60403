package footing.io.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import footing.core.fleet.Case;
import footing.core.fleet.Measure;
import footing.core.fleet.Place;
import footing.io.casefile.CaseFile;
import org.junit.jupiter.api.Test;

class MeasureEditTest {
    private static final String FLEET = CaseEditTest.read("quillbrook.yaml");
    private static final double INCH = 0.0254;

    private static MeasureEdit of(String text, String owner) {
        return new MeasureEdit(text, CaseFile.read(text, "case").found().orElseThrow(), owner);
    }

    private static Case made(Edited edited) {
        assertThat(edited.problems()).isEmpty();
        return ((Edited.Changed) edited).stated();
    }

    @Test
    void set_measureNobodyStated_isAddedAndAllElseStays() {
        Edited edited = of(FLEET, "S4").set(Measure.CLEARANCE_DRIVE, "1 1/2");

        assertThat(made(edited).machine("S4").measures().get(Measure.CLEARANCE_DRIVE))
                .hasValueCloseTo(1.5 * INCH, within(1e-12));
        assertThat(edited.text().lines().filter(l -> !FLEET.contains(l))).hasSize(1);
    }

    @Test
    void set_measureInsideAGroup_changesItAlone() {
        assertThat(of(FLEET, "E1").set(Measure.TRACK_DRIVE, "42").text())
                .isEqualTo(FLEET.replaceFirst("track: \\{drive: 41.9 in", "track: {drive: 42 in"));
    }

    @Test
    void set_emptied_isTakenBack() {
        Case stated = made(of(FLEET, "E1").set(Measure.TRACK_DRIVE, "  "));

        assertThat(stated.machine("E1").measures().has(Measure.TRACK_DRIVE)).isFalse();
        assertThat(stated.machine("E1").measures().has(Measure.TRACK_CASTER)).isTrue();
        assertThat(of(FLEET, "E1").set(Measure.GATE, "").text()).isEqualTo(FLEET);
    }

    @Test
    void set_rating_keepsItsPressure() {
        String more = of(FLEET, "drive24-air").set(Measure.MAX_LOAD, "1600").text();
        String softer = of(more, "drive24-air").set(Measure.MAX_LOAD_AT, "20").text();

        assertThat(softer).contains("maxLoad: {load: 1600 lb, at: 20 psi}");
        assertThat(of(softer, "drive24-air").set(Measure.MAX_LOAD_AT, "").text())
                .contains("maxLoad: 1600 lb");
        assertThat(made(of(softer, "drive24-air").set(Measure.MAX_LOAD, ""))
                        .assembly("drive24-air")
                        .measures()
                        .has(Measure.MAX_LOAD))
                .isFalse();
    }

    @Test
    void set_pressureOfARatingStatedAlone_makesThemOne() {
        String alone = FLEET.replaceFirst("maxLoad: \\{load: 1160 lb, at: 22 psi\\}", "maxLoad: 1160 lb");

        assertThat(of(alone, "drive20-air").set(Measure.MAX_LOAD_AT, "22").text())
                .isEqualTo(FLEET);
    }

    @Test
    void set_outOfRangeOrNonsense_isRefusedAndTheTextStays() {
        for (String typed : new String[] {"tall", "900 ft", "-3", "1e400", "{a: 1}", "12 psi", "x".repeat(5000)}) {
            Edited edited = of(FLEET, "E1").set(Measure.WHEELBASE, typed);

            assertThat(edited).as(typed).isInstanceOf(Edited.Refused.class);
            assertThat(edited.text()).isEqualTo(FLEET);
        }
    }

    @Test
    void set_sizeAndSeat_areTexts() {
        String other = of(FLEET, "drive24-foam")
                .set(Place.ASSEMBLY, "size", " 23x10.5-12 ")
                .text();

        assertThat(made(of(other, "drive24-foam").set(Place.ASSEMBLY, "seat", "flat"))
                        .assembly("drive24-foam")
                        .size())
                .isEqualTo("23x10.5-12");
        assertThat(of(FLEET, "S3").set(Place.MACHINE, "hub.drive.seat", "cone").text())
                .contains("hub: {drive: {bolts: 4, circle: 4 in, seat: cone}, caster");
        assertThat(of(FLEET, "S3").set(Place.MACHINE, "hub.drive.seat", "square"))
                .isInstanceOf(Edited.Refused.class);
    }

    @Test
    void setFitted_withOtherWheelsOn_dropsWhatWasMeasuredBefore() {
        String first = of(FLEET, "E1")
                .setFitted(Measure.FITTED_REAR_LEFT, "3 5/16", "airless-24")
                .text();
        Edited second = of(first, "E1").setFitted(Measure.FITTED_REAR_RIGHT, "3.3", "foam-24");

        assertThat(first).contains("fitted: {tips: {rearLeft: 3.3125 in}, wheels: airless-24}");
        Case.Machine machine = made(second).machine("E1");
        assertThat(machine.fitted()).isEqualTo("foam-24");
        assertThat(machine.measures().has(Measure.FITTED_REAR_LEFT)).isFalse();
        assertThat(machine.measures().has(Measure.FITTED_REAR_RIGHT)).isTrue();
    }

    @Test
    void setFitted_refusedOrEmptied_losesNothingOfTheOthers() {
        String first = of(FLEET, "E1")
                .setFitted(Measure.FITTED_REAR_LEFT, "3.3", "airless-24")
                .text();

        assertThat(of(first, "E1")
                        .setFitted(Measure.FITTED_REAR_LEFT, "tall", "foam-24")
                        .text())
                .isEqualTo(first);
        assertThat(of(first, "E1")
                        .setFitted(Measure.FITTED_REAR_RIGHT, "", "foam-24")
                        .text())
                .isEqualTo(first);
    }

    @Test
    void standing_value_isAsWrittenAndOnlyOfASingleOne() {
        Standing standing = Standing.of("\uFEFF" + FLEET);

        assertThat(standing.value("machines.E1.deck.threadPitch")).hasValue("1.5 mm");
        assertThat(standing.value("machines.E1.deck")).isEmpty();
        assertThat(standing.isGroup("assemblies.drive24-air.maxLoad")).isTrue();
        assertThat(standing.has("assemblies.nowhere")).isFalse();
        assertThat(Standing.of("a: [").has("a")).isFalse();
    }
}
