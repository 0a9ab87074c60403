package footing.io.figure;

import static org.assertj.core.api.Assertions.assertThat;

import footing.core.answer.Options;
import footing.core.answer.Watch;
import footing.core.answer.Workers;
import footing.core.compare.Difference;
import footing.core.compare.Split;
import footing.core.fleet.Case;
import footing.io.casefile.CaseFile;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class WhatDidItTest {
    private static final String[][] EDITS = {
        {"billing: 75", "billing: 95"},
        {"wage: 30", "wage: 38"},
        {"price: 610", "price: 555"},
        {"price: 205", "price: 217.5"},
        {"price: 90", "price: 97"},
        {"price: 223", "price: 230"},
        {"treatPrice: 15", "treatPrice: 17"},
        {"lifeUnsure: 20 %", "lifeUnsure: 30 %"},
        {"cost: 4", "cost: 5"},
        {"cost: 30", "cost: 33"},
        {"keepUntil: 2000", "keepUntil: 2200"},
        {"overtimePremium: 0 %", "overtimePremium: 5 %"},
    };

    private static String text;

    @BeforeAll
    static void readTheExample() throws IOException {
        text = Files.readString(Path.of("../cases/one-machine.yaml"));
    }

    private static Difference after(int edits) {
        String edited = text;
        for (int i = 0; i < edits; i++) {
            assertThat(edited).contains(EDITS[i][0]);
            edited = edited.replace(EDITS[i][0], EDITS[i][1]);
        }
        return Difference.between(
                stated(text), stated(edited), Options.usual().withFutures(300), Workers.one(), Watch.NOBODY);
    }

    private static Case stated(String from) {
        return CaseFile.read(from, "case").found().orElseThrow();
    }

    private static Figure figure(Difference d) {
        return WhatDidIt.of(d, split(d), "did-it", "mower").orElseThrow();
    }

    private static Split split(Difference d) {
        return Objects.requireNonNull(d.recommended());
    }

    private static BigDecimal tableSum(Figure figure) {
        return FigureTable.of(figure).rows().stream()
                .flatMap(r -> r.cells().stream())
                .filter(c -> !c.isEmpty())
                .map(c -> new BigDecimal(c.replace(",", "")))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    @Test
    void of_threeInputs_namesEachLargestFirstAndAddsUpToTheCent() {
        Difference d = after(3);
        Figure figure = figure(d);

        assertThat(figure.places().names())
                .hasSize(3)
                .anyMatch(n -> n.startsWith("Billed per crew-hour"))
                .anyMatch(n -> n.contains("airless"));
        List<Double> sizes = figure.series().stream()
                .flatMap(s -> s.points().stream())
                .sorted(java.util.Comparator.comparingDouble(Point::at))
                .map(p -> -Math.abs(p.value()))
                .toList();
        assertThat(sizes).isSorted();
        assertThat(tableSum(figure))
                .isEqualByComparingTo(BigDecimal.valueOf(split(d).toTheCent().change())
                        .setScale(2, java.math.RoundingMode.HALF_EVEN));
    }

    @Test
    void of_moreThanTenInputs_namesTheRestTogether() {
        Difference d = after(EDITS.length);
        Figure figure = figure(d);

        assertThat(split(d).parts()).hasSize(EDITS.length);
        assertThat(figure.places().names()).hasSize(10).last().isEqualTo("The other three together");
        assertThat(tableSum(figure))
                .isEqualByComparingTo(BigDecimal.valueOf(split(d).toTheCent().change())
                        .setScale(2, java.math.RoundingMode.HALF_EVEN));
    }

    @Test
    void of_nothingChanged_isNoFigure() {
        assertThat(WhatDidIt.of(after(0), split(after(0)), "did-it", "mower")).isEmpty();
    }
}
