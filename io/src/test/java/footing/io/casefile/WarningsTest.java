package footing.io.casefile;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WarningsTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            crewOutput: 40 % | crewOutput: 50 % | case.yaml:16: crews.north: read '110 %'; the crewOutput of its machines (N1, N2) makes more than 100 %
            schedule: [60 %, 40 %] | schedule: [60 %] | case.yaml:13: money.tax.schedule: read '60 %'; part of what was paid is never deducted
            consider: [on-air, sealed] | consider: fits | case.yaml:72: machines.N2.consider: read 'fits'; not known to fit, and considered all the same: sealed
            units: us | records: log.csv | case.yaml:8: records: no value is learned from these records, so they change nothing
            worn: {drive: 100, caster: 300} | worn: {drive: 301} | case.yaml:71: machines.N2.worn.drive: read '301'; more hours than the machine itself has
            treatPrice: 18 | {treatPrice: 18, size: 20x10} | case.yaml:38: assemblies.treated.treats: read 'air'; that assembly has another size
            price: 112 | treatHours: 1 h | case.yaml:45: assemblies.hard.treatHours: nothing is treated, so this changes nothing
            wage: 20 | wage: 2100 | case.yaml:18: crews.north.wage: read '2100'; unusual: 4200 an hour is paid to the crew and 110 billed
            billing: 110 | billing: 1100 | case.yaml:19: crews.north.billing: read '1100'; unusual: 40 an hour is paid to the crew and 1100 billed
            hoursPerYear: 500 | hoursPerYear: 4500 | case.yaml:56: machines.N1.hoursPerYear: read '4500'; unusual: ordinarily from 20 to 2500
            name: yard | name: plug | case.yaml:26: crews.north.fixes[1].name: read 'plug'; two fixes have this name
            """)
    void read_questionableCase_warns(String usual, String changed, String expected) {
        String put = changed.startsWith("{") ? changed.replaceAll("[{}]", "").replace(", ", "\n    ") : changed;
        put = put.startsWith("treatHours") ? usual + "\n    " + put : put;

        Reading reading =
                CaseFile.read(BrokenCase.base().replaceFirst(java.util.regex.Pattern.quote(usual), put), "case.yaml");

        assertThat(reading.problems()).isEmpty();
        assertThat(reading.warnings()).hasSize(1);
        assertThat(reading.warnings().get(0).toString().lines().findFirst()).contains(expected);
    }
}
