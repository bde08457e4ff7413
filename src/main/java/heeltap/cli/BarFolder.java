package heeltap.cli;

import heeltap.load.BookProblems;
import heeltap.load.MonthFile;
import heeltap.sheet.SheetFiles;
import heeltap.source.Place;
import heeltap.source.Problem;
import heeltap.source.ProblemKind;
import heeltap.source.Sheet;
import heeltap.source.WithProblems;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * A bar folder as files: the book and the months.
 *
 * @param root the folder
 * @param name the folder's own name, for a bar that sets none
 * @param bookFiles book.xlsx, or the files of the folder book
 * @param months month folders by month
 */
record BarFolder(Path root, String name, List<Path> bookFiles, Map<YearMonth, Path> months) {
    private static final int MOST_NAMED = 6;

    /** Looks around; nothing is opened yet. A fatal problem comes with a folder that cannot be used. */
    static WithProblems<Optional<BarFolder>> find(Path folder) {
        Path root = folder.toAbsolutePath().normalize();
        String name =
                Optional.ofNullable(root.getFileName()).map(Path::toString).orElse("");
        if (!Files.isDirectory(root)) {
            return new WithProblems<>(
                    Optional.empty(),
                    List.of(Problem.fatal(
                            ProblemKind.FILE_UNREADABLE,
                            Place.of(folder.toString()),
                            "",
                            "There is no such folder.",
                            "Name the bar folder: the one that holds book and the month folders.")));
        }
        List<Problem> problems = new ArrayList<>();
        List<Path> bookFiles = new ArrayList<>();
        Map<YearMonth, Path> months = new TreeMap<>();
        for (Path entry : list(root)) {
            String entryName = entry.getFileName().toString();
            Optional<YearMonth> month = month(entryName);
            if (Files.isDirectory(entry) && month.isPresent()) {
                months.put(month.get(), entry);
            } else if (isBookFile(entry)) {
                bookFiles.add(entry);
            } else if (!entryName.equals("book") && !isNote(entryName)) {
                problems.add(notRead(entryName));
            }
        }
        Path bookFolder = root.resolve("book");
        if (Files.isDirectory(bookFolder)) {
            if (!bookFiles.isEmpty()) {
                problems.add(BookProblems.secondBook(
                        "book", bookFiles.get(0).getFileName().toString()));
            }
            bookFiles.addAll(
                    list(bookFolder).stream().filter(Files::isRegularFile).toList());
        }
        if (bookFiles.isEmpty()) {
            problems.add(
                    Problem.fatal(
                            ProblemKind.SHEET_MISSING,
                            Place.of("book.xlsx"),
                            "",
                            "The bar folder has no book.",
                            "Put book.xlsx or a folder book with drinks.csv, specs.csv … there; \"heeltap start\" makes an empty one."));
        }
        return new WithProblems<>(Optional.of(new BarFolder(root, name, bookFiles, months)), problems);
    }

    /** The month named, else the latest. */
    WithProblems<Optional<YearMonth>> choose(Optional<YearMonth> wanted) {
        Optional<YearMonth> latest = months.keySet().stream().reduce((first, second) -> second);
        Optional<YearMonth> chosen = wanted.isPresent() ? wanted.filter(months::containsKey) : latest;
        if (chosen.isPresent()) {
            return WithProblems.of(chosen);
        }
        String folderName = wanted.map(YearMonth::toString).orElse("YYYY-MM");
        return new WithProblems<>(
                Optional.empty(),
                List.of(Problem.fatal(
                        ProblemKind.FILE_UNREADABLE,
                        Place.of(folderName),
                        "",
                        wanted.isPresent() ? "The bar folder has no such month." : "The bar folder has no month.",
                        months.isEmpty()
                                ? "Make a folder such as 2026-09 with the month's sales and invoices."
                                : "It has " + inWords(List.copyOf(months.keySet())) + ".")));
    }

    /** {@code 2026-08, 2026-09 and 2026-10}; of many only how many, the first and the last. */
    static String inWords(List<YearMonth> months) {
        int last = months.size() - 1;
        if (last == 0) {
            return months.get(0).toString();
        } else if (last >= MOST_NAMED) {
            return months.size() + " months, the first " + months.get(0) + " and the last " + months.get(last);
        }
        List<String> names = months.stream().map(YearMonth::toString).toList();
        return String.join(", ", names.subList(0, last)) + " and " + names.get(last);
    }

    /** The sheets of the book, with what was wrong with its files. */
    WithProblems<List<Sheet>> bookSheets() {
        return open(bookFiles);
    }

    /** A month's files, opened as far as they can be. */
    List<MonthFile> monthFiles(YearMonth month) {
        List<MonthFile> files = new ArrayList<>();
        for (Path file : list(Optional.ofNullable(months.get(month)).orElseThrow())) {
            files.add(Files.isDirectory(file) ? monthFolder(file) : monthFile(file));
        }
        return files;
    }

    private MonthFile monthFolder(Path folder) {
        String path = relative(folder);
        return MonthFile.leftOut(
                path,
                Problem.notice(
                        ProblemKind.FILE_NOT_READ,
                        Place.of(path),
                        "",
                        "The folder was not read: a month's files stand beside each other.",
                        "Move its files up into the month's folder if they should be read."));
    }

    private MonthFile monthFile(Path file) {
        String path = relative(file);
        if (path.toLowerCase(Locale.ROOT).endsWith(".xml")) {
            return MonthFile.xml(path, () -> Files.newInputStream(file));
        }
        WithProblems<List<Sheet>> opened = SheetFiles.open(root, file);
        boolean unreadable = opened.value().isEmpty();
        return unreadable ? MonthFile.unreadable(path, opened.problems()) : MonthFile.of(path, opened.value());
    }

    private String relative(Path file) {
        return root.relativize(file).toString().replace(file.getFileSystem().getSeparator(), "/");
    }

    private WithProblems<List<Sheet>> open(List<Path> files) {
        List<Sheet> sheets = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        for (Path file : files) {
            WithProblems<List<Sheet>> opened = SheetFiles.open(root, file);
            sheets.addAll(opened.value());
            problems.addAll(opened.problems());
        }
        return new WithProblems<>(sheets, problems);
    }

    /** Words for people, the reports and the blank month lie beside the data without a word. */
    private static boolean isNote(String name) {
        String lower = name.toLowerCase(Locale.ROOT);
        return lower.endsWith(".md") || lower.equals("heeltap-out") || lower.equals("month");
    }

    private static Problem notRead(String path) {
        return Problem.notice(
                ProblemKind.FILE_NOT_READ,
                Place.of(path),
                "",
                "Nothing reads it.",
                "Put a month's files into a folder named like 2026-10, the book into book.xlsx or the folder book.");
    }

    private static boolean isBookFile(Path entry) {
        String name = entry.getFileName().toString().toLowerCase(Locale.ROOT);
        return Files.isRegularFile(entry)
                && (name.equals("book.xlsx") || name.equals("book.xlsm") || name.equals("book.xls"));
    }

    private static Optional<YearMonth> month(String name) {
        try {
            return name.matches("\\d{4}-\\d{2}") ? Optional.of(YearMonth.parse(name)) : Optional.empty();
        } catch (DateTimeException noMonth) {
            return Optional.empty();
        }
    }

    /** In the order of their names, hidden files left out. */
    private static List<Path> list(Path folder) {
        try (Stream<Path> entries = Files.list(folder)) {
            return entries.filter(entry -> !entry.getFileName().toString().startsWith("."))
                    .filter(entry -> !entry.getFileName().toString().startsWith("~$"))
                    .sorted(java.util.Comparator.comparing(
                            entry -> entry.getFileName().toString()))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
