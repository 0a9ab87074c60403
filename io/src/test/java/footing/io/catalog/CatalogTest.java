package footing.io.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import footing.core.fleet.Key;
import footing.core.fleet.Kind;
import footing.core.fleet.Origin;
import footing.core.fleet.Position;
import footing.io.form.Problems;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class CatalogTest {
    private static final Catalog STARTER = Catalog.starter();

    @Test
    void starter_everyArticle_isTypicalAndDated() {
        assertThat(STARTER.articles().values()).isNotEmpty().allSatisfy(a -> {
            assertThat(a.quoted()).isFalse();
            assertThat(a.date()).isEqualTo(LocalDate.of(2026, 1, 1));
            assertThat(a.assembly().numbers().stated().values())
                    .allSatisfy(s -> assertThat(s.origin()).isEqualTo(Origin.TYPICAL));
        });
    }

    @Test
    void starter_sizes_haveTheKindsThatExist() {
        Map<Position, Map<String, Set<Kind>>> kinds = new TreeMap<>();
        STARTER.articles()
                .values()
                .forEach(a -> kinds.computeIfAbsent(a.assembly().position(), p -> new TreeMap<>())
                        .computeIfAbsent(String.valueOf(a.assembly().size()), s -> new TreeSet<>())
                        .add(a.assembly().kind()));

        assertThat(kinds.get(Position.DRIVE))
                .containsOnlyKeys("18x8.5-8", "20x10-10", "23x10.5-12", "24x12-12", "26x12-12")
                .allSatisfy((size, has) ->
                        assertThat(has).containsExactly(Kind.AIR, Kind.SEALANT, Kind.FOAM, Kind.AIRLESS));
        assertThat(kinds.get(Position.CASTER))
                .containsOnlyKeys("11x4-5", "13x5-6", "13x6.5-6", "15x6-6")
                .allSatisfy((size, has) -> assertThat(has).containsExactly(Kind.values()));
    }

    @Test
    void starter_biggerTire_costsMoreInEveryKind() {
        for (String kind : List.of("air", "sealant", "foam", "airless")) {
            double before = 0;
            for (String size : List.of("18x8.5", "20x10", "23x10.5", "24x12", "26x12")) {
                double price = price("drive-" + size + "-" + kind);
                assertThat(price).isGreaterThan(before);
                before = price;
            }
        }
    }

    @Test
    void starter_kindsOfOneSize_costInTheUsualOrder() {
        for (String size : List.of("18x8.5", "20x10", "23x10.5", "24x12", "26x12")) {
            String id = "drive-" + size + "-";
            assertThat(List.of(price(id + "air"), price(id + "sealant"), price(id + "foam"), price(id + "airless")))
                    .isSorted();
        }
    }

    @Test
    void starter_classes_areThere() {
        assertThat(STARTER.classes()).containsKeys("stand-on", "zero-turn", "walk-behind-belt");
        assertThat(Objects.requireNonNull(STARTER.classes().get("zero-turn")).driveSizes())
                .contains("24x12-12");
    }

    @Test
    void read_treatsAnUnknownAssembly_isAProblemWithItsLine() {
        Problems problems = new Problems("prices.yaml");
        CatalogFile.read("""
                format: footing-catalog/1
                title: x
                date: 2026-01-01
                basis: guess
                assemblies:
                  a: {kind: sealant, position: drive, price: 1, life: 1, treats: b, treatPrice: 1}
                """, problems);

        assertThat(problems.errors().stream().map(Object::toString))
                .containsExactly(
                        "prices.yaml:4: basis: read 'guess'; one of a few words is due\n   try: typical, quoted",
                        "prices.yaml:6: assemblies.a.treats: read 'b'; no assembly of this catalog\n"
                                + "   did you mean \"a\"?");
    }

    private static double price(String id) {
        Catalog.Article article = Objects.requireNonNull(STARTER.articles().get(id));
        return article.assembly().numbers().get(Key.PRICE).orElseThrow().likely();
    }
}
