package footing.io.edit;

import footing.core.fleet.Key;
import footing.core.fleet.Place;
import footing.io.form.Node;
import java.util.ArrayList;
import java.util.List;

/** Where a key that isn't there yet goes: behind those that usually stand before it. */
final class Order {
    private static final List<String> TOP = List.of(
            "format",
            "title",
            "note",
            "prepared",
            "asOf",
            "currency",
            "units",
            "catalog",
            "money",
            "season",
            "crews",
            "assemblies",
            "packages",
            "machines",
            "records");

    private Order() {}

    /** The index a new key gets among the entries of a group that the first few steps lead to. */
    static int place(Node.Mapping group, List<Step> way, String name) {
        List<String> order = names(way);
        int own = order.indexOf(name);
        int size = group.entries().size();
        int after = size;
        for (int i = size - 1; i >= 0 && own >= 0; i--) {
            int other = order.indexOf(group.entries().get(i).key().text());
            if (other >= 0 && other < own) {
                return i + 1;
            }
            after = other > own ? i : after;
        }
        return after;
    }

    private static List<String> names(List<Step> way) {
        if (way.isEmpty()) {
            return TOP;
        }
        String top = way.get(0) instanceof Step.Name name ? name.name() : "";
        int depth = way.size();
        return switch (top) {
            case "money" -> depth == 1 ? with(Place.MONEY, "loan", "tax") : depth == 2 ? loanOrTax(way) : List.of();
            case "crews" -> depth == 2 ? with(Place.CREW, "fullWeeks", "fixes") : depth == 4 ? item(way) : List.of();
            case "assemblies" -> depth == 2 ? with(Place.ASSEMBLY) : List.of();
            case "machines" -> depth == 2 ? with(Place.MACHINE) : depth == 3 ? List.of("drive", "caster") : List.of();
            default -> List.of();
        };
    }

    private static List<String> loanOrTax(List<Step> way) {
        return way.get(1).equals(new Step.Name("loan")) ? with(Place.LOAN, "for") : with(Place.TAX, "schedule");
    }

    private static List<String> item(List<Step> way) {
        boolean fix = way.get(2).equals(new Step.Name("fixes"));
        List<String> names = new ArrayList<>(fix ? List.of("name") : List.of("from", "to"));
        names.addAll(fix ? with(Place.FIX, "replaces", "sealable") : with(Place.FULL_WEEK));
        return names;
    }

    private static List<String> with(Place place, String... others) {
        List<String> names = new ArrayList<>();
        for (Key key : Key.of(place)) {
            String name = key.key().split("\\.", 2)[0];
            if (!names.contains(name)) {
                names.add(name);
            }
        }
        names.addAll(List.of(others));
        return names;
    }
}
