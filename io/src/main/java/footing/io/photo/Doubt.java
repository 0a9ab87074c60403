package footing.io.photo;

/** Why what was read off a photo is not sure. */
public enum Doubt {
    /** The corners of the card were not found. */
    NO_CARD,
    /** No print was found. */
    NO_PRINT,
    /** The card's edges are bent by more than the lens correction mends: a wide lens, or paper that doesn't lie flat. */
    BENT,
    /** The corners leave the area of the print uncertain: the card is small, far off, blurred or seen too aslant. */
    SCALE,
    /** The card is as good as seen square: which of its sides is the longer one is not sure, nor length and width. */
    SIDES,
    /** The print stands out too little from the ground. */
    FAINT,
    /** Much of the border was not seen as a step from ink to ground. */
    UNCLEAR,
    /** The border is far from any print's: gaps, splashes or something else. */
    ODD,
    /** Another patch is nearly as large. */
    SEVERAL,
    /** The print fills too few pixels. */
    SMALL,
    /** Grass and soil are not told apart clearly in this light. */
    BLEND,
    /** Before and after show too different light or places. */
    UNLIKE
}
