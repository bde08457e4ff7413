package heeltap.cost;

import java.time.YearMonth;
import java.util.List;
import java.util.Map;

/**
 * What one month says of prices.
 *
 * @param purchases in any order
 * @param positions by ingredient, where counts exist
 */
public record MonthPurchases(YearMonth month, List<Purchase> purchases, Map<String, StockPosition> positions) {}
