package heeltap.load;

import heeltap.record.KnownNames;
import heeltap.record.NameRule;
import heeltap.record.SaleTotal;
import heeltap.source.Place;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What one sheet of sales names, with the sums of each. */
final class SoldItems {
    private final MonthContext context;
    private final PriceList prices;
    private final Map<String, Map<String, Item>> items = new HashMap<>();

    /**
     * One name and code.
     *
     * @param item as written, else as the price list names the code
     */
    record Item(String item, String code, KnownNames.Verdict verdict, SaleSums sums) {}

    SoldItems(MonthContext context, PriceList prices) {
        this.context = context;
        this.prices = prices;
    }

    /** The item of a row; null where the row names none. */
    @Nullable Item find(String item, String code) {
        if (item.isEmpty() && code.isEmpty()) {
            return null;
        }
        Map<String, Item> byCode = items.get(item);
        Item found = byCode == null ? null : byCode.get(code);
        if (found == null) {
            String name = item.isEmpty() ? prices.name(code) : item;
            found = new Item(
                    name, code, context.names().ask(NameRule.Where.SALES, name, code), new SaleSums(name, code));
            items.computeIfAbsent(item, k -> new HashMap<>()).put(code, found);
        }
        return found;
    }

    /** All sums, in an order free of chance. */
    List<SaleTotal> totals(Place sheet) {
        List<SaleTotal> totals = new ArrayList<>();
        for (Map<String, Item> byCode : items.values()) {
            for (Item item : byCode.values()) {
                totals.addAll(item.sums().totals(sheet, context.month()));
            }
        }
        totals.sort(SalesFiles.ORDER);
        return totals;
    }
}
