package heeltap.review;

import heeltap.pricing.GroupRange;
import heeltap.pricing.PriceRange;
import heeltap.pricing.RangeItem;
import heeltap.quantity.Money;
import heeltap.record.Book;
import heeltap.record.Setting;
import java.util.List;

/** The price range of the groups, with what guests paid on the footing of the menu price. */
final class RangeStage {
    private RangeStage() {}

    static List<GroupRange> of(Book book, List<DrinkRow> rows) {
        return PriceRange.of(rows.stream()
                .filter(DrinkRow::listedAtEnd)
                .filter(row -> row.menuPrice().isPresent())
                .map(row -> new RangeItem(
                        row.name(),
                        row.group(),
                        row.menuPrice().get(),
                        row.sales().sold(),
                        asRead(row.sales().netSales(), book)))
                .toList());
    }

    private static Money asRead(Money net, Book book) {
        return book.settings().get(Setting.MENU_PRICES_INCLUDE_TAX)
                ? net.withTax(book.settings().get(Setting.SALES_TAX_PERCENT))
                : net;
    }
}
