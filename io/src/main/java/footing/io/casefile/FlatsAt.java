package footing.io.casefile;

import footing.core.chance.Spread;
import footing.core.fleet.Key;
import footing.core.fleet.Numbers;
import footing.core.fleet.Origin;
import footing.io.form.Found;
import footing.io.form.Problems;
import java.util.Optional;
import java.util.TreeMap;

/** The flats of a machine are at its drives or at its casters: one share is kept, the other is the rest. */
final class FlatsAt {
    private FlatsAt() {}

    static Numbers settle(Found machine, Numbers numbers, Problems problems) {
        Optional<Spread> drive = numbers.get(Key.FLATS_AT_DRIVE);
        Optional<Spread> caster = numbers.get(Key.FLATS_AT_CASTER);
        if (caster.isEmpty()) {
            return numbers;
        }
        TreeMap<Key, Numbers.Stated> kept = new TreeMap<>(numbers.stated());
        kept.remove(Key.FLATS_AT_CASTER);
        double atCaster = caster.get().likely();
        if (drive.isPresent()) {
            Shares.checkWhole("both ends", drive.get().likely() + atCaster, machine.get("flatsAt"), problems);
        } else if (!machine.get("flatsAt").has("drive")) {
            double rest = Math.rint((1 - atCaster) * 1e12) / 1e12;
            kept.put(Key.FLATS_AT_DRIVE, new Numbers.Stated(Spread.of(rest), Origin.STATED));
        }
        return new Numbers(kept);
    }
}
