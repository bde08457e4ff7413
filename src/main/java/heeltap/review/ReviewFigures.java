package heeltap.review;

import heeltap.pricing.GroupRange;
import heeltap.quantity.Money;
import heeltap.record.Book;
import heeltap.record.FileAccount;
import heeltap.record.SetAside;
import heeltap.record.Setting;
import heeltap.source.Problem;
import heeltap.stock.Journal;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Everything that a month's review says, before it is laid out.
 *
 * @param months all months present up to the one reviewed, in order; the last is the one reviewed
 * @param rows drinks in the book's order
 * @param prices what is said of the price of each drink listed on the last day
 * @param ways the lines that drive the cost of drinks whose price does not mend it, with cheaper ways
 * @param advice what stock says of the coming month, for each ingredient in the book's order
 * @param chains steps from the month before, then from the same month last year, where they are present
 * @param files how every file was understood
 * @param setAside every row that was not used
 * @param problems all of them, by place
 */
record ReviewFigures(
        Book book,
        List<MonthFigures> months,
        List<DrinkRow> rows,
        PriceAdvice prices,
        List<CheaperWay> ways,
        List<GroupRange> ranges,
        Map<String, StockAdvice> advice,
        List<LedgerTables.Chain> chains,
        List<Journal.Entry> journal,
        List<FileAccount> files,
        List<SetAside> setAside,
        List<Problem> problems) {
    MonthFigures now() {
        return months.get(months.size() - 1);
    }

    /** The calendar month before, where it is present. */
    Optional<MonthFigures> before() {
        return months.stream()
                .filter(month -> month.month().plusMonths(1).equals(now().month()))
                .findFirst();
    }

    Currency currency() {
        return book.settings().get(Setting.CURRENCY);
    }

    /** The reviewed month's sales files. */
    List<FileAccount> salesFiles() {
        return files.stream()
                .filter(file -> file.kind().equals("sales"))
                .filter(file -> file.place().file().startsWith(now().month().toString() + "/"))
                .toList();
    }

    /** Money of the month's till rows as printed, ignored rows left out. */
    Money tillMoney() {
        return joinedMoney().plus(asideMoney());
    }

    Money joinedMoney() {
        return sum(salesFiles(), FileAccount::usedMoney);
    }

    Money asideMoney() {
        return sum(salesFiles(), FileAccount::setAsideMoney);
    }

    private static Money sum(
            List<FileAccount> files,
            java.util.function.Function<FileAccount, @org.jspecify.annotations.Nullable Money> part) {
        return files.stream()
                .flatMap(file -> Optional.ofNullable(part.apply(file)).stream())
                .reduce(Money.ZERO, Money::plus);
    }
}
