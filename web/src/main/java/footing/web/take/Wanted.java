package footing.web.take;

import footing.io.paper.Paper;
import footing.web.store.FileName;
import footing.web.store.StoredCase;
import java.util.Locale;
import java.util.Optional;

/**
 * What somebody wants to take away of one state of a case.
 *
 * @param paper of a proposal, letter or a4; empty: by the units of the case
 * @param machine the only one it is to be about; empty for all of them
 */
record Wanted(StoredCase kept, Kind kind, String paper, String machine) {
    /** The documents there are. */
    enum Kind {
        PROPOSAL("proposal.pdf", "application/pdf"),
        WORKBOOK("workbook.xlsx", "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet"),
        TABLES("tables.zip", "application/zip");

        final String file;
        final String type;

        Kind(String file, String type) {
            this.file = file;
            this.type = type;
        }

        static Optional<Kind> named(String name) {
            for (Kind kind : values()) {
                if (kind.word().equals(name)) {
                    return Optional.of(kind);
                }
            }
            return Optional.empty();
        }

        /** As it stands in an address. */
        String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        String ending() {
            return file.substring(file.indexOf('.'));
        }
    }

    boolean isPossible() {
        return paper.isEmpty() || Paper.named(paper).isPresent();
    }

    /** What the file is called where it is kept. */
    String fileName() {
        String of = kept.name() + (machine.isEmpty() ? "" : " " + machine);
        return FileName.of(of) + (kind == Kind.TABLES ? "-tables" : "") + kind.ending();
    }
}
