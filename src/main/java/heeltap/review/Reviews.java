package heeltap.review;

import heeltap.document.Document;
import heeltap.document.Finding;
import heeltap.match.NameBook;
import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.record.Book;
import heeltap.record.FileAccount;
import heeltap.record.Month;
import heeltap.record.SetAside;
import heeltap.source.Problem;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The door of this package: a month's review from what was read. */
public final class Reviews {
    private Reviews() {}

    /**
     * What was read.
     *
     * @param names of the book
     * @param months up to and including the one to review, in order of time
     * @param bookFiles how the book's sheets were understood
     * @param bookSetAside rows of the book that are not used
     * @param problems found while reading
     */
    public record Input(
            Book book,
            NameBook names,
            List<Month> months,
            List<FileAccount> bookFiles,
            List<SetAside> bookSetAside,
            List<Problem> problems) {}

    /**
     * A finished review.
     *
     * @param document all that the reports say
     * @param problems all of them, by place
     * @param summary the review in a few lines
     */
    public record Review(Document document, List<Problem> problems, Summary summary) {}

    /**
     * The review in a few lines, for the terminal.
     *
     * @param filesRead files and sheets that were understood
     * @param rowsSetAside of all files
     * @param tillMoney of the month's sales rows as printed, ignored rows left out
     * @param joinedMoney the part of it that was joined to drinks
     * @param joinedPercent of it; empty without money
     * @param findings the largest first
     * @param controlsHeld of {@code controls}
     */
    public record Summary(
            int filesRead,
            int rowsSetAside,
            Money tillMoney,
            Money joinedMoney,
            Optional<Exact> joinedPercent,
            List<Finding> findings,
            int controlsHeld,
            int controls) {}

    /** @throws IllegalArgumentException if there is no month */
    public static Review of(Input input) {
        if (input.months().isEmpty()) {
            throw new IllegalArgumentException("no month to review");
        }
        Words words = Words.of(input.book().settings());
        ReviewFigures figures = figures(input, words);
        Document document = Layout.of(figures, words);
        List<Control> controls = Tables.controls(figures, words);
        Money till = figures.tillMoney();
        Summary summary = new Summary(
                (int) figures.files().stream()
                        .filter(file ->
                                !file.kind().equals("refused") && !file.kind().equals("not read"))
                        .count(),
                (int) figures.setAside().stream()
                        .filter(row ->
                                row.place().file().startsWith(figures.now().month() + "/")
                                        || row.place().file().startsWith("book"))
                        .count(),
                till,
                figures.joinedMoney(),
                StockTables.percentOf(figures.joinedMoney(), till),
                FindingList.of(figures, words),
                (int) controls.stream().filter(Control::holds).count(),
                controls.size());
        return new Review(document, figures.problems(), summary);
    }

    /** A fault is told once where it is, however many drinks it reaches; each of them says so in its note. */
    private static void addNew(Set<Problem> problems, List<Problem> faults) {
        for (Problem fault : faults) {
            if (problems.stream()
                    .noneMatch(known -> known.kind() == fault.kind()
                            && known.place().equals(fault.place())
                            && fault.reason().endsWith(known.reason()))) {
                problems.add(fault);
            }
        }
    }

    private static ReviewFigures figures(Input input, Words words) {
        Book book = input.book();
        MenuCalendar calendar = new MenuCalendar(book, input.names());
        List<MonthFigures> months = MonthStage.all(book, input.names(), calendar, input.months());
        MonthFigures now = months.get(months.size() - 1);
        List<DrinkRow> rows = MenuStage.of(book, now, calendar, words);
        PriceAdvice prices = PriceStage.of(book, calendar, months, rows);
        ChangeSides sides = new ChangeSides(book);
        List<LedgerTables.Chain> chains = new ArrayList<>();
        for (YearMonth earlier : List.of(now.month().minusMonths(1), now.month().minusYears(1))) {
            months.stream()
                    .filter(month -> month.month().equals(earlier))
                    // a month without sales would make every drink a new one
                    .filter(month -> !month.written().sales().isEmpty())
                    .forEach(month -> chains.addAll(LedgerTables.chains(
                            month, now, sides, book.settings().get(heeltap.record.Setting.CURRENCY))));
        }
        List<FileAccount> files = new ArrayList<>(input.bookFiles());
        List<SetAside> setAside = new ArrayList<>(input.bookSetAside());
        months.forEach(month -> {
            files.addAll(month.written().files());
            setAside.addAll(month.written().setAside());
        });
        Set<Problem> problems = new LinkedHashSet<>(input.problems());
        problems.addAll(input.names().problems());
        problems.addAll(calendar.problems());
        // faults of earlier months reach this one through prices and opening stock; their notices do not
        months.forEach(month -> month.problems().stream()
                .filter(problem -> month.month().equals(now.month()) || problem.severity() != Problem.Severity.NOTICE)
                .forEach(problems::add));
        rows.forEach(row -> addNew(problems, row.cost().faults()));
        addNew(problems, List.copyOf(now.use().faults()));
        return new ReviewFigures(
                book,
                months,
                rows,
                prices,
                CheaperWays.of(book, now, prices.prices()),
                RangeStage.of(rows),
                StockAdvice.of(book, months),
                chains,
                LedgerTables.entries(book, now, book.settings().get(heeltap.record.Setting.CURRENCY)),
                files,
                setAside,
                problems.stream().sorted(Problem.ORDER).toList());
    }
}
