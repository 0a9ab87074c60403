package footing.io.casefile;

import footing.core.fleet.Case;
import footing.core.fleet.Origin;
import footing.core.fleet.Place;
import footing.core.fleet.Season;
import footing.io.catalog.Catalog;
import footing.io.form.Found;
import footing.io.form.Problems;
import footing.io.trial.StatedTrial;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Turns a checked file into a case, and checks what only several values together can get wrong. Where the file is
 * broken the case is as well: it counts only if no error was reported.
 */
final class CaseReader {
    private final Found file;
    private final @Nullable Path folder;
    private final Problems problems;
    private final NamedTrials trials;

    CaseReader(Found file, @Nullable Path folder, Problems problems) {
        this.file = file;
        this.folder = folder;
        this.problems = problems;
        trials = new NamedTrials(file.get("trials"), folder, problems);
    }

    /** The trials that were named, once the case is read. */
    List<StatedTrial> trials() {
        return trials.all();
    }

    Case read() {
        Catalog catalog = new CatalogChoice(file, folder, problems).read();
        Shelf shelf = new Shelf(file.get("assemblies").named(), catalog, isWhole(catalog), problems);
        PackageRack packages = new PackageRack(file.get("packages").named(), shelf, problems);
        List<Case.Crew> crews = new ArrayList<>();
        Map<String, Found> crewParts = file.get("crews").named();
        crewParts.forEach((id, part) -> crews.add(new CrewReader(problems).read(id, part)));
        MachineReader reader = new MachineReader(crewParts.keySet(), packages, catalog, problems);
        List<Case.Machine> machines = new ArrayList<>();
        file.get("machines").items().forEach(m -> machines.add(reader.read(m)));
        checkIds();
        CrewOutputs.check(machines, file, problems);
        shelf.checkTreats();
        checkCurrency(shelf.currencyOfTaken());
        Case stated = new Case(heading(), season(), money(), crews, shelf.inUse(), packages.all(), machines);
        if (!problems.hasErrors()) {
            Workload.check(stated, file, problems);
            return trials.into(new LearnedValues(stated, file.get("records"), folder, problems).filledIn());
        }
        return stated;
    }

    /** False if assemblies may be missing only because the place they stand at is broken. */
    private boolean isWhole(Catalog catalog) {
        boolean unread = file.has("catalog") && catalog.equals(Catalog.NONE);
        return !unread && (file.get("assemblies").isGroup() || !file.has("assemblies"));
    }

    private Case.Heading heading() {
        Found prepared = file.get("prepared");
        LocalDate asOf = file.date("asOf");
        String currency = file.text("currency");
        return new Case.Heading(
                orEmpty(file.text("title")),
                file.text("note"),
                new Case.Prepared(prepared.text("by"), prepared.text("for"), prepared.text("on")),
                asOf == null ? LocalDate.EPOCH : asOf,
                currency == null ? "USD" : currency,
                "si".equals(file.text("units")));
    }

    private Season season() {
        Found season = file.get("season");
        MonthDay start = season.day("start");
        MonthDay end = season.day("end");
        return start == null || end == null ? Season.ALL_YEAR : new Season(start, end);
    }

    private Case.Money money() {
        Found money = file.get("money");
        Found loan = money.get("loan");
        Found tax = money.get("tax");
        return new Case.Money(
                money.numbers(Place.MONEY, Origin.STATED),
                loan.isGroup()
                        ? new Case.Loan(loan.numbers(Place.LOAN, Origin.STATED), !"all".equals(loan.text("for")))
                        : null,
                tax.isGroup() ? new Case.Tax(tax.numbers(Place.TAX, Origin.STATED), schedule(tax)) : null);
    }

    private List<Double> schedule(Found tax) {
        List<Double> shares = new ArrayList<>();
        for (Found item : tax.get("schedule").items()) {
            Double share = item.share();
            if (share != null) {
                shares.add(share);
            }
        }
        Shares.checkSchedule(shares, tax.get("schedule"), problems);
        return shares;
    }

    private void checkIds() {
        Map<String, Integer> lines = new LinkedHashMap<>();
        for (Found machine : file.get("machines").items()) {
            String id = machine.text("id");
            Integer first = id == null
                    ? null
                    : lines.putIfAbsent(id, machine.get("id").at().line());
            if (first != null && id != null) {
                problems.error(
                        machine.get("id").at(),
                        id,
                        "another machine has this id, on line " + first,
                        "give each machine an id of its own");
            }
        }
    }

    /** Currencies never mix. */
    private void checkCurrency(String ofCatalog) {
        String stated = file.text("currency");
        String own = stated == null ? "USD" : stated;
        if (!ofCatalog.isEmpty() && !ofCatalog.equals(own)) {
            problems.error(
                    file.get("catalog").at(),
                    ofCatalog,
                    "its prices are in another currency than the case, which is in " + own,
                    "state the assemblies in this file, with prices in " + own);
        }
    }

    private static String orEmpty(@Nullable String text) {
        return text == null ? "" : text;
    }
}
