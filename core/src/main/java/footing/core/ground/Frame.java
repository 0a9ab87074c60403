package footing.core.ground;

import footing.core.quantity.Length;

/**
 * Where a machine's four wheels stand.
 *
 * @param wheelbase from the drive axle to the casters' contact
 * @param drive track, between the middles of the drive tires
 * @param caster track, between the middles of the caster tires
 */
public record Frame(Length wheelbase, Length drive, Length caster) {
    public Frame {
        Require.above("the wheelbase", 0, wheelbase.meters());
        Require.above("the drive track", 0, drive.meters());
        Require.above("the caster track", 0, caster.meters());
    }
}
