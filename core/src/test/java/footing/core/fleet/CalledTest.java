package footing.core.fleet;

import static org.assertj.core.api.Assertions.assertThat;

import footing.core.answer.SmallCase;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CalledTest {
    private static final Case BASE = SmallCase.build();

    private static Case with(String id, String size) {
        List<Case.Assembly> more = new java.util.ArrayList<>();
        BASE.assemblies()
                .forEach(a -> more.add(
                        new Case.Assembly(a.id(), a.kind(), a.position(), "20x10.00-10", a.treats(), a.numbers())));
        more.add(new Case.Assembly(id, Kind.AIR, Position.DRIVE, size, null, Numbers.NONE));
        return new Case(
                BASE.heading(), BASE.season(), BASE.money(), BASE.crews(), more, BASE.packages(), BASE.machines());
    }

    @Test
    void assembly_onlyOneOfItsKind_isCalledByIt() {
        assertThat(Called.in(BASE).assembly("firm-drive")).isEqualTo("airless drives");
        assertThat(Called.in(BASE).wheels("firm-all")).isEqualTo("airless drives and airless casters");
    }

    @ParameterizedTest
    @CsvSource({
        "24x12.00-12, 24x12.00-12 air drives, 20x10.00-10 air drives",
        "20x10.00-10, air drives (other), air drives (air-drive)"
    })
    void assembly_twoOfItsKind_isToldBySizeOrElseById(String size, String other, String own) {
        Called called = Called.in(with("other", size));

        assertThat(called.assembly("other")).isEqualTo(other);
        assertThat(called.assembly("air-drive")).isEqualTo(own);
    }

    @Test
    void assembly_otherOneNotInQuestion_needsNoSize() {
        Case two = with("other", "24x12.00-12");

        assertThat(Called.among(two, List.of("air-drive", "firm-drive")).assembly("air-drive"))
                .isEqualTo("air drives");
    }

    @Test
    void withSize_sameSizeTwice_namesTheIdAsWell() {
        assertThat(Called.in(with("other", "24x12.00-12")).withSize("other")).isEqualTo("air drives, 24x12.00-12");
        assertThat(Called.in(with("other", "20x10.00-10")).withSize("other"))
                .isEqualTo("air drives, 20x10.00-10 (other)");
    }

    @Test
    void wheels_unknownId_isLeftAsItIs() {
        assertThat(Called.in(BASE).wheels("nothing-such")).isEqualTo("nothing-such");
    }
}
