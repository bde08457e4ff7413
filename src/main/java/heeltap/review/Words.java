package heeltap.review;

import heeltap.document.CellValue;
import heeltap.document.Figures;
import heeltap.document.Format;
import heeltap.quantity.Exact;
import heeltap.quantity.Measure;
import heeltap.quantity.Money;
import heeltap.record.Setting;
import heeltap.record.Settings;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.YearMonth;

/** Sentences and figures in the bar's language. */
record Words(Texts texts, Figures figures) {
    static Words of(Settings settings) {
        return new Words(
                Texts.in(settings.get(Setting.LANGUAGE)),
                new Figures(settings.get(Setting.LANGUAGE), settings.get(Setting.CURRENCY)));
    }

    String say(String key, Object... printed) {
        return texts.say(key, printed);
    }

    /** A word of a closed set as a table's cell; see {@link Texts#term}. */
    CellValue.Term term(String set, String published) {
        return texts.term(set, published);
    }

    /** The name of a measure. */
    CellValue.Term measure(Measure measure) {
        return term("measure", measure.symbol());
    }

    String money(Money money) {
        return figures.money(money);
    }

    /** With its sign where it is above zero too. */
    String signedMoney(Money money) {
        return (money.isZero() || money.amount().isNegative() ? "" : "+") + money(money);
    }

    /** A lowest price: rounded up, so that what is read is never below it. */
    String priceAtLeast(Money price) {
        int decimals = figures.currencyDecimals();
        return figures.money(Money.of(price.amount().round(decimals, RoundingMode.CEILING)));
    }

    /** With one decimal. */
    String percent(Exact percent) {
        return figures.percent(percent, 1);
    }

    String count(Exact number) {
        return figures.number(number, Format.COUNT);
    }

    String amount(Exact number) {
        return figures.number(number, Format.AMOUNT);
    }

    /** To the nearest day. */
    String wholeDays(Exact days) {
        return figures.plain(days.round(0, RoundingMode.HALF_UP), 0, 0);
    }

    String date(LocalDate date) {
        return figures.date(date);
    }

    String month(YearMonth month) {
        return figures.month(month);
    }
}
