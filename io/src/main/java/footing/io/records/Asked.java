package footing.io.records;

import footing.core.records.Background;
import footing.core.records.FlatsPrior;
import footing.core.records.LifePrior;
import footing.core.records.Spot;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;

/**
 * A background that remembers what it was asked and what it said. Whatever was worked out from it holds for any other
 * background that says the same to the same questions.
 */
final class Asked implements Background {
    private final Background of;
    private final Map<List<Object>, Answer> answers = new LinkedHashMap<>();

    private record Answer(Function<Background, Object> question, Object said) {
        boolean isOf(Background other) {
            return comparable(question.apply(other)).equals(said);
        }
    }

    Asked(Background of) {
        this.of = of;
    }

    boolean holdsFor(Background other) {
        return answers.values().stream().allMatch(a -> a.isOf(other));
    }

    private <T> T ask(Function<Background, T> question, Object... words) {
        T said = question.apply(of);
        answers.putIfAbsent(List.of(words), new Answer(question::apply, comparable(said)));
        return said;
    }

    /** The order of sets and maps counts too, since results stand in it. */
    private static Object comparable(Object said) {
        if (said instanceof Set<?> set) {
            return List.copyOf(set);
        }
        return said instanceof Map<?, ?> map
                ? map.entrySet().stream()
                        .map(e -> List.of(e.getKey(), e.getValue()))
                        .toList()
                : said;
    }

    @Override
    public String crew(String machine) {
        return ask(b -> b.crew(machine), "crew", machine);
    }

    @Override
    public Set<String> machines() {
        return ask(Background::machines, "machines");
    }

    @Override
    public double flatsAt(String machine, Spot spot) {
        return ask(b -> b.flatsAt(machine, spot), "flatsAt", machine, spot);
    }

    @Override
    public double ofAir(String machine, String assembly) {
        return ask(b -> b.ofAir(machine, assembly), "ofAir", machine, assembly);
    }

    @Override
    public String carried(String machine, Spot spot) {
        return ask(b -> b.carried(machine, spot), "carried", machine, spot);
    }

    @Override
    public OptionalDouble hours(String machine, LocalDate from, LocalDate to) {
        return ask(b -> b.hours(machine, from, to), "hours", machine, from, to);
    }

    @Override
    public Set<String> takers(String assembly) {
        return ask(b -> b.takers(assembly), "takers", assembly);
    }

    @Override
    public Map<String, Double> fixes(String crew) {
        return ask(b -> b.fixes(crew), "fixes", crew);
    }

    @Override
    public FlatsPrior flats() {
        return ask(Background::flats, "flats");
    }

    @Override
    public LifePrior life(String assembly) {
        return ask(b -> b.life(assembly), "life", assembly);
    }
}
