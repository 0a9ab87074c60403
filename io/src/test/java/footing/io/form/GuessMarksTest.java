package footing.io.form;

import static org.assertj.core.api.Assertions.assertThat;

import footing.core.fleet.Case;
import footing.core.fleet.Key;
import footing.core.fleet.Numbers;
import footing.core.fleet.Origin;
import footing.io.casefile.CaseFile;
import footing.io.edit.CaseEdit;
import footing.io.edit.Edited;
import org.junit.jupiter.api.Test;

/** A comment with the word 'guess' marks a value as one, until somebody states it. */
class GuessMarksTest {
    private static final String CASE = """
            format: footing-case/1
            title: One mower
            asOf: 2027-03-01
            crews:
              me:
                people: 1
                wage: 30        # a guess: look at the payroll
                # on top of the wage; guess: ask the bookkeeper:
                #burden: 18 %
                # charged by the hour; guess: look at the bills,
                # the last ones:
                billing: 75
                day: 9 h        # yours, not a guess of anybody
                fixes:
                  - {name: "plug # guess", share: 100 %, delay: 25 min, cost: 4}
            assemblies:
              air: {kind: air, position: drive, price: 205, tirePrice: 128, life: {low: 450, likely: 650, high: 900}}
              solid: {kind: solid, position: caster, price: 90, life: {low: 700, likely: 1000, high: 1400}}
            packages:
              now: {drive: air, caster: solid}
            machines:
              - id: m
                crew: me
                hoursNow: 100
                keepUntil: 2000
                hoursPerYear: 400
                crewOutput: 100 %
                carries: now
                flatsPerSeason: 3
                worn:
                  drive: 100    # guess: nobody wrote it down
                  caster: 90
            """;

    private static Case read(String text) {
        return CaseFile.read(text, "case.yaml").found().orElseThrow();
    }

    private static Numbers crew(String text) {
        return read(text).crews().get(0).numbers();
    }

    private static String set(String text, String path, String typed) {
        assertThat(CaseEdit.set(text, path, typed)).isInstanceOf(Edited.Changed.class);
        return ((Edited.Changed) CaseEdit.set(text, path, typed)).text();
    }

    @Test
    void read_commentBehindOrAboveSaysGuess_isGuessed() {
        assertThat(crew(CASE).origin(Key.WAGE)).isEqualTo(Origin.GUESSED);
        assertThat(crew(CASE).origin(Key.BILLING)).isEqualTo(Origin.GUESSED);
        assertThat(read(CASE).machine("m").numbers().origin(Key.WORN_DRIVE)).isEqualTo(Origin.GUESSED);
    }

    @Test
    void read_noGuessOrYoursOrInQuotes_isStated() {
        assertThat(crew(CASE).origin(Key.PEOPLE)).isEqualTo(Origin.STATED);
        assertThat(crew(CASE).origin(Key.DAY)).isEqualTo(Origin.STATED);
        assertThat(read(CASE).machine("m").numbers().origin(Key.WORN_CASTER)).isEqualTo(Origin.STATED);
        assertThat(GuessMarks.lines(CASE).get(15)).isFalse();
    }

    @Test
    void set_guessWithCommentBehind_isYoursAndKeepsTheWords() {
        String changed = set(CASE, "crews.me.wage", "28");
        assertThat(changed).contains("wage: 28        # yours now; was: a guess: look at the payroll\n");
        assertThat(crew(changed).origin(Key.WAGE)).isEqualTo(Origin.STATED);
        assertThat(crew(changed).origin(Key.BILLING)).isEqualTo(Origin.GUESSED);
    }

    @Test
    void set_guessWithCommentAbove_isYours() {
        String changed = set(CASE, "crews.me.billing", "80");
        assertThat(changed).contains("""
                    # yours now; was: charged by the hour; guess: look at the bills,
                    # the last ones:
                    billing: 80
                """);
        assertThat(crew(changed).origin(Key.BILLING)).isEqualTo(Origin.STATED);
    }

    @Test
    void set_switchedOff_isSwitchedOnInItsPlace() {
        String changed = set(CASE, "crews.me.burden", "21 %");
        assertThat(changed).contains("ask the bookkeeper:\n    burden: 21 %\n").doesNotContain("#burden");
        assertThat(crew(changed).origin(Key.BURDEN)).isEqualTo(Origin.STATED);
    }

    @Test
    void set_windowsLineEnds_stay() {
        String changed = set(CASE.replace("\n", "\r\n"), "crews.me.billing", "80");
        assertThat(changed.replace("\r\n", "")).doesNotContain("\n").doesNotContain("\r");
        assertThat(crew(changed).origin(Key.BILLING)).isEqualTo(Origin.STATED);
    }
}
