package footing.io.figure;

import footing.core.answer.Answer;
import footing.core.answer.MachineAnswer;
import footing.core.ground.MachineGround;
import footing.core.ground.PackageGround;
import footing.io.words.Advice;
import footing.io.words.GroundWords;
import footing.io.words.Lists;
import footing.io.words.SlopeCaution;
import java.util.ArrayList;
import java.util.List;

/**
 * What each package does to ground pressure, hold and height against the carried one, a line each beside its money.
 *
 * @param caution what stands beside every line about a slope
 */
public record GroundLines(List<String> lines, String caution) {
    private static final GroundLines NONE = new GroundLines(List.of(), "");

    public GroundLines {
        lines = List.copyOf(lines);
    }

    /** No lines where nothing of the machine was measured. */
    public static GroundLines of(Answer answer, Advice advice) {
        MachineAnswer machine = advice.machine();
        MachineGround ground = MachineGround.of(answer.of(), machine.id());
        if (ground.isSilent()) {
            return NONE;
        }
        GroundWords words = new GroundWords(answer.of().heading().si());
        List<String> lines = new ArrayList<>();
        for (PackageGround p : ground.packages().stream().skip(1).toList()) {
            words.line(ground.carried(), p)
                    .ifPresent(line -> lines.add(name(advice, p.wheels().id()) + ": " + line));
        }
        return lines.isEmpty() ? NONE : new GroundLines(lines, SlopeCaution.of(ground));
    }

    private static String name(Advice advice, String packageId) {
        return advice.machine().entries().stream()
                .filter(e -> e.entry().id().equals(packageId))
                .map(e -> Lists.capital(EntryName.of(advice, e)))
                .findFirst()
                .orElse(packageId);
    }
}
