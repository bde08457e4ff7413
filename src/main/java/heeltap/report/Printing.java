package heeltap.report;

import heeltap.document.Card;
import heeltap.document.CellValue;
import heeltap.document.Figures;
import heeltap.document.Format;
import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.DecimalFormat;
import java.text.FieldPosition;
import java.text.NumberFormat;
import java.text.ParsePosition;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Currency;
import java.util.Locale;

/** Values of cells and axes as people read them, in one language and currency. */
final class Printing {
    static final char MINUS = Figures.MINUS;

    private final Locale locale;
    private final Figures figures;
    private final Words words;

    Printing(Locale locale, Currency currency) {
        this.locale = locale;
        this.figures = new Figures(locale, currency);
        this.words = Words.of(locale);
    }

    Words words() {
        return words;
    }

    int currencyDecimals() {
        return figures.currencyDecimals();
    }

    /** A cell of a table's column. */
    String cell(CellValue value, Format format, int places) {
        Format own = format.of(value);
        if (own != format) {
            return cell(value, own);
        } else if (value instanceof CellValue.Sum sum) {
            return figures.number(sum.money().amount(), format, places);
        }
        return value instanceof CellValue.Figure figure
                ? figures.number(figure.number(), format, places)
                : cell(value, format);
    }

    /** A value by itself: money without the currency's sign, which stands at the foot of each page. */
    String cell(CellValue value, Format format) {
        if (value instanceof CellValue.Blank) {
            return "";
        } else if (value instanceof CellValue.Text text) {
            return text.text();
        } else if (value instanceof CellValue.Term term) {
            return term.said();
        } else if (value instanceof CellValue.Day day) {
            return date(day.date());
        } else if (value instanceof CellValue.YesNo yesNo) {
            return words.get(yesNo.yes() ? "yes" : "no");
        } else if (value instanceof CellValue.Sum sum) {
            return number(sum.money().amount(), format.of(value));
        }
        return number(((CellValue.Figure) value).number(), format.of(value));
    }

    /** A figure that stands alone: money with the currency's sign. */
    String alone(CellValue value, Format format) {
        return value instanceof CellValue.Sum sum && format != Format.FINE_MONEY
                ? money(sum.money())
                : cell(value, format);
    }

    /** An amount to weigh or measure, with its unit. */
    String measured(Card.Measured measured) {
        String number = figures.plain(
                measured.amount().round(measured.decimals(), RoundingMode.HALF_UP),
                measured.least(),
                measured.decimals());
        return measured.unit().isEmpty() ? number : number + "\u00A0" + measured.unit();
    }

    String money(Money money) {
        return figures.money(money);
    }

    String number(Exact number, Format format) {
        return figures.number(number, format);
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
            return figures.percent(Exact.of(exact), scale);
        }
        boolean money = format == Format.MONEY || format == Format.UNIT_MONEY;
        int places = money ? Math.max(scale, figures.currencyDecimals()) : scale;
        return figures.plain(exact, places, places);
    }

    String date(LocalDate date) {
        return figures.date(date);
    }

    String month(YearMonth month) {
        return figures.monthAlone(month);
    }
}
