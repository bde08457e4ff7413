package heeltap.load;

import java.util.Map;

/** Marks by which currencies are written besides their codes. */
final class CurrencyMarks {
    private static final Map<String, String> MARKS = Map.of(
            "€", "EUR", "euro", "EUR", "euros", "EUR", "£", "GBP", "₹", "INR", "zł", "PLN", "fr.", "CHF", "sfr", "CHF");

    private CurrencyMarks() {}

    /** Whether a mark may stand for a currency; a mark of several currencies, such as {@code $}, may for each. */
    static boolean isOf(String mark, String code) {
        String plain = TextFold.trim(mark);
        if (plain.equals("$")) {
            return code.endsWith("D") || code.equals("MXN");
        }
        if (plain.equalsIgnoreCase("kr")) {
            return code.endsWith("K");
        }
        return code.equals(MARKS.get(plain.toLowerCase(java.util.Locale.ROOT)));
    }
}
