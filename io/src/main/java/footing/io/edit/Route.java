package footing.io.edit;

import footing.core.fleet.Key;
import footing.core.fleet.Place;
import footing.io.form.Node;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The way to one place of a case file. Ids may hold dots and brackets, so a path is followed along the ids that are in
 * the file, longest first.
 *
 * @param key the key of the number that stands there; null for what is no number of a {@link Key}
 */
record Route(String path, List<Step> steps, @Nullable Key key) {
    private static final Pattern INDEX = Pattern.compile("\\[(\\d{1,6})\\]");

    Route {
        steps = List.copyOf(steps);
    }

    static Route of(String path, Node root) {
        List<Step> steps = new ArrayList<>();
        Node here = root;
        String rest = path;
        while (!rest.isEmpty()) {
            String last = rest;
            boolean item = here instanceof Node.Sequence || rest.startsWith("[");
            // A package of an upcharge that isn't there yet can't be found; its id is all that is left.
            boolean upcharge = steps.size() == 3 && steps.get(2).equals(new Step.Name("upcharge"));
            Step step = item ? item(here, rest) : upcharge ? new Step.Name(rest) : name(here, rest);
            steps.add(step);
            rest = rest.substring(length(step, rest));
            rest = rest.startsWith(".") ? rest.substring(1) : rest;
            if (rest.length() == last.length()) {
                break;
            }
            int i = step.in(here);
            here = i < 0 ? new Node.Mapping(1, List.of()) : Step.child(here, i);
        }
        return new Route(path, steps, key(steps).orElse(null));
    }

    /** The number of the same owner and list item under another key. */
    Route sibling(Key other) {
        String name = other.key().substring(other.key().lastIndexOf('.') + 1);
        List<Step> changed = new ArrayList<>(steps.subList(0, steps.size() - 1));
        changed.add(new Step.Name(name));
        return new Route(path.substring(0, path.lastIndexOf('.') + 1) + name, changed, other);
    }

    /** The node there; null if there is none. */
    @Nullable
    Node find(Node root) {
        Node here = root;
        for (Step step : steps) {
            int i = step.in(here);
            if (i < 0) {
                return null;
            }
            here = Step.child(here, i);
        }
        return here;
    }

    private static Step item(Node list, String rest) {
        Matcher index = INDEX.matcher(rest);
        if (index.lookingAt()) {
            return new Step.Index(Integer.parseInt(index.group(1)));
        }
        List<String> ids = new ArrayList<>();
        for (int i = 0; i < Step.size(list); i++) {
            Optional.ofNullable(Step.idOf(Step.child(list, i))).ifPresent(ids::add);
        }
        return new Step.Id(longest(ids, rest));
    }

    private static Step name(Node node, String rest) {
        List<String> names = node instanceof Node.Mapping mapping
                ? mapping.entries().stream().map(e -> e.key().text()).toList()
                : List.of();
        return new Step.Name(longest(names, rest));
    }

    private static String longest(List<String> known, String rest) {
        String best = "";
        for (String name : known) {
            String after = rest.startsWith(name) ? rest.substring(name.length()) : "?";
            boolean whole = after.isEmpty() || after.startsWith(".") || after.startsWith("[");
            best = whole && name.length() > best.length() ? name : best;
        }
        return best.isEmpty() ? rest.split("[.\\[]", 2)[0] : best;
    }

    private static int length(Step step, String rest) {
        if (step instanceof Step.Index) {
            return rest.indexOf(']') + 1;
        }
        return step instanceof Step.Id id
                ? id.id().length()
                : ((Step.Name) step).name().length();
    }

    /** The key by the shape of the way alone; ids don't matter to it. */
    private static Optional<Key> key(List<Step> steps) {
        String top = name(steps, 0);
        String second = name(steps, 1);
        return switch (top) {
            case "money" ->
                second.equals("loan") || second.equals("tax")
                        ? key(second.equals("loan") ? Place.LOAN : Place.TAX, steps, 2)
                        : key(Place.MONEY, steps, 1);
            case "crews" ->
                steps.size() > 3 && steps.get(3) instanceof Step.Index
                        ? key(name(steps, 2).equals("fixes") ? Place.FIX : Place.FULL_WEEK, steps, 4)
                        : key(Place.CREW, steps, 2);
            case "assemblies" -> key(Place.ASSEMBLY, steps, 2);
            case "machines" ->
                steps.size() == 4 && name(steps, 2).equals("upcharge")
                        ? Optional.of(Key.UPCHARGE)
                        : key(Place.MACHINE, steps, 2);
            default -> Optional.empty();
        };
    }

    private static Optional<Key> key(Place place, List<Step> steps, int from) {
        List<String> names = new ArrayList<>();
        for (int i = from; i < steps.size(); i++) {
            names.add(name(steps, i));
        }
        String name = String.join(".", names);
        return Key.of(place).stream()
                .filter(k -> k.key().equals(name) && k != Key.UPCHARGE)
                .findFirst();
    }

    private static String name(List<Step> steps, int i) {
        return i < steps.size() && steps.get(i) instanceof Step.Name name ? name.name() : "";
    }
}
