package footing.core.records;

/** Where on a machine: its tires, or the hour meter itself when it is replaced. */
public enum Spot {
    DRIVE,
    CASTER,
    METER
}
