package footing.web.specimen;

import footing.cli.specimen.Door;

/** Looks up to a command. */
public record Window(Door above) {}
