package footing.io.records;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;

/**
 * Writes {@code cases/quillbrook-records.csv}: three invented seasons of the invented fleet of {@code quillbrook.yaml},
 * as a shop might have kept them. The truth it is drawn from stands here: flats per 1,000 hours by machine, evenly over
 * a set's life; lives of sets as the fits and offs say. The mess is planted: columns of other names and an extra one,
 * rows out of order, hours left out, a new hour meter, a row twice, a reading typed wrong, a date written another way,
 * a flat on a machine nobody has.
 */
final class DemoRecords {
    static final Path FILE = Path.of("..", "cases", "quillbrook-records.csv");
    static final Map<String, Double> TRUE_RATES =
            Map.of("E2", 9.5, "E3", 8.0, "S2", 5.0, "S3", 3.0, "S4", 4.5, "C1", 3.0, "C2", 2.0);
    /** Rows that can't be, as planted. */
    static final int REFUSED = 4;

    private static final long SEED = 20270215;
    private static final int SEASON_DAYS = 238;
    private static final String HEADER =
            "Day,Unit,What,Hour meter,Wheel,Tire,Cause,Repair,Downtime,Paid,Why,Qty,Tread,Driver,Remarks";
    private static final List<String> DRIVERS = List.of("A.", "J.", "M.", "T.");

    private final RandomGenerator random =
            RandomGeneratorFactory.of("L64X128MixRandom").create(SEED);
    private final List<Line> lines = new ArrayList<>();

    private record Line(LocalDate date, String text) {}

    /** One season of a machine: the year, and the hours it began and ended with. */
    private record Season(int year, double from, double to) {
        LocalDate date(double hours) {
            double share = to > from ? (hours - from) / (to - from) : 0;
            return LocalDate.of(year, 3, 22).plusDays((long) Math.floor(share * (SEASON_DAYS - 1)));
        }

        boolean holds(double hours) {
            return hours >= from && hours <= to;
        }
    }

    private record Machine(String id, String crew, List<Season> seasons, double newMeterAt) {
        LocalDate date(double hours) {
            return seasons.stream()
                    .filter(s -> s.holds(hours))
                    .findFirst()
                    .orElseThrow()
                    .date(hours);
        }

        double begin() {
            return seasons.get(0).from;
        }

        double end() {
            return seasons.get(seasons.size() - 1).to;
        }

        /** What the meter shows. */
        String meter(double hours) {
            return String.format(Locale.ROOT, "%.0f", hours >= newMeterAt ? hours - newMeterAt : hours);
        }
    }

    private static Machine machine(String id, String crew, double newMeterAt, double... ends) {
        List<Season> seasons = new ArrayList<>();
        int first = 2026 - (ends.length - 2);
        for (int i = 0; i + 1 < ends.length; i++) {
            seasons.add(new Season(first + i, ends[i], ends[i + 1]));
        }
        return new Machine(id, crew, seasons, newMeterAt);
    }

    static String text() {
        return new DemoRecords().write();
    }

    /** Writes the file anew. */
    public static void main(String[] args) throws IOException {
        Files.writeString(FILE, text());
    }

    private String write() {
        double never = Double.POSITIVE_INFINITY;
        log(machine("E2", "estates", never, 0, 640), "drive24-air 620", "caster13-air");
        log(
                machine("E3", "estates", never, 0, 500, 1060, 1650),
                "drive24-air 585 1220",
                "caster13-air 1150 caster13-solid");
        log(machine("S2", "streets", never, 0, 410), "drive20-air", "caster11-solid");
        log(machine("S3", "streets", 520, 0, 270, 590, 900), "drive20-air 640", "caster11-solid");
        log(machine("S4", "streets", never, 0, 380, 800, 1210), "drive24-air 650", "caster13-air 900");
        log(machine("C1", "school", never, 0, 300), "drive24-air", "caster13-solid");
        log(machine("C2", "school", never, 0, 120), "drive20-air", "caster11-solid");
        purchases();
        mess();
        lines.sort(Comparator.comparing(Line::date));
        // A page entered late.
        Line late = lines.remove(20);
        lines.add(60, late);
        StringBuilder text = new StringBuilder(HEADER).append('\n');
        for (int i = 0; i < lines.size(); i++) {
            text.append(lines.get(i).text).append('\n');
            if (i == 44) {
                text.append(",,,,,,,,,,,,,,\n");
            }
        }
        return text.toString();
    }

    private void log(Machine m, String drives, String casters) {
        add(m, m.begin(), "begin", "", "", "");
        sets(m, "drive", drives.split(" ", -1));
        sets(m, "caster", casters.split(" ", -1));
        for (Season s : m.seasons) {
            for (double x = s.from + 40 + 30 * random.nextDouble(); x < s.to - 10; x += 90 + 60 * random.nextDouble()) {
                add(m, x, "reading", "", "", "");
            }
        }
        if (m.newMeterAt < m.end()) {
            add(m, m.newMeterAt, "fit", "meter", "", ",,,,,,,,new hour meter");
        }
        double rate = TRUE_RATES.getOrDefault(m.id, 0.0) / 1000;
        for (double x = m.begin() + gap(rate); x < m.end(); x += gap(rate)) {
            flat(m, x);
        }
        add(m, m.end(), "end", "", "", "");
    }

    private double gap(double rate) {
        return -Math.log(random.nextDouble()) / rate;
    }

    /** Words: an assembly, the hours its sets wore out at, and another assembly from the last of them on. */
    private void sets(Machine m, String wheel, String[] words) {
        String assembly = words[0];
        String last = words[words.length - 1];
        boolean other = words.length > 2 && !Character.isDigit(last.charAt(0));
        add(m, m.begin(), "fit", wheel, assembly, "");
        double fitted = m.begin();
        for (int i = 1; i < words.length - (other ? 1 : 0); i++) {
            double x = Double.parseDouble(words[i]);
            depths(m, wheel, fitted, x);
            add(m, x, "off", wheel, assembly, ",,,,worn,,,,");
            boolean next = other && i == words.length - 2;
            add(m, x, "fit", wheel, next ? last : assembly, "");
            fitted = x;
        }
        depths(m, wheel, fitted, m.end());
    }

    /** Drive treads, gauged now and then: from 12/32 in down to 2/32 over about 660 h. */
    private void depths(Machine m, String wheel, double fitted, double until) {
        if (!wheel.equals("drive")) {
            return;
        }
        for (double x = fitted + 60; x < until - 20; x += 150) {
            double depth = 12 - (x - fitted) * 10 / 660 + 0.25 * random.nextGaussian();
            add(
                    m,
                    x,
                    "tread",
                    wheel,
                    "",
                    ",,,,,," + String.format(Locale.ROOT, "%.0f", Math.max(depth, 1)) + "/32 in,,");
        }
    }

    private void flat(Machine m, double x) {
        String wheel = random.nextDouble() < 0.6 ? "drive" : "caster";
        boolean solid =
                wheel.equals("caster") && (m.crew.equals("school") || m.id.startsWith("S2") || m.id.equals("S3"));
        double u = random.nextDouble();
        String fix = fix(m.crew, u);
        double typical = fix.equals("swap the wheel")
                ? 20
                : fix.startsWith("plug") ? 33 : fix.equals("out for a day") ? 700 : 130;
        double minutes = typical * Math.exp(0.35 * random.nextGaussian());
        String cause = u < 0.4 ? "thorn" : u < 0.75 ? "nail" : "sidewall";
        String time = minutes > 90
                ? String.format(Locale.ROOT, "%.1f h", minutes / 60)
                : String.format(Locale.ROOT, "%.0f min", minutes);
        String paid = fix.startsWith("plug") ? "4" : fix.equals("tire ruined") ? "$48.00" : "22";
        String rest = cause + "," + fix + "," + time + "," + paid + ",,,," + pick() + ",";
        // A crew on solid casters has all its flats at the drives.
        add(m, x, random.nextDouble() < 0.2 ? "puncture" : "flat", solid ? "drive" : wheel, "", rest);
    }

    private String fix(String crew, double u) {
        return switch (crew) {
            case "estates" ->
                u < 0.6 ? "plug on site" : u < 0.85 ? "to the yard" : u < 0.97 ? "tire ruined" : "out for a day";
            case "streets" -> u < 0.7 ? "swap the wheel" : u < 0.88 ? "plug on site" : "tire ruined";
            default -> u < 0.8 ? "plug on site" : u < 0.92 ? "to the shop" : "tire ruined";
        };
    }

    private String pick() {
        return DRIVERS.get(random.nextInt(DRIVERS.size()));
    }

    private void add(Machine m, double x, String what, String wheel, String tire, String rest) {
        boolean forgotten = what.equals("flat") && random.nextDouble() < 0.25;
        String tail = rest.isEmpty() ? ",,,,,,,," : rest;
        LocalDate date = m.date(x);
        // A new meter shows what it starts at.
        String meter = forgotten ? "" : m.meter(x);
        lines.add(new Line(date, String.join(",", date.toString(), m.id, what, meter, wheel, tire) + "," + tail));
    }

    private void purchases() {
        for (String bought : List.of("2025-04-28 drive24-air", "2026-06-02 drive24-air", "2025-09-30 caster13-air")) {
            String[] words = bought.split(" ", -1);
            lines.add(new Line(
                    LocalDate.parse(words[0]),
                    words[0] + ",,bought,,," + words[1] + ",,,,302.00,,2 tires,,,from the parts counter"));
        }
    }

    private void mess() {
        plant("2025-06-18", "2025-06-18,E3,reading,7930,,,,,,,,,,J.,");
        plant("2026-05-20", "5/20/2026,E2,flat,171,drive,,nail,plug on site,30 min,4,,,,A.,");
        plant("2026-07-07", "2026-07-07,E9,flat,400,drive,,thorn,plug on site,25 min,4,,,,M.,");
        Line twice = lines.stream()
                .filter(l -> l.text.contains("E3,flat") || l.text.contains("E3,puncture"))
                .findFirst()
                .orElseThrow();
        lines.add(twice);
    }

    private void plant(String date, String text) {
        lines.add(new Line(LocalDate.parse(date), text));
    }
}
