package footing.core.fleet;

/** Where assemblies go on a machine. */
public enum Position {
    DRIVE,
    CASTER
}
