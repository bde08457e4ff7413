package heeltap.load;

import heeltap.record.Drink;
import java.util.HashMap;
import java.util.Map;

/** What an item is called when rows of two files are compared: its name, else the name that a list gives its code. */
final class ItemKeys {
    private final PriceList prices;
    private final Map<String, String> byCode = new HashMap<>();

    ItemKeys(MonthContext context, PriceList prices) {
        this.prices = prices;
        for (Drink drink : context.book().drinks()) {
            if (!drink.code().isEmpty()) {
                byCode.putIfAbsent(TextFold.fold(drink.code()), drink.name());
            }
        }
    }

    /** Folded; empty where the row names nothing. */
    String key(Fields fields) {
        String item = fields.text(Field.ITEM);
        String code = fields.text(Field.CODE);
        if (!item.isEmpty() || code.isEmpty()) {
            return TextFold.fold(item);
        }
        String listed = prices.name(code);
        String name = listed.isEmpty() ? byCode.getOrDefault(TextFold.fold(code), code) : listed;
        return TextFold.fold(name);
    }

    /** A ticket's number without the marks that only some exports print: {@code #00017} is {@code 17}. */
    static String ticket(Fields fields) {
        String folded = fields.text(Field.TICKET);
        if (folded.isEmpty()) {
            return folded;
        }
        folded = TextFold.fold(folded).replace("#", "").strip();
        int zeros = 0;
        while (zeros < folded.length() - 1 && folded.charAt(zeros) == '0') {
            zeros++;
        }
        return folded.substring(zeros);
    }
}
