package heeltap.cost;

import heeltap.BookBuilder;
import heeltap.match.NameBook;
import heeltap.record.Book;
import heeltap.record.PriceRule;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.NullMarked;

/** Costs a test's book by its list prices. */
@NullMarked
final class Bar {
    static final LocalDate LAST_DAY = LocalDate.of(2026, 10, 31);

    private Bar() {}

    static Costs costs(BookBuilder builder) {
        return costs(builder.build());
    }

    static Costs costs(Book book) {
        return Costs.of(book, NameBook.of(book), listPrices(book), LAST_DAY);
    }

    static IngredientPrices listPrices(Book book) {
        return IngredientPrices.of(
                book, PriceRule.LATEST, new MonthPurchases(YearMonth.from(LAST_DAY), List.of(), Map.of()), List.of());
    }
}
