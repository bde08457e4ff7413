package heeltap.review;

import heeltap.quantity.Exact;
import heeltap.record.Book;
import heeltap.record.Category;
import heeltap.record.Drink;
import heeltap.record.Folding;
import heeltap.record.Setting;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** What a drink's category says of it, else what the settings say. */
final class Categories {
    static final String NO_CATEGORY = "(none)";

    private final Map<String, Category> byName = new HashMap<>();
    private final Exact targetCostPercent;

    Categories(Book book) {
        book.categories().forEach(category -> byName.put(Folding.fold(category.name()), category));
        targetCostPercent = book.settings().get(Setting.TARGET_COST_PERCENT);
    }

    Optional<Category> find(Drink drink) {
        return Optional.ofNullable(byName.get(Folding.fold(drink.category())));
    }

    /** In which the drink's popularity is measured and its price answered. */
    String group(Drink drink) {
        return drink.category().isBlank()
                ? NO_CATEGORY
                : find(drink).map(Category::compareWithin).orElse(drink.category());
    }

    boolean isAnalysed(Drink drink) {
        return drink.inMenuAnalysis() != null
                ? drink.inMenuAnalysis()
                : find(drink).map(Category::inMenuAnalysis).orElse(true);
    }

    Exact targetPercent(Drink drink) {
        return find(drink)
                .flatMap(category -> Optional.ofNullable(category.targetCostPercent()))
                .orElse(targetCostPercent);
    }
}
