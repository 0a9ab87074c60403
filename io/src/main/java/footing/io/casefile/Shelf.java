package footing.io.casefile;

import footing.core.fleet.Case;
import footing.core.fleet.Origin;
import footing.io.catalog.AssemblyForm;
import footing.io.catalog.AssemblyGeometry;
import footing.io.catalog.Catalog;
import footing.io.form.At;
import footing.io.form.Found;
import footing.io.form.Problems;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The assemblies a case can name: its own first, then those of its catalog. */
final class Shelf {
    private final Map<String, Found> parts;
    private final Map<String, Case.Assembly> own = new LinkedHashMap<>();
    private final Catalog catalog;
    private final Map<String, Case.Assembly> taken = new LinkedHashMap<>();
    private final boolean whole;
    private final Set<String> known = new LinkedHashSet<>();
    private final Problems problems;

    Shelf(Map<String, Found> parts, Catalog catalog, boolean whole, Problems problems) {
        this.whole = whole;
        this.parts = parts;
        this.catalog = catalog;
        this.problems = problems;
        known.addAll(parts.keySet());
        known.addAll(catalog.articles().keySet());
        parts.forEach((id, part) -> {
            Case.Assembly assembly = AssemblyForm.read(id, part, Origin.STATED);
            if (assembly != null) {
                AssemblyGeometry.check(assembly, part, problems);
                own.put(id, assembly);
            }
        });
    }

    /** The assembly of this id; null, and reported, if there is none, and null if it was found broken. */
    Case.@Nullable Assembly find(@Nullable String id, At at) {
        if (id == null) {
            return null;
        }
        if (parts.containsKey(id)) {
            return own.get(id);
        }
        Catalog.Article article = catalog.articles().get(id);
        if (article == null) {
            reportUnknown(id, at);
            return null;
        }
        Case.Assembly before = taken.putIfAbsent(id, article.assembly());
        if (before == null && article.assembly().treats() != null) {
            find(article.assembly().treats(), at);
        }
        return article.assembly();
    }

    /** The assembly of an id, if it can be used. */
    Optional<Case.Assembly> named(@Nullable String id) {
        return id == null ? Optional.empty() : Optional.ofNullable(own.getOrDefault(id, taken.get(id)));
    }

    private void reportUnknown(String id, At at) {
        if (whole && known.isEmpty()) {
            problems.error(at, id, "no such assembly", "state it under assemblies, or name a catalog");
        } else if (whole) {
            problems.unknown(at, id, "no such assembly", known);
        }
    }

    /** Own assemblies, and those of the catalog that were asked for. */
    List<Case.Assembly> inUse() {
        List<Case.Assembly> all = new ArrayList<>(own.values());
        all.addAll(taken.values());
        return all;
    }

    String currencyOfTaken() {
        return taken.isEmpty() ? "" : catalog.currency();
    }

    void checkTreats() {
        own.forEach((id, assembly) -> {
            Found part = parts.get(id);
            if (part != null) {
                Case.Assembly treated =
                        find(assembly.treats(), part.get("treats").at());
                AssemblyForm.checkTreats(assembly, treated, part, problems);
            }
        });
    }
}
