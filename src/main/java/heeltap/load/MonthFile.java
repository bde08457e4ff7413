package heeltap.load;

import heeltap.source.Problem;
import heeltap.source.ProblemKind;
import heeltap.source.Sheet;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A file of a month's folder, opened.
 *
 * @param path from the bar folder, with {@code /}
 * @param sheets its sheets in order; empty for a file that is not read as sheets
 * @param problems why it could not be opened; empty where it could
 * @param bytes the content of an XML file; null for others
 */
public record MonthFile(
        String path,
        List<Sheet> sheets,
        List<Problem> problems,
        @Nullable Bytes bytes) {
    /** Opens a file's content. */
    @FunctionalInterface
    public interface Bytes {
        InputStream open() throws IOException;
    }

    public static MonthFile of(String path, List<Sheet> sheets) {
        return new MonthFile(path, sheets, List.of(), null);
    }

    /** A file that could not be opened. */
    public static MonthFile unreadable(String path, List<Problem> problems) {
        return new MonthFile(path, List.of(), problems, null);
    }

    /** Something beside the files that is not looked into, such as a folder. */
    public static MonthFile leftOut(String path, Problem notice) {
        return new MonthFile(path, List.of(), List.of(notice), null);
    }

    /** Whether nothing is wrong with it but that it is not read. */
    boolean isLeftOut() {
        return problems.stream().anyMatch(problem -> problem.kind() == ProblemKind.FILE_NOT_READ);
    }

    /** An electronic invoice. */
    public static MonthFile xml(String path, Bytes bytes) {
        return new MonthFile(path, List.of(), List.of(), bytes);
    }
}
