package footing.io.answer;

import footing.core.fleet.Case;
import footing.core.fleet.Measures;
import footing.core.fleet.Position;
import footing.core.ground.Change;
import footing.core.ground.Judged;
import footing.core.ground.MachineGround;
import footing.core.ground.Marking;
import footing.core.ground.PackageGround;
import footing.core.ground.Patch;
import footing.core.ground.SlopeLoads;
import footing.core.ground.Tip;
import footing.core.ground.Wetness;
import footing.core.quantity.Angle;
import footing.core.quantity.Length;
import footing.io.trial.TrialQuote;
import footing.io.words.SlopeCaution;
import java.io.Writer;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * Writes a machine on the ground as a JSON document of the format {@value #FORMAT}. Lengths are in millimeters, masses in
 * kilograms, pressures in kilopascals, angles in degrees. A figure that is not there says why: {@code lacks} or {@code
 * outside}. Every slope figure stands inside an object that carries the caution.
 */
public final class GroundJson {
    public static final String FORMAT = "footing-ground/1";

    private final JsonText json;
    private final JudgedJson judged;
    private final MachineGround ground;

    private GroundJson(JsonText json, MachineGround ground) {
        this.json = json;
        this.ground = ground;
        judged = new JudgedJson(json);
    }

    /** Writes the document, with verdicts of trials beside it, and leaves the writer open. */
    public static void write(Case stated, MachineGround ground, List<TrialQuote> trials, Writer to) {
        try (JsonText json = new JsonText(to)) {
            json.object(() -> new GroundJson(json, ground).document(stated, trials));
        }
    }

    private void document(Case stated, List<TrialQuote> trials) {
        json.text("format", FORMAT);
        json.text("case", stated.heading().title());
        json.text("machine", ground.machine().id());
        json.text("carried", ground.carried().wheels().id());
        json.objects("packages", ground.packages(), this::wheels);
        json.objects("trials", trials, this::trial);
    }

    private void trial(TrialQuote quote) {
        json.text("title", quote.title());
        json.text("sentence", quote.verdict());
        json.array("doubts", () -> quote.doubts().forEach(json::text));
        json.array("limits", () -> quote.limits().forEach(json::text));
    }

    private void wheels(PackageGround p) {
        json.text("id", p.wheels().id());
        patch("drive", p.patch(Position.DRIVE), p.wheels().drive().measures().printed());
        patch("caster", p.patch(Position.CASTER), p.wheels().caster().measures().printed());
        judged.number("below100mmKilopascals", p.below().map(x -> x.kilopascals()));
        json.object("marking", () -> marking(p));
        json.objects("pressureAgainstInflation", p.curve(), point -> {
            json.number("inflationKilopascals", point.inflation().kilopascals());
            json.number("groundKilopascals", point.ground().kilopascals());
        });
        judged.write("quarterTurn", p.scrub(), s -> {
            json.number("lockedMillimeters", s.locked().millimeters());
            json.number("counterRotatingMillimeters", s.counter().millimeters());
        });
        changes(p.change());
        judged.write("drift", p.drift(), r -> {
            json.number("oneDriveSmallerByMillimeters", PackageGround.UNLIKE.millimeters());
            json.number("radiusMillimeters", r.millimeters());
        });
        json.object("slope", () -> slope(p));
    }

    private void patch(String name, Judged<Patch> patch, Measures.@Nullable Printed printed) {
        judged.write(name, patch, p -> {
            json.number("meanKilopascals", p.mean().kilopascals());
            json.number("lowKilopascals", p.low().kilopascals());
            json.number("highKilopascals", p.high().kilopascals());
            json.number("areaSquareMillimeters", p.area().squareMeters() * 1e6);
            json.number("lengthMillimeters", millimeters(p.length()));
            json.number("widthMillimeters", millimeters(p.width()));
            json.text("basis", p.basis().name().toLowerCase(Locale.ROOT));
            json.objectOrNull("printsTaken", printed, from -> {
                json.number("count", (double) from.count());
                json.array("days", () -> from.days().forEach(json::text));
                json.array("trials", () -> from.trials().forEach(json::text));
            });
        });
    }

    private static @Nullable Double millimeters(@Nullable Length length) {
        return length == null ? null : length.millimeters();
    }

    private void marking(PackageGround p) {
        for (Wetness wetness : Wetness.values()) {
            Judged<Marking> marks = ground.carried()
                    .patch(Position.DRIVE)
                    .then(was -> p.patch(Position.DRIVE).map(is -> Marking.of(was.mean(), is.mean(), wetness)));
            json.textOrNull(
                    wetness.name().toLowerCase(Locale.ROOT),
                    marks.value().map(m -> m.name().toLowerCase(Locale.ROOT)).orElse(null));
        }
    }

    private void changes(Change change) {
        for (Position position : Position.values()) {
            judged.write(position.name().toLowerCase(Locale.ROOT) + "Axle", change.rise(position), r -> {
                json.number("riseMillimeters", r.by().millimeters());
                json.flag("fromSizes", r.fromSizes());
            });
        }
        judged.write("speed", change.speed(), s -> {
            json.number("ratio", s.ratio());
            json.flag("fromSizes", s.fromSizes());
        });
        judged.number("stiffnessRatio", change.stiffness());
    }

    private void slope(PackageGround p) {
        json.text("caution", SlopeCaution.of(ground));
        json.number("ceilingDegrees", ground.ceiling().degrees());
        json.flag("ceilingStated", ground.ceilingStated());
        json.objects("friction", List.of(Wetness.values()), w -> {
            json.text("ground", w.name().toLowerCase(Locale.ROOT));
            hold(p, "low", w.low());
            hold(p, "likely", w.likely());
            hold(p, "high", w.high());
        });
        angle("tipSidewaysDegrees", p.tip());
        angle("tipSidewaysIfCasterAxleSwingsDegrees", p.tipIfPivoted());
        angle("tipBackwardDegrees", p.stance().map(Tip::backward));
        angle("tipForwardDegrees", p.stance().map(Tip::forward));
        judged.write("loadsAcrossAtCeiling", p.stance().then(s -> SlopeLoads.across(s, ground.ceiling())), l -> {
            json.number("downhillKilograms", l.lower().kilograms());
            json.number("uphillKilograms", l.upper().kilograms());
        });
    }

    private void hold(PackageGround p, String name, double friction) {
        json.object(name, () -> {
            json.number("coefficient", friction);
            angle("slidesAcrossDegrees", p.hold(friction));
            angle("slidesClimbingDegrees", p.climb(friction));
        });
    }

    private void angle(String name, Judged<Angle> angle) {
        judged.number(name, angle.map(Angle::degrees));
    }
}
