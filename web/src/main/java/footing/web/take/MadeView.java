package footing.web.take;

/**
 * How far a document is.
 *
 * @param what proposal, workbook or tables
 * @param file the last part of its address
 */
record MadeView(
        String what,
        String paper,
        String machine,
        String file,
        String fileName,
        int percent,
        boolean ready,
        boolean failed) {
    static MadeView of(Wanted wanted, Making making) {
        return new MadeView(
                wanted.kind().word(),
                wanted.paper(),
                wanted.machine(),
                wanted.kind().file,
                wanted.fileName(),
                making.percent(),
                making.isReady(),
                making.isFailed());
    }
}
