package heeltap.review;

import heeltap.pricing.GroupRange;
import heeltap.pricing.PriceGrid;
import heeltap.pricing.PriceRange;
import heeltap.pricing.PriceSuggestion;
import heeltap.pricing.PricedDrink;
import heeltap.pricing.PricingRules;
import heeltap.pricing.RangeItem;
import heeltap.pricing.TargetCostPricing;
import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.record.Book;
import heeltap.record.Category;
import heeltap.record.Setting;
import heeltap.record.Settings;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Suggests prices for the drinks that are on the menu on the month's last day. */
final class PriceStage {
    private PriceStage() {}

    static List<PriceSuggestion> suggestions(Book book, List<DrinkRow> rows) {
        Map<String, Category> categories = new HashMap<>();
        book.categories().forEach(category -> categories.put(heeltap.record.Folding.fold(category.name()), category));
        List<PricedDrink> drinks = rows.stream()
                .filter(DrinkRow::listedAtEnd)
                .map(row -> priced(
                        row,
                        targetPercent(
                                Optional.ofNullable(categories.get(
                                        heeltap.record.Folding.fold(row.drink().category()))),
                                book.settings())))
                .toList();
        return TargetCostPricing.suggest(drinks, rules(book.settings()));
    }

    static PricingRules rules(Settings settings) {
        return new PricingRules(
                new PriceGrid(settings.get(Setting.PRICE_STEP), settings.get(Setting.PRICE_ENDINGS)),
                settings.get(Setting.LARGEST_PRICE_CHANGE_PERCENT),
                settings.get(Setting.LOWEST_PRICE_PER_GRAM),
                settings.find(Setting.FIXED_COST_A_SERVE),
                settings.find(Setting.TARGET_PRIME_COST_PERCENT));
    }

    static Exact targetPercent(Optional<Category> category, Settings settings) {
        return category.flatMap(found -> Optional.ofNullable(found.targetCostPercent()))
                .orElseGet(() -> settings.get(Setting.TARGET_COST_PERCENT));
    }

    private static PricedDrink priced(DrinkRow row, Exact targetPercent) {
        return new PricedDrink(
                row.name(),
                row.group(),
                row.menuPrice(),
                row.netPrice(),
                row.cost().cost(),
                row.cost().labour(),
                targetPercent,
                legalGrams(row),
                row.drink().holdPrice());
    }

    /** Grams as the law counts them: ml of pure alcohol × 0.789 (rulings of the published price floors). */
    private static Exact legalGrams(DrinkRow row) {
        double ethanolMl = row.cost().glass().servedMl() * row.cost().glass().abvPercent() / 100;
        return Exact.ofPhysical(ethanolMl).times(Exact.of("0.789"));
    }

    /** Prices with what guests paid for them, on the footing of the menu price. */
    static List<GroupRange> ranges(Book book, List<DrinkRow> rows) {
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
