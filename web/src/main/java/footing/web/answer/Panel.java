package footing.web.answer;

import footing.core.answer.Answer;
import footing.core.answer.MachineAnswer;
import footing.core.fleet.Called;
import footing.core.fleet.Case;
import footing.core.fleet.InForce;
import footing.core.fleet.Input;
import footing.core.fleet.Key;
import footing.core.fleet.Place;
import footing.io.words.Lists;
import footing.io.words.Origins;
import footing.io.words.TurningGuess;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** Sorts the numbers an answer rests on into the panel beside it. */
final class Panel {
    private static final Set<Key> WORKS =
            EnumSet.of(Key.PEOPLE, Key.DAY, Key.MAKE_UP_TODAY, Key.MAKE_UP_LATER, Key.FULL_TODAY, Key.FULL_LATER);
    private static final Set<Key> FLATS = EnumSet.of(
            Key.FLATS_PER_SEASON, Key.FLATS_PER_1000H, Key.FLATS_AT_DRIVE, Key.FLATS_AT_CASTER, Key.WORN_TIRE_EFFECT);

    private final Case stated;
    private final List<InForce> numbers;
    private final Set<Input> turning;

    private Panel(Answer answer) {
        stated = answer.of();
        numbers = List.copyOf(Origins.inForce(
                stated, answer.machines().stream().map(MachineAnswer::id).toList()));
        turning = TurningGuess.of(answer).stream().map(g -> g.guess().input()).collect(Collectors.toSet());
    }

    static PanelView of(Answer answer) {
        Panel panel = new Panel(answer);
        List<PanelView.Group> groups = new ArrayList<>();
        groups.add(panel.group("works", "How the crew works", n -> WORKS.contains(key(n))));
        groups.add(panel.group("charges", "What they charge", n -> place(n) == Place.CREW && !WORKS.contains(key(n))));
        groups.add(panel.group("flats", "How often they get flats", n -> FLATS.contains(key(n))));
        groups.add(panel.group("fixes", "What they do about one", n -> place(n) == Place.FIX));
        groups.add(panel.group("machine", "The machine", n -> place(n) == Place.MACHINE && !FLATS.contains(key(n))));
        groups.add(panel.group("wheels", "The wheels", n -> place(n) == Place.ASSEMBLY));
        groups.add(panel.group("money", "Money", n -> place(n) == Place.MONEY));
        return new PanelView(
                groups.stream().filter(g -> !g.sections().isEmpty()).toList());
    }

    private static Key key(InForce n) {
        return n.input().key();
    }

    private static Place place(InForce n) {
        return key(n).place();
    }

    private PanelView.Group group(String id, String title, Predicate<InForce> belongs) {
        Map<String, List<InForce>> sections = new LinkedHashMap<>();
        numbers.stream()
                .filter(belongs)
                .forEach(n -> sections.computeIfAbsent(section(n.input()), s -> new ArrayList<>())
                        .add(n));
        List<SectionView> views = new ArrayList<>();
        sections.forEach((name, some) -> views.add(section(name, some)));
        return new PanelView.Group(id, title, views);
    }

    private SectionView section(String title, List<InForce> some) {
        List<FieldView> first = new ArrayList<>();
        List<FieldView> rest = new ArrayList<>();
        List<Key> order = Arrays.asList(Key.values());
        some.stream()
                .sorted(java.util.Comparator.comparingInt(n -> order.indexOf(key(n))))
                .forEach(n -> {
                    boolean turns = turning.contains(n.input());
                    FieldView field = FieldView.of(n, stated, turns);
                    (field.guess() && !turns ? rest : first).add(field);
                });
        return new SectionView(title, first, rest);
    }

    private String section(Input input) {
        String owner = input.owner();
        return switch (input.key().place()) {
            case MONEY, LOAN, TAX -> "";
            case CREW -> FleetView.crewName(owner);
            case FULL_WEEK -> FleetView.crewName(owner) + ", full weeks " + days(input);
            case FIX ->
                FleetView.crewName(owner) + ": "
                        + stated.crew(owner)
                                .fixes()
                                .get(Integer.parseInt(input.part()))
                                .name();
            case ASSEMBLY -> Lists.capital(Called.in(stated).withSize(owner));
            case MACHINE -> machine(owner);
        };
    }

    private String machine(String id) {
        String kind = stated.machine(id).kind();
        return kind.isEmpty() ? id : id + ", " + kind;
    }

    private String days(Input input) {
        var days = stated.crew(input.owner())
                .fullWeeks()
                .get(Integer.parseInt(input.part()))
                .days();
        return days.start().toString().substring(2) + " to "
                + days.end().toString().substring(2);
    }
}
