package footing.io.form;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Which keys of a group go with which. */
public sealed interface Tie {
    void check(Set<String> present, At at, Problems problems);

    void addTo(Map<String, Object> schema);

    /** Exactly one of two keys. */
    record OneOf(Field first, Field second) implements Tie {
        @Override
        public void check(Set<String> present, At at, Problems problems) {
            boolean one = present.contains(first.name());
            boolean other = present.contains(second.name());
            if (one && other) {
                problems.error(
                        at, "", first.name() + " and " + second.name() + " say the same thing", "keep one of the two");
            } else if (!one && !other) {
                problems.error(
                        at.key(at.line(), first.name()),
                        "",
                        "missing; this or " + second.name() + " is needed",
                        "try: " + first.name() + ": " + first.form().example());
            }
        }

        @Override
        public void addTo(Map<String, Object> schema) {
            schema.put(
                    "oneOf",
                    List.of(Map.of("required", List.of(first.name())), Map.of("required", List.of(second.name()))));
        }
    }

    /** Both keys or neither. */
    record Together(Field first, Field second) implements Tie {
        @Override
        public void check(Set<String> present, At at, Problems problems) {
            lacking(first, second, present, at, problems);
            lacking(second, first, present, at, problems);
        }

        private static void lacking(Field has, Field lacks, Set<String> present, At at, Problems problems) {
            if (present.contains(has.name()) && !present.contains(lacks.name())) {
                problems.error(
                        at.key(at.line(), lacks.name()),
                        "",
                        "missing; " + has.name() + " needs it",
                        "try: " + lacks.name() + ": " + lacks.form().example() + ", or leave " + has.name() + " out");
            }
        }

        @Override
        public void addTo(Map<String, Object> schema) {
            Map<String, Object> needs = new LinkedHashMap<>();
            needs.put(first.name(), List.of(second.name()));
            needs.put(second.name(), List.of(first.name()));
            schema.put("dependentRequired", needs);
        }
    }
}
