package heeltap.load;

import java.util.Currency;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Marks by which currencies are written besides their codes. */
final class CurrencyMarks {
    private static final Map<String, String> MARKS = Map.of(
            "€", "EUR", "euro", "EUR", "euros", "EUR", "£", "GBP", "₹", "INR", "zł", "PLN", "fr.", "CHF", "sfr", "CHF");

    private static final Set<String> CODES = Currency.getAvailableCurrencies().stream()
            .map(Currency::getCurrencyCode)
            .collect(Collectors.toUnmodifiableSet());

    private CurrencyMarks() {}

    /** The currency written beside an amount, as a sign or an ISO 4217 code; empty where none is. */
    static String in(String amount) {
        StringBuilder letters = new StringBuilder();
        for (int i = 0; i < amount.length(); i++) {
            char c = amount.charAt(i);
            if (Character.getType(c) == Character.CURRENCY_SYMBOL) {
                return String.valueOf(c);
            }
            letters.append(c >= 'A' && c <= 'Z' ? c : "");
        }
        return CODES.contains(letters.toString()) ? letters.toString() : "";
    }

    /** Whether a mark may stand for a currency; a mark of several currencies, such as {@code $}, may for each. */
    static boolean isOf(String mark, String code) {
        String plain = TextFold.trim(mark);
        if (plain.equals("$")) {
            return code.endsWith("D") || code.equals("MXN");
        }
        if (plain.equalsIgnoreCase("kr")) {
            return code.endsWith("K");
        }
        return code.equals(MARKS.get(plain.toLowerCase(Locale.ROOT)));
    }
}
