package heeltap.source;

/**
 * A sheet of a workbook or a text file as rows of cells. It can be read as often as wanted, each time from its first
 * row, and holds no rows itself, so that a long export costs no memory.
 */
public interface Sheet {
    SheetFacts facts();

    /**
     * Hands every row, blank ones included where the file has them, to the reader, in order, until it says stop.
     *
     * @throws java.io.UncheckedIOException if the file cannot be read any more
     */
    void read(RowReader reader);

    /** Takes rows one by one. */
    @FunctionalInterface
    interface RowReader {
        /** @return false to stop reading */
        boolean take(Row row);
    }
}
