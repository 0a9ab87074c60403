package footing.core.compare;

import footing.core.fleet.Case;
import footing.core.fleet.Measures;
import footing.core.fleet.Season;
import footing.core.fleet.Seat;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** What differs between two cases beside their numbers. Texts that change no answer are left out. */
final class Structure {
    private final List<OtherChange> changes = new ArrayList<>();

    private Structure() {}

    static List<OtherChange> compare(Case a, Case b) {
        Structure all = new Structure();
        all.tell("asOf", a.heading().asOf(), b.heading().asOf());
        all.tell("season", days(a.season()), days(b.season()));
        all.money(a.money(), b.money());
        all.each("crews", a.crews(), b.crews(), Case.Crew::id, all::crew);
        all.each("assemblies", a.assemblies(), b.assemblies(), Case.Assembly::id, all::assembly);
        all.each("packages", a.packages(), b.packages(), Case.WheelPackage::id, all::wheels);
        all.each("machines", a.machines(), b.machines(), Case.Machine::id, all::machine);
        return List.copyOf(all.changes);
    }

    private void tell(String path, @Nullable Object before, @Nullable Object after) {
        String was = before == null ? "" : before.toString();
        String is = after == null ? "" : after.toString();
        if (!was.equals(is)) {
            changes.add(new OtherChange(path, was, is));
        }
    }

    private interface Pair<T> {
        void compare(String path, T before, T after);
    }

    private <T> void each(String place, List<T> before, List<T> after, Function<T, String> id, Pair<T> pair) {
        Set<String> ids = new LinkedHashSet<>();
        before.forEach(t -> ids.add(id.apply(t)));
        after.forEach(t -> ids.add(id.apply(t)));
        for (String one : ids) {
            T was = find(before, id, one);
            T is = find(after, id, one);
            if (was != null && is != null) {
                pair.compare(place + "." + one, was, is);
            } else {
                tell(place + "." + one, was == null ? null : "there", is == null ? null : "there");
            }
        }
    }

    private static <T> @Nullable T find(List<T> all, Function<T, String> id, String one) {
        return all.stream().filter(t -> id.apply(t).equals(one)).findFirst().orElse(null);
    }

    private void money(Case.Money a, Case.Money b) {
        Case.Loan was = a.loan();
        Case.Loan is = b.loan();
        if (was != null && is != null) {
            tell("money.loan.for", was.newOnly() ? "new" : "all", is.newOnly() ? "new" : "all");
        } else {
            tell("money.loan", was == null ? null : "there", is == null ? null : "there");
        }
        Case.Tax taxed = a.tax();
        Case.Tax now = b.tax();
        if (taxed != null && now != null) {
            tell("money.tax.schedule", shares(taxed), shares(now));
        } else {
            tell("money.tax", taxed == null ? null : "there", now == null ? null : "there");
        }
    }

    private static String shares(Case.Tax tax) {
        return tax.schedule().stream()
                .map(s -> String.format(Locale.ROOT, "%.2f %%", 100 * s))
                .toList()
                .toString();
    }

    private void crew(String path, Case.Crew a, Case.Crew b) {
        tell(
                path + ".fullWeeks",
                a.fullWeeks().stream().map(w -> days(w.days())).toList(),
                b.fullWeeks().stream().map(w -> days(w.days())).toList());
        List<String> was = a.fixes().stream().map(Case.Fix::name).toList();
        List<String> is = b.fixes().stream().map(Case.Fix::name).toList();
        tell(path + ".fixes", was, is);
        for (int i = 0; i < was.size() && was.equals(is); i++) {
            Case.Fix before = a.fixes().get(i);
            Case.Fix after = b.fixes().get(i);
            String fix = path + ".fixes[" + i + "]";
            tell(fix + ".replaces", replaces(before), replaces(after));
            tell(fix + ".sealable", before.sealable(), after.sealable());
        }
    }

    private static String replaces(Case.Fix fix) {
        return fix.replacesTire() ? "tire" : "nothing";
    }

    private void assembly(String path, Case.Assembly a, Case.Assembly b) {
        tell(path + ".kind", word(a.kind()), word(b.kind()));
        tell(path + ".position", word(a.position()), word(b.position()));
        tell(path + ".treats", a.treats(), b.treats());
        tell(path + ".seat", seat(a.measures()), seat(b.measures()));
    }

    private void wheels(String path, Case.WheelPackage a, Case.WheelPackage b) {
        tell(path + ".drive", a.drive(), b.drive());
        tell(path + ".caster", a.caster(), b.caster());
    }

    private void machine(String path, Case.Machine a, Case.Machine b) {
        tell(path + ".crew", a.crew(), b.crew());
        tell(path + ".new", a.isNew(), b.isNew());
        tell(path + ".carries", a.carries().id(), b.carries().id());
        tell(path + ".consider", ids(a), ids(b));
        tell(path + ".when", words(a), words(b));
        tell(path + ".hub.drive.seat", seat(a.measures()), seat(b.measures()));
        tell(path + ".fitted.wheels", a.fitted(), b.fitted());
    }

    private static @Nullable String seat(Measures measures) {
        Seat seat = measures.seat();
        return seat == null ? null : word(seat);
    }

    private static List<String> ids(Case.Machine m) {
        return m.consider().stream().map(Case.WheelPackage::id).toList();
    }

    private static List<String> words(Case.Machine m) {
        return m.when().stream().map(Structure::word).toList();
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }

    private static String days(Season season) {
        return season.start().toString().substring(2) + " to "
                + season.end().toString().substring(2);
    }
}
