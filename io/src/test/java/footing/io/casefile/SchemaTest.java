package footing.io.casefile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SchemaTest {
    private static final SchemaRegistry REGISTRY =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    private static final Schema CASE = REGISTRY.getSchema(CaseSchema.json());

    static List<BrokenCase> seenByBoth() {
        return BrokenCase.all().stream().filter(b -> b.seenBy().equals("both")).toList();
    }

    static List<BrokenCase> seenByReaderAlone() {
        return BrokenCase.all().stream()
                .filter(b -> b.seenBy().equals("reader"))
                .toList();
    }

    @Test
    void caseSchema_itself_obeysItsDialect() {
        Schema dialect = REGISTRY.getSchema(com.networknt.schema.SchemaLocation.of(CaseSchema.DIALECT));

        assertThat(dialect.validate(CaseSchema.json(), InputFormat.JSON)).isEmpty();
        assertThat(dialect.validate(CaseSchema.catalogJson(), InputFormat.JSON)).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("footing.io.casefile.Examples#all")
    void caseSchema_example_isAccepted(Examples example) {
        assertThat(faults(example.yaml())).isEmpty();
    }

    @Test
    void caseSchema_base_isAccepted() {
        assertThat(faults(BrokenCase.base())).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("seenByBoth")
    void caseSchema_brokenCase_isRefused(BrokenCase broken) {
        assertThat(faults(broken.text())).isNotEmpty();
    }

    /** What no schema sees: should one of these be refused one day, its mark in the list is out of date. */
    @ParameterizedTest
    @MethodSource("seenByReaderAlone")
    void caseSchema_faultOnlyTheReaderSees_isAccepted(BrokenCase broken) {
        assertThat(faults(broken.text())).isEmpty();
    }

    @Test
    void catalogSchema_starter_isAccepted() {
        Schema schema = REGISTRY.getSchema(CaseSchema.catalogJson());
        String starter = JsonTwin.of(Examples.text("src/main/resources/footing/io/catalog/starter-catalog.yaml"));

        assertThat(schema.validate(starter, InputFormat.JSON)).isEmpty();
        assumeThat(starter).contains("\"typical\"");
        assertThat(schema.validate(starter.replace("\"typical\"", "\"guess\""), InputFormat.JSON))
                .isNotEmpty();
    }

    private static List<Error> faults(String yaml) {
        return CASE.validate(JsonTwin.of(yaml), InputFormat.JSON);
    }
}
