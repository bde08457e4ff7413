package heeltap.sheet;

import heeltap.source.Place;
import heeltap.source.Problem;
import heeltap.source.ProblemKind;
import heeltap.source.Sheet;
import heeltap.source.WithProblems;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Turns files into neutral sheets of cells. What a file is, its bytes say; its name's ending is not trusted. */
public final class SheetFiles {
    private SheetFiles() {}

    /**
     * Opens a text table or a workbook.
     *
     * @param root the folder that {@code Place.file} is told from
     * @param file a file below it
     * @return one sheet for a text file; each worksheet of a workbook in its order, hidden ones too. A file that cannot
     *     be understood gives no sheet and a fault {@code FILE_UNREADABLE}. What is odd about a file that can be read
     *     stands in the facts of its sheets.
     */
    public static WithProblems<List<Sheet>> open(Path root, Path file) {
        String name = nameOf(root, file);
        try {
            return WithProblems.of(sheets(file, name));
        } catch (UnreadableFile refusal) {
            return refused(name, refusal.reason(), refusal.remedy());
        } catch (IOException failure) {
            return refused(
                    name,
                    "The file could not be opened or read to its end.",
                    "Close it in other programs, check that it may be read, and copy it again from where it came.");
        }
    }

    /** The files of a folder, without its subfolders, ordered by name whatever the machine's language. */
    public static List<Path> list(Path folder) throws IOException {
        try (Stream<Path> entries = Files.list(folder)) {
            return entries.filter(Files::isRegularFile)
                    .sorted(Comparator.comparing(path -> fileName(path)))
                    .toList();
        }
    }

    private static List<Sheet> sheets(Path file, String name) throws IOException, UnreadableFile {
        return switch (FileContent.of(file)) {
            case ZIP -> XlsxFile.open(file, name);
            case COMPOUND -> XlsFile.open(file, name);
            case TEXT -> List.of(TextSheet.open(file, name));
        };
    }

    private static WithProblems<List<Sheet>> refused(String name, String reason, String remedy) {
        Problem problem = Problem.fault(ProblemKind.FILE_UNREADABLE, Place.of(name), "", reason, remedy);
        return new WithProblems<>(List.of(), List.of(problem));
    }

    private static String nameOf(Path root, Path file) {
        Path relative = root.toAbsolutePath()
                .normalize()
                .relativize(file.toAbsolutePath().normalize());
        StringBuilder name = new StringBuilder();
        for (Path part : relative) {
            name.append(name.isEmpty() ? "" : "/").append(part);
        }
        return name.toString();
    }

    private static String fileName(Path path) {
        Path name = path.getFileName();
        return name == null ? "" : name.toString();
    }
}
