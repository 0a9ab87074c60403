package footing.core.future;

/**
 * How often and how long, over the hours left: flats, sets worn out and renewed, hours a machine does not cut, crew-hours
 * pushed out of their place, crew-hours lost.
 */
public record Counts(double flats, double sets, double downHours, double displacedHours, double lostHours) {}
