package footing.web.answer;

import java.util.List;
import java.util.Optional;

/** The inputs beside the answer, in the order in which one asks for them across a counter. */
record PanelView(List<Group> groups) {
    record Group(String id, String title, List<SectionView> sections) {}

    Optional<FieldView> find(String path) {
        return groups.stream()
                .flatMap(g -> g.sections().stream())
                .flatMap(s -> java.util.stream.Stream.concat(s.first().stream(), s.rest().stream()))
                .filter(f -> f.path().equals(path))
                .findFirst();
    }
}
