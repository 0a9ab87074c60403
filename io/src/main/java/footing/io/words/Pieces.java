package footing.io.words;

import footing.core.fleet.Called;
import footing.core.fleet.Kind;
import footing.core.fleet.Position;
import footing.core.fleet.ResolvedAssembly;
import footing.core.fleet.ResolvedMachine;
import footing.core.fleet.When;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** A wheel package in plain pieces: 'airless drives and solid casters'. */
public final class Pieces {
    private Pieces() {}

    /** All of a package. */
    public static String all(ResolvedMachine machine, ResolvedMachine.Entry entry) {
        String both = pair(List.of(
                piece(machine.assembly(entry, Position.DRIVE)), piece(machine.assembly(entry, Position.CASTER))));
        return told(machine, entry, both);
    }

    /** What of a package is other than what the machine carries; all of the carried one. */
    public static String changed(ResolvedMachine machine, ResolvedMachine.Entry entry) {
        List<String> pieces = new ArrayList<>();
        for (Position position : Position.values()) {
            if (machine.differs(entry, position)) {
                pieces.add(changedPiece(machine, entry, position));
            }
        }
        return pieces.isEmpty() ? all(machine, entry) : told(machine, entry, pair(pieces));
    }

    /** What is changed, and 'when worn' where it waits for that. */
    public static String changedWhen(ResolvedMachine machine, ResolvedMachine.Entry entry) {
        return changed(machine, entry) + (entry.when() == When.WORN ? " when worn" : "");
    }

    private static String changedPiece(ResolvedMachine machine, ResolvedMachine.Entry entry, Position position) {
        ResolvedAssembly wanted = machine.assembly(entry, position);
        ResolvedAssembly carried = machine.assembly(machine.carried(), position);
        return (wanted.kind() == carried.kind() ? "other " : "") + piece(wanted);
    }

    private static String piece(ResolvedAssembly assembly) {
        return kind(assembly.kind()) + (assembly.position() == Position.DRIVE ? " drives" : " casters");
    }

    private static String pair(List<String> pieces) {
        return Lists.and(pieces);
    }

    /** Names the package as well where another one considered would be told by the same words. */
    private static String told(ResolvedMachine machine, ResolvedMachine.Entry entry, String words) {
        return namesakes(machine, entry) ? words + " (" + entry.id() + ")" : words;
    }

    private static boolean namesakes(ResolvedMachine machine, ResolvedMachine.Entry entry) {
        Set<String> others = machine.entries().stream()
                .filter(e -> kinds(machine, e).equals(kinds(machine, entry)))
                .map(ResolvedMachine.Entry::id)
                .collect(Collectors.toSet());
        return others.size() > 1;
    }

    private static List<Kind> kinds(ResolvedMachine machine, ResolvedMachine.Entry entry) {
        return List.of(
                machine.assembly(entry, Position.DRIVE).kind(),
                machine.assembly(entry, Position.CASTER).kind());
    }

    /** The kind as an adjective. */
    public static String kind(Kind kind) {
        return Called.kind(kind);
    }
}
