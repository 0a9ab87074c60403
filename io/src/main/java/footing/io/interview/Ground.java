package footing.io.interview;

/** What pavement leaves of a wheel's life, and the lives that follow from it. */
record Ground(Given given) {
    /** Percent of every life left. */
    int wear() {
        return switch (given.text("pavement")) {
            case "none" -> 100;
            case "mostly" -> 55;
            default -> 80;
        };
    }

    /** How much longer the drives last on grass than typical ones do, by what was said of those on it now. */
    double lifeFactor() {
        return given.isYours("life") ? given.number("life").doubleValue() * 100 / wear() / typical("drive") : 1;
    }

    /** Likely hours of a set on it now, on this ground. */
    double hoursHere(String position) {
        boolean told = position.equals("drive") && given.isYours("life");
        return told ? given.number("life").doubleValue() : typical(position) * wear() / 100;
    }

    private double typical(String position) {
        return TypicalWheels.life(given, position + "Kind", position + "Size");
    }
}
