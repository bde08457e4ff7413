package heeltap.review;

import heeltap.pricing.GroupRange;
import heeltap.pricing.PriceRange;
import heeltap.pricing.RangeItem;
import java.util.List;

/** The price range of the groups, with what guests paid on the footing of the menu price. */
final class RangeStage {
    private RangeStage() {}

    static List<GroupRange> of(List<DrinkRow> rows) {
        return PriceRange.of(rows.stream()
                .filter(DrinkRow::listedAtEnd)
                .filter(row -> row.menuPrice().isPresent())
                .map(row -> new RangeItem(
                        row.name(),
                        row.group(),
                        row.menuPrice().get(),
                        row.sales().sold(),
                        row.sales().paid()))
                .toList());
    }
}
