package footing.core.specimen;

/** Names that say nothing. */
final class Names {
    record TimeUtil() {}

    record TimeUtils() {}

    record TimeManager() {}

    record TimeHelper() {}

    record TimeImpl() {}

    record BaseTime() {}

    record Base() {}

    private Names() {}
}
