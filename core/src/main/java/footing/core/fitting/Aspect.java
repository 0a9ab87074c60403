package footing.core.fitting;

import footing.core.fleet.Physical;

/** What is tested, and what its two numbers count. */
public enum Aspect {
    BOLTS(Physical.NUMBER, Group.MOUNTING),
    CIRCLE(Physical.LENGTH, Group.MOUNTING),
    SEAT(Physical.NUMBER, Group.MOUNTING),
    AXLE(Physical.LENGTH, Group.MOUNTING),
    HUB_LENGTH(Physical.LENGTH, Group.MOUNTING),
    /** The gap left around the tire. */
    ROOM(Physical.LENGTH, Group.MOUNTING),
    LOAD(Physical.MASS, Group.RATING),
    SPEED(Physical.SPEED, Group.RATING),
    GATE(Physical.LENGTH, Group.MOUNTING),
    TRAILER(Physical.LENGTH, Group.MOUNTING),
    CATCHER(Physical.LENGTH, Group.MOUNTING),
    SULKY(Physical.LENGTH, Group.MOUNTING);

    /** What one act settles: bolting one wheel on and turning it, or reading its rating. */
    public enum Group {
        MOUNTING,
        RATING
    }

    private final Physical counts;
    private final Group group;

    Aspect(Physical counts, Group group) {
        this.counts = counts;
        this.group = group;
    }

    public Physical counts() {
        return counts;
    }

    public Group group() {
        return group;
    }
}
