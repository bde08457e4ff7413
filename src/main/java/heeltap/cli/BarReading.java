package heeltap.cli;

import heeltap.load.BookLoader;
import heeltap.load.LoadedBook;
import heeltap.load.MonthLoader;
import heeltap.match.NameBook;
import heeltap.quantity.Packs;
import heeltap.record.Month;
import heeltap.review.Reviews;
import heeltap.source.Problem;
import heeltap.source.Sheet;
import heeltap.source.WithProblems;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads a bar folder up to a month. */
final class BarReading {
    private final List<Problem> problems = new ArrayList<>();
    private final Progress progress;

    private BarReading(Progress progress) {
        this.progress = progress;
    }

    /**
     * Everything the review needs, or empty with at least one fatal problem.
     *
     * @param wanted the month; empty: the latest
     */
    static WithProblems<Optional<Reviews.Input>> read(
            java.nio.file.Path folder, Optional<YearMonth> wanted, Progress progress) {
        BarReading reading = new BarReading(progress);
        Optional<Reviews.Input> input = reading.read(folder, wanted);
        boolean fatal = reading.problems.stream().anyMatch(problem -> problem.severity() == Problem.Severity.FATAL);
        return new WithProblems<>(fatal ? Optional.empty() : input, reading.problems);
    }

    private Optional<Reviews.Input> read(java.nio.file.Path path, Optional<YearMonth> wanted) {
        Optional<BarFolder> found = keep(BarFolder.find(path));
        if (found.isEmpty()) {
            return Optional.empty();
        }
        BarFolder folder = found.get();
        Optional<YearMonth> month = keep(folder.choose(wanted));
        if (folder.bookFiles().isEmpty()) {
            return Optional.empty();
        }
        progress.begin("Reading the book");
        List<Sheet> sheets = keep(folder.bookSheets());
        LoadedBook book = keep(BookLoader.load(folder.name(), sheets));
        boolean fatal = problems.stream().anyMatch(problem -> problem.severity() == Problem.Severity.FATAL);
        if (month.isEmpty() || fatal) {
            return Optional.empty();
        }
        NameBook names = NameBook.of(book.book());
        List<Month> months = new ArrayList<>();
        for (YearMonth each : folder.months().keySet()) {
            if (!each.isAfter(month.get())) {
                progress.begin("Reading " + each);
                months.add(keep(MonthLoader.load(
                        each, folder.monthFiles(each), book.book(), names, Packs::parse, progress::done)));
            }
        }
        progress.close();
        return Optional.of(
                new Reviews.Input(book.book(), names, months, book.files(), book.setAside(), List.copyOf(problems)));
    }

    private <T> T keep(WithProblems<T> value) {
        problems.addAll(value.problems());
        return value.value();
    }
}
