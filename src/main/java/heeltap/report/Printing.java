package heeltap.report;

import heeltap.document.CellValue;
import heeltap.document.Format;
import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.text.FieldPosition;
import java.text.NumberFormat;
import java.text.ParsePosition;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Currency;
import java.util.Locale;

/** Values as people read them, in one language and currency. Negative figures carry a true minus sign. */
final class Printing {
    static final char MINUS = '\u2212';

    private final Locale locale;
    private final Currency currency;
    private final Words words;
    private final int decimals;

    Printing(Locale locale, Currency currency) {
        this.locale = locale;
        this.currency = currency;
        this.words = Words.of(locale);
        this.decimals = Math.max(0, currency.getDefaultFractionDigits());
    }

    Words words() {
        return words;
    }

    int currencyDecimals() {
        return decimals;
    }

    /** A table's cell: money without the currency's sign, which stands at the foot of each page. */
    String cell(CellValue value, Format format) {
        if (value instanceof CellValue.Blank) {
            return "";
        } else if (value instanceof CellValue.Text text) {
            return text.text();
        } else if (value instanceof CellValue.Day day) {
            return date(day.date());
        } else if (value instanceof CellValue.YesNo yesNo) {
            return words.get(yesNo.yes() ? "yes" : "no");
        } else if (value instanceof CellValue.Sum sum) {
            return number(sum.money().amount(), format);
        }
        return number(((CellValue.Figure) value).number(), format);
    }

    /** A figure that stands alone: money with the currency's sign. */
    String alone(CellValue value, Format format) {
        return value instanceof CellValue.Sum sum && format != Format.FINE_MONEY
                ? money(sum.money())
                : cell(value, format);
    }

    /** Rounded once to the currency's decimals, with its sign. */
    String money(Money money) {
        DecimalFormat pattern = withMinus((DecimalFormat) NumberFormat.getCurrencyInstance(locale));
        pattern.setCurrency(currency);
        pattern.setMinimumFractionDigits(decimals);
        pattern.setMaximumFractionDigits(decimals);
        return pattern.format(money.rounded(currency));
    }

    String number(Exact number, Format format) {
        return switch (format) {
            case MONEY, UNIT_MONEY -> plain(number.round(decimals, RoundingMode.HALF_UP), decimals, decimals);
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

    private String percent(Exact number, int places) {
        DecimalFormat pattern = withMinus((DecimalFormat) NumberFormat.getPercentInstance(locale));
        pattern.setMinimumFractionDigits(places);
        pattern.setMaximumFractionDigits(places);
        return pattern.format(number.percent().round(places + 2, RoundingMode.HALF_UP));
    }

    /** What follows a number in percent, with its space where the language has one. */
    String percentMark() {
        String suffix = ((DecimalFormat) NumberFormat.getPercentInstance(locale)).getPositiveSuffix();
        return suffix.isEmpty() ? "%" : suffix;
    }

    /** The numbers along an axis: as few decimals as its steps need. */
    NumberFormat axis(Format format) {
        return new NumberFormat() {
            private static final long serialVersionUID = 1L;

            @Override
            public StringBuffer format(double number, StringBuffer to, FieldPosition position) {
                return to.append(axisNumber(number, format));
            }

            @Override
            public StringBuffer format(long number, StringBuffer to, FieldPosition position) {
                return format((double) number, to, position);
            }

            @Override
            public Number parse(String source, ParsePosition position) {
                throw new UnsupportedOperationException("an axis only prints");
            }
        };
    }

    private String axisNumber(double number, Format format) {
        BigDecimal exact = Exact.ofPhysical(number).toSignificant(10);
        int scale = Math.max(0, exact.scale());
        if (format == Format.PERCENT) {
            return percent(Exact.of(exact), scale);
        }
        if (format == Format.UNIT_MONEY) {
            return plain(exact, decimals, Math.max(scale, decimals));
        }
        boolean money = format == Format.MONEY;
        return plain(exact, scale > 0 && money ? Math.max(scale, decimals) : scale, Math.max(scale, decimals));
    }

    /** Such as {@code 3 Oct 2026}. */
    String date(LocalDate date) {
        boolean american = "US".equals(locale.getCountry()) || "CA".equals(locale.getCountry());
        DateTimeFormatter pattern = "en".equals(locale.getLanguage()) && !american
                ? DateTimeFormatter.ofPattern("d MMM uuuu", locale)
                : DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM).withLocale(locale);
        return pattern.format(date);
    }

    /** Such as {@code October 2026}. */
    String month(YearMonth month) {
        String text = DateTimeFormatter.ofPattern("LLLL uuuu", locale).format(month);
        return text.substring(0, 1).toUpperCase(locale) + text.substring(1);
    }

    private String plain(BigDecimal number, int least, int most) {
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
