package heeltap.load;

import heeltap.quantity.Money;
import heeltap.record.Drink;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The book's menu prices by a drink's own name and code: a witness for columns that can be read in more than one way. */
final class MenuPrices {
    /** How far, in parts of the price, money may lie from it: taxes and happy hours lie within, a wrong reading beyond. */
    private static final BigDecimal NEAR = new BigDecimal("0.3");

    private final Map<String, BigDecimal> prices = new HashMap<>();

    MenuPrices(MonthContext context) {
        for (Drink drink : context.book().drinks()) {
            Money price = drink.price();
            if (price != null && price.isPositive()) {
                BigDecimal decimal = price.amount().round(6, RoundingMode.HALF_EVEN);
                prices.putIfAbsent(TextFold.fold(drink.name()), decimal);
                if (!drink.code().isEmpty()) {
                    prices.putIfAbsent(TextFold.fold(drink.code()), decimal);
                }
            }
        }
    }

    /** As the guest reads it, more than zero; null where the book has none for the item. */
    @Nullable BigDecimal find(String item, String code) {
        BigDecimal price = item.isEmpty() ? null : prices.get(TextFold.fold(item));
        return price != null || code.isEmpty() ? price : prices.get(TextFold.fold(code));
    }

    /** Whether money may be the price of so many. */
    static boolean isNear(BigDecimal money, BigDecimal price, BigDecimal quantity) {
        BigDecimal whole = price.multiply(quantity).abs();
        return money.abs().subtract(whole).abs().compareTo(whole.multiply(NEAR)) <= 0;
    }
}
