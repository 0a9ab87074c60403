package footing.core.records;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Turns a log into what it teaches. */
public final class Learner {
    private final Log log;
    private final Background background;
    private final double wearLimit;
    private final List<History> histories;

    private Learner(Log log, Background background, double wearLimit) {
        this.log = log;
        this.background = background;
        this.wearLimit = wearLimit;
        histories = log.machines().entrySet().stream()
                .filter(e -> !e.getValue().isEmpty())
                .map(e -> new History(e.getKey(), e.getValue()))
                .toList();
    }

    /**
     * What the log teaches.
     *
     * @param wearLimit tread depth in millimeters at which a set is worn out
     */
    public static Learned learn(Log log, Background background, double wearLimit) {
        if (!(wearLimit >= 0)) {
            throw new IllegalArgumentException("a wear limit of " + wearLimit + " mm, must be at least 0");
        }
        return new Learner(log, background, wearLimit).learned();
    }

    private Learned learned() {
        TreadWear wear = new TreadWear(
                histories.stream().flatMap(h -> h.depths.values().stream()).toList());
        List<TreadWear.HoursLeft> left = new ArrayList<>();
        List<String> untold = new ArrayList<>();
        histories.stream()
                .flatMap(h -> h.depths.values().stream())
                .filter(r -> !r.set().contains(", until "))
                .forEach(r ->
                        wear.left(r, wearLimit, Limits.SHARE).ifPresentOrElse(left::add, () -> untold.add(r.set())));
        Map<String, List<Watched>> crews = crews();
        List<Learned.Trend> trends = histories.stream()
                .flatMap(h -> h.trend().map(t -> new Learned.Trend(h.machine, t)).stream())
                .toList();
        return new Learned(flats(crews), contrasts(crews), trends, wear(), lives(), contrasts(), left, untold, fixes());
    }

    private Map<String, List<Watched>> crews() {
        Map<String, List<Watched>> crews = new LinkedHashMap<>();
        Set<String> seen = new HashSet<>();
        for (History h : histories) {
            seen.add(h.machine);
            crews.computeIfAbsent(background.crew(h.machine), c -> new ArrayList<>())
                    .add(Watched.of(h, background));
        }
        for (String machine : background.machines()) {
            if (!seen.contains(machine)) {
                crews.computeIfAbsent(background.crew(machine), c -> new ArrayList<>())
                        .add(Watched.never(machine));
            }
        }
        return crews;
    }

    private static List<Learned.Crew> contrasts(Map<String, List<Watched>> crews) {
        List<Learned.Crew> all = new ArrayList<>();
        crews.forEach((crew, machines) -> all.add(new Learned.Crew(
                crew, CrewContrast.of(machines.stream().map(Watched::weighed).toList()))));
        return all;
    }

    private List<Learned.Flats> flats(Map<String, List<Watched>> crews) {
        List<Learned.Flats> all = new ArrayList<>();
        crews.forEach((crew, machines) -> {
            CrewRates rates =
                    CrewRates.of(machines.stream().map(Watched::weighed).toList(), background.flats());
            for (int i = 0; i < machines.size(); i++) {
                all.add(machines.get(i).learned(crew, rates.rate(i)));
            }
        });
        return all;
    }

    private Learned.Wear wear() {
        List<PowerLaw.Window> windows = sets().filter(s -> s.spot() != Spot.METER)
                .flatMap(s -> s.window().stream())
                .toList();
        int flats = windows.stream().mapToInt(w -> w.ages().size()).sum();
        return new Learned.Wear(flats, windows.size(), PowerLaw.of(windows), MeanCumulative.of(windows));
    }

    private Stream<SetSpan> sets() {
        return histories.stream().flatMap(h -> h.sets.stream());
    }

    private List<Learned.SetLife> lives() {
        Set<String> assemblies = new TreeSet<>();
        sets().map(SetSpan::assembly).forEach(assemblies::add);
        log.purchases().stream().map(Entry::assembly).forEach(assemblies::add);
        return assemblies.stream().map(this::life).toList();
    }

    private Learned.SetLife life(String assembly) {
        List<SetSpan> own = sets().filter(s -> s.assembly().equals(assembly)).toList();
        List<Life> lives = own.stream().flatMap(s -> s.life().stream()).toList();
        int worn = (int) lives.stream().filter(Life::wornOut).count();
        int unsaid =
                (int) own.stream().filter(s -> s.end() == SetSpan.End.UNSAID).count();
        List<Entry> purchases = log.purchases().stream()
                .filter(p -> p.assembly().equals(assembly))
                .toList();
        List<History> takers = takers(assembly);
        List<Entry> during = worn > 0
                // A set followed to its end is among the purchases too; count it once.
                ? List.of()
                : purchases.stream().filter(p -> isWatched(p, takers)).toList();
        Optional<Bought> bought = during.isEmpty() ? Optional.empty() : Optional.of(bought(during, takers));
        return new Learned.SetLife(
                assembly,
                lives.size(),
                worn,
                unsaid,
                bought,
                purchases.size() - during.size(),
                WeibullFit.of(lives),
                SurvivalCurve.of(lives),
                LifePosterior.of(lives, bought.stream().toList(), background.life(assembly)));
    }

    /** Every two assemblies that sat at the same end, if any of their sets wore out. */
    private List<Learned.Contrast> contrasts() {
        List<Learned.Contrast> all = new ArrayList<>();
        for (Spot spot : List.of(Spot.DRIVE, Spot.CASTER)) {
            Map<String, List<Life>> lives = new TreeMap<>();
            sets().filter(s -> s.spot() == spot)
                    .forEach(s -> s.life()
                            .ifPresent(l -> lives.computeIfAbsent(s.assembly(), a -> new ArrayList<>())
                                    .add(l)));
            List<String> kinds = List.copyOf(lives.keySet());
            for (int i = 0; i < kinds.size(); i++) {
                for (int j = i + 1; j < kinds.size(); j++) {
                    contrast(kinds.get(i), kinds.get(j), lives).ifPresent(all::add);
                }
            }
        }
        return all;
    }

    private static Optional<Learned.Contrast> contrast(String one, String other, Map<String, List<Life>> lives) {
        List<Life> first = lives.getOrDefault(one, List.of());
        List<Life> second = lives.getOrDefault(other, List.of());
        Learned.Contrast contrast = Learned.Contrast.of(one, other, first, second);
        return contrast.wornOut() + contrast.otherWornOut() == 0 ? Optional.empty() : Optional.of(contrast);
    }

    /** The machines with hours that take an assembly; all of them if nobody knows which do. */
    private List<History> takers(String assembly) {
        Set<String> takers = background.takers(assembly);
        return histories.stream()
                .filter(h -> h.hours() > 0 && (takers.isEmpty() || takers.contains(h.machine)))
                .toList();
    }

    private static boolean isWatched(Entry purchase, List<History> takers) {
        return takers.stream()
                .anyMatch(h ->
                        !purchase.date().isBefore(h.begin) && !purchase.date().isAfter(h.end));
    }

    private static Bought bought(List<Entry> purchases, List<History> takers) {
        double sets = purchases.stream()
                .mapToDouble(p -> p.detail().quantity().orElse(1))
                .sum();
        double hours = takers.stream().mapToDouble(History::hours).sum();
        return new Bought(sets, hours, takers.size());
    }

    private List<Learned.Fixes> fixes() {
        Map<String, List<Entry>> byCrew = new LinkedHashMap<>();
        for (History h : histories) {
            log.machines().getOrDefault(h.machine, List.of()).stream()
                    .filter(r -> r.event() == Event.FLAT && !r.detail().fix().isEmpty())
                    .forEach(r -> byCrew.computeIfAbsent(background.crew(h.machine), c -> new ArrayList<>())
                            .add(r));
        }
        List<Learned.Fixes> fixes = new ArrayList<>();
        byCrew.forEach((crew, rows) -> {
            Map<String, Integer> counts = new LinkedHashMap<>();
            Map<String, List<Double>> minutes = new LinkedHashMap<>();
            for (Entry row : rows) {
                counts.merge(row.detail().fix(), 1, Integer::sum);
                List<Double> times = minutes.computeIfAbsent(row.detail().fix(), f -> new ArrayList<>());
                OptionalDouble time = row.detail().minutes();
                time.ifPresent(times::add);
            }
            List<FixDelay> delays = minutes.entrySet().stream()
                    .map(e -> FixDelay.of(e.getKey(), e.getValue()))
                    .toList();
            fixes.add(new Learned.Fixes(crew, rows.size(), FixShare.of(background.fixes(crew), counts), delays));
        });
        return fixes;
    }
}
