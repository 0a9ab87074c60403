package footing.core.fitting;

/**
 * What a rise of the axles does to a deck that hangs from the frame, and the hanger turns that undo it. x runs from the
 * drive axle toward the casters, meters throughout.
 *
 * <ul>
 *   <li>A point of the frame rises by dz(x) = dr + (df − dr)·x/L, which is exact to 0.01 mm for a frame about level.
 *   <li>Rake, rear tip less front tip, becomes ρ − (df − dr)·S/L over a span S between the tips.
 *   <li>To bring the blade plane to height H and rake ρ, each hanger is lengthened by e = z(x) − z*(x), which takes
 *       e/(m·p) turns of a thread of pitch p where the deck moves m for each unit of hanger; positive lowers the deck.
 * </ul>
 *
 * <p>Holds for decks hung from the frame, not for decks on wheels of their own. Source: derived.
 *
 * @param wheelbase L
 * @param rear rise at the drive axle, dr
 * @param front rise at the casters, df
 */
public record DeckPlane(double wheelbase, double rear, double front) {
    public DeckPlane {
        if (!(wheelbase > 0 && wheelbase < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("the wheelbase must be above zero, not " + wheelbase);
        }
        if (!(Math.abs(rear) < wheelbase && Math.abs(front) < wheelbase)) {
            throw new IllegalArgumentException("an axle can't rise by " + rear + " or " + front + " m");
        }
    }

    /** dz(x). */
    public double rise(double x) {
        return rear + (front - rear) * x / wheelbase;
    }

    /** Change of the frame's pitch in radians; positive lifts the casters' end. */
    public double pitch() {
        return Math.asin((front - rear) / wheelbase);
    }

    /** Change of rake over a span between the blade tips. */
    public double rakeChange(double span) {
        return -(front - rear) * span / wheelbase;
    }

    /** A plane the blades run in: its height halfway between the tips, and how much lower the front tip is. */
    public record Plane(double rearTip, double frontTip, double height, double rake) {
        public Plane {
            if (!(rearTip < frontTip)) {
                throw new IllegalArgumentException("the front tip lies ahead of the rear one");
            }
            if (!(Math.abs(height) < Double.POSITIVE_INFINITY && Math.abs(rake) < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("a height and a rake are finite");
            }
        }

        /** Height of the plane x ahead of the drive axle. */
        public double at(double x) {
            return height - rake / (frontTip - rearTip) * (x - (rearTip + frontTip) / 2);
        }
    }

    /** The plane after the rise, hangers untouched. */
    public Plane moved(Plane before) {
        double middle = (before.rearTip() + before.frontTip()) / 2;
        double span = before.frontTip() - before.rearTip();
        return new Plane(
                before.rearTip(), before.frontTip(), before.height() + rise(middle), before.rake() + rakeChange(span));
    }

    /** What a hanger has to lower the deck by, from the moved plane to the wanted one. */
    public double lowering(double hanger, Plane before, Plane wanted) {
        return moved(before).at(hanger) - wanted.at(hanger);
    }

    /** Turns that lower the deck at a hanger from the moved plane to the wanted one. */
    public double turns(double hanger, Plane before, Plane wanted, Hanger thread) {
        return thread.turns(lowering(hanger, before, wanted));
    }

    /** How a hanger is adjusted: thread pitch, and deck motion for each unit of hanger motion. */
    public record Hanger(double pitch, double ratio) {
        public Hanger {
            if (!(pitch > 0 && ratio > 0)) {
                throw new IllegalArgumentException("thread pitch and ratio must be above zero");
            }
        }

        /** Turns for lengthening by {@code by}. */
        public double turns(double by) {
            return by / (ratio * pitch);
        }

        /** What a number of turns moves the deck by. */
        public double moved(double turns) {
            return turns * ratio * pitch;
        }
    }
}
