package heeltap.load;

import heeltap.quantity.Measure;
import heeltap.quantity.Pack;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Invoices that count cases and print the price of a bottle, or count bottles beside the pack of a case. */
final class ByBottle {
    private final boolean price;
    private final boolean quantity;

    ByBottle(Layout layout) {
        this.price = isNamed(layout, Field.UNIT_PRICE);
        this.quantity = isNamed(layout, Field.QUANTITY);
    }

    private static boolean isNamed(Layout layout, Field field) {
        Integer column = layout.columns().get(field);
        return column != null && RowWords.is("by bottle", layout.headings().getOrDefault(column, ""));
    }

    /** Whether a heading says so of prices or quantities. */
    boolean isAny() {
        return price || quantity;
    }

    /**
     * Makes the price that of what the quantity counts.
     *
     * @param numbers of the line, changed where its price is by the bottle and its quantity is not
     * @return the text of the pack that the quantity counts; null where the bottles in a case must be known and are not
     */
    @Nullable String settle(Map<Field, BigDecimal> numbers, String text, PackReader packs) {
        Pack pack = text.isEmpty() ? null : packs.parse(text, Measure.ML).orElse(null);
        if (quantity) {
            return pack == null ? text : pack.unitSize().toString();
        }
        BigDecimal each = numbers.get(Field.UNIT_PRICE);
        if (each == null || pack != null) {
            numbers.computeIfPresent(
                    Field.UNIT_PRICE, (field, value) -> pack == null ? value : value.multiply(units(pack)));
            return text;
        }
        return numbers.containsKey(Field.LINE_TOTAL) ? text : null;
    }

    private static BigDecimal units(Pack pack) {
        return pack.units().round(6, RoundingMode.HALF_EVEN).stripTrailingZeros();
    }
}
