package footing.core.ground;

import footing.core.quantity.Length;

/**
 * Where a machine's weight acts, with its operator on.
 *
 * @param ahead of the drive axle, toward the casters
 * @param aside of the middle, positive to the left
 * @param height above the ground
 */
public record CenterOfGravity(Length ahead, Length aside, Length height) {
    public CenterOfGravity {
        Require.above("the height of the center of gravity", 0, height.meters());
    }
}
