package heeltap.load;

import heeltap.source.Row;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A row of an invoice sheet that says something of money.
 *
 * @param part the sheet it stands in
 * @param role what it speaks for
 * @param product as printed
 * @param kind the text of the kind column; empty for none
 * @param numbers the numbers of its fields
 * @param discountPercent a discount in percent; null for none
 */
record InvoiceRow(
        InvoiceSheet part,
        Row row,
        Role role,
        String product,
        String code,
        String pack,
        String kind,
        String currency,
        Map<Field, BigDecimal> numbers,
        @Nullable BigDecimal discountPercent) {
    /** What a row of an invoice speaks for. */
    enum Role {
        LINE(""),
        DELIVERY("row delivery"),
        DISCOUNT("row discount"),
        DEPOSIT("row deposit"),
        SUBTOTAL("row subtotal"),
        TAX("row tax"),
        TOTAL("row total");

        private final String words;

        Role(String words) {
            this.words = words;
        }

        /** By the row's name, percentages in it aside: {@code VAT 20 %}, {@code Discount (5%)}. */
        static Role of(String product) {
            StringBuilder name = new StringBuilder();
            for (String word : TextFold.fold(product).split(" ", -1)) {
                boolean number = word.isEmpty() || Character.isDigit(word.charAt(0)) || word.equals("percent");
                name.append(number ? "" : name.isEmpty() ? word : " " + word);
            }
            String folded = name.toString();
            for (Role role : values()) {
                if (role != LINE && !folded.isEmpty() && RowWords.isFolded(role.words, folded)) {
                    return role;
                }
            }
            return LINE;
        }
    }

    InvoiceRow {
        numbers = numbers.isEmpty() ? Map.of() : new EnumMap<>(numbers);
    }

    @Nullable BigDecimal number(Field field) {
        return numbers.get(field);
    }

    /** The row's money whatever column holds it: the line total, else quantity times price, else the last number. */
    @Nullable BigDecimal money() {
        BigDecimal total = number(Field.LINE_TOTAL);
        BigDecimal price = number(Field.UNIT_PRICE);
        BigDecimal quantity = number(Field.QUANTITY);
        if (total != null || price == null) {
            return total != null ? total : only();
        }
        return quantity == null ? price : price.multiply(quantity);
    }

    private @Nullable BigDecimal only() {
        BigDecimal last = null;
        for (BigDecimal value : numbers.values()) {
            last = value;
        }
        return last;
    }

    /** What makes a row the same as another one printed twice. */
    String signature() {
        BigDecimal money = money();
        BigDecimal quantity = number(Field.QUANTITY);
        return role + "|" + TextFold.fold(product) + "|" + (quantity == null ? "" : quantity.stripTrailingZeros()) + "|"
                + (money == null ? "" : money.stripTrailingZeros());
    }
}
