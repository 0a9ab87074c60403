package footing.io.words;

import footing.core.fleet.Measure;

/** How something is measured, in a line. Common practice, no source, where the machine's manual says nothing else. */
public final class MeasureWords {
    private MeasureWords() {}

    /** 'Between the drive tires' middles'; a share says that it is one. */
    public static String label(Measure measure) {
        String label = measure.label();
        return Lists.capital(label.startsWith("of ") ? "share " + label : label);
    }

    /** How to measure it; empty where its name says it all. */
    public static String how(Measure measure) {
        return switch (measure) {
            case PRESSURE -> "cold, left and right alike; the manual's figure comes first";
            case LOADED_RADIUS -> "axle center to floor, operator on, at its pressure";
            case PRINT_LENGTH, PRINT_WIDTH -> "tire painted, wheel lowered on paper by a jack";
            case PRINT_SHAPE -> "2 is an ellipse, 4 a square with round corners, 10 nearly a rectangle";
            case PRINT_LOAD, DRIVE_LEFT, DRIVE_RIGHT, CASTER_LEFT, CASTER_RIGHT ->
                "on a scale, the other wheels on blocks as high; operator on, half a tank";
            case STIFFNESS -> "pounds or newtons more on the wheel for each inch or millimeter its axle sinks";
            case CIRCLE, HUB_CIRCLE ->
                "even count: center to center of opposite ones; odd count: center of one to the far edge of the second"
                        + " one over";
            case OFFSET -> "mounting face to the tire's middle; above zero where the tire stands further out";
            case MAX_LOAD, MAX_LOAD_AT, MAX_SPEED -> "on the sidewall or in the maker's table";
            case WHEELBASE -> "drive axle to where the casters touch the floor, trailing";
            case TRACK_DRIVE, TRACK_CASTER -> "middle of the left tire to the middle of the right one, at the floor";
            case CLEARANCE_DRIVE, CLEARANCE_CASTER ->
                "turned once by hand: the least gap to deck, fender, frame or chute, deck at its lowest cut";
            case CLEARANCE_CATCHER, CLEARANCE_SULKY -> "the least gap, straight and at full lock";
            case FRONT_SHARE -> "only where the wheels were not weighed one by one";
            case LIFT_HEIGHT ->
                "casters raised by 15 degrees or more, both drives on the scales; take the rise of their axle";
            case CENTER_HEIGHT, CENTER_AHEAD -> "leave it out where scale readings say it";
            case HANGER_REAR, HANGER_FRONT -> "where the hanger meets the deck, ahead of the drive axle";
            case TIP_REAR, TIP_FRONT -> "blade turned fore and aft: its tip ahead of the drive axle";
            case THREAD_PITCH -> "from thread to thread; 16 to the inch is 1.5875 mm";
            case HANGER_RATIO -> "1 for a plain upright rod";
            case DECK_HEIGHT -> "floor to cutting edge, halfway between the tips";
            case DECK_RAKE -> "rear tip less front tip; the machine's manual says how much";
            case FORK_WIDTH -> "inside the fork, where the hub goes";
            case SLOPE_LIMIT -> "as the operator's manual has it, in degrees";
            case GATE -> "post to post, at the width of the tires";
            case TRAILER -> "between its sides or its other load";
            case FITTED_REAR_LEFT, FITTED_REAR_RIGHT, FITTED_FRONT_LEFT, FITTED_FRONT_RIGHT ->
                "floor to cutting edge, blade turned fore and aft, key out";
            case TURNED_REAR, TURNED_FRONT -> "above zero where they were made longer";
            default -> "";
        };
    }
}
