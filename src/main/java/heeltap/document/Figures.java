package heeltap.document;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.text.NumberFormat;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Currency;
import java.util.Locale;

/** Figures and dates as people read them, in one language and currency. Negative figures carry a true minus sign. */
public final class Figures {
    public static final char MINUS = '\u2212';

    private final Locale locale;
    private final Currency currency;
    private final int decimals;

    public Figures(Locale locale, Currency currency) {
        this.locale = locale;
        this.currency = currency;
        this.decimals = Math.max(0, currency.getDefaultFractionDigits());
    }

    /** The decimals of the currency. */
    public int currencyDecimals() {
        return decimals;
    }

    /** Rounded once to the currency's decimals, HALF_UP, with its sign. */
    public String money(Money money) {
        DecimalFormat pattern = withMinus((DecimalFormat) NumberFormat.getCurrencyInstance(locale));
        pattern.setCurrency(currency);
        pattern.setMinimumFractionDigits(decimals);
        pattern.setMaximumFractionDigits(decimals);
        return pattern.format(money.rounded(currency));
    }

    /**
     * A number of a table's column, HALF_UP, without a currency sign.
     *
     * @param places of counts, amounts and fine money, as {@link ColumnDigits} has them
     */
    public String number(Exact number, Format format, int places) {
        return switch (format) {
            case COUNT, AMOUNT, FINE_MONEY -> plain(number.round(places, RoundingMode.HALF_UP), places, places);
            case MONEY, MONEY_OR_COUNT, UNIT_MONEY, PERCENT, TEXT, DATE, YES_NO -> number(number, format);
        };
    }

    /** A number that stands alone, as its format prints it for people, HALF_UP, without a currency sign. */
    public String number(Exact number, Format format) {
        return switch (format) {
            case MONEY, MONEY_OR_COUNT, UNIT_MONEY ->
                plain(number.round(decimals, RoundingMode.HALF_UP), decimals, decimals);
            case FINE_MONEY -> {
                BigDecimal rounded = number.toSignificant(4);
                int places = Math.max(decimals, rounded.scale() + 4 - rounded.precision());
                yield number.isZero() ? plain(rounded, decimals, decimals) : plain(rounded, places, places);
            }
            case PERCENT -> percent(number, 1);
            case COUNT -> plain(number.round(2, RoundingMode.HALF_UP), 0, 2);
            case AMOUNT -> {
                int most = number.abs().compareTo(Exact.HUNDRED) >= 0 ? 1 : 2;
                yield plain(number.round(most, RoundingMode.HALF_UP), 0, most);
            }
            case TEXT, DATE, YES_NO -> number.toString();
        };
    }

    /** 22.5 prints as 22.5 % does in the language. */
    public String percent(Exact number, int places) {
        DecimalFormat pattern = withMinus((DecimalFormat) NumberFormat.getPercentInstance(locale));
        pattern.setMinimumFractionDigits(places);
        pattern.setMaximumFractionDigits(places);
        return pattern.format(number.percent().round(places + 2, RoundingMode.HALF_UP));
    }

    /** Such as {@code 3 Oct 2026}. */
    public String date(LocalDate date) {
        boolean american = "US".equals(locale.getCountry()) || "CA".equals(locale.getCountry());
        DateTimeFormatter pattern = "en".equals(locale.getLanguage()) && !american
                ? DateTimeFormatter.ofPattern("d MMM uuuu", locale)
                : DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM).withLocale(locale);
        return pattern.format(date);
    }

    /** Such as {@code October 2026}, as it stands in a sentence: some languages write months small. */
    public String month(YearMonth month) {
        String pattern = "es".equals(locale.getLanguage()) ? "LLLL 'de' uuuu" : "LLLL uuuu";
        return DateTimeFormatter.ofPattern(pattern, locale).format(month);
    }

    /** The same as it stands alone, with a capital. */
    public String monthAlone(YearMonth month) {
        String text = month(month);
        return text.substring(0, 1).toUpperCase(locale) + text.substring(1);
    }

    /** So many decimals at least and at most. */
    public String plain(BigDecimal number, int least, int most) {
        DecimalFormat pattern = withMinus((DecimalFormat) NumberFormat.getNumberInstance(locale));
        pattern.setMinimumFractionDigits(least);
        pattern.setMaximumFractionDigits(most);
        return pattern.format(number);
    }

    private static DecimalFormat withMinus(DecimalFormat pattern) {
        DecimalFormatSymbols symbols = pattern.getDecimalFormatSymbols();
        symbols.setMinusSign(MINUS);
        pattern.setDecimalFormatSymbols(symbols);
        pattern.setRoundingMode(RoundingMode.HALF_UP);
        return pattern;
    }
}
