package heeltap.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ExactTest {
    @Test
    void aShareOnTheThresholdEqualsIt() {
        // 210 of 3000 against 0.7 / 10: unequal in binary doubles (worked example 01d)
        assertThat(Exact.of(210).dividedBy(Exact.of(3000)))
                .isEqualTo(Exact.of("0.7").dividedBy(Exact.of(10)));
    }

    /** Two negative ones are where version 1.2 of the fraction library errs. */
    @Property
    void orderIsThatOfDecimals(
            @ForAll @BigRange(min = "-50", max = "50") BigDecimal a,
            @ForAll @BigRange(min = "-50", max = "50") BigDecimal b) {
        assertThat(Integer.signum(Exact.of(a).compareTo(Exact.of(b)))).isEqualTo(Integer.signum(a.compareTo(b)));
        assertThat(Exact.of(a).negated().isLessThan(Exact.of(b).negated())).isEqualTo(a.compareTo(b) > 0);
    }

    @ParameterizedTest
    @CsvSource({
        "1,3,10,0.3333333333",
        "2,3,6,0.666667",
        "1,8,2,0.13",
        "200000,1,2,200000",
        "-1,8,2,-0.13",
        "0,7,3,0",
        "123456789,1,3,123000000"
    })
    void printsSignificantDigitsWithoutExponent(long over, long under, int digits, String printed) {
        assertThat(Exact.of(over)
                        .dividedBy(Exact.of(under))
                        .toSignificant(digits)
                        .toPlainString())
                .isEqualTo(printed);
    }

    @ParameterizedTest
    @CsvSource({
        "5.30,0.50,HALF_UP,5.5",
        "5.20,0.50,HALF_UP,5",
        "5.25,0.50,HALF_UP,5.5",
        "5.25,0.50,DOWN,5",
        "5.01,0.50,UP,5.5"
    })
    void roundsToASteps(String number, String step, RoundingMode mode, String expected) {
        assertThat(Exact.of(number).roundToMultiple(Exact.of(step), mode)).isEqualTo(Exact.of(expected));
    }

    @Property
    void aDecimalIsKeptExactly(@ForAll @BigRange(min = "-1000000", max = "1000000") BigDecimal decimal) {
        assertThat(Exact.of(decimal).round(decimal.scale(), RoundingMode.UNNECESSARY))
                .isEqualByComparingTo(decimal);
    }

    @Property
    void dividingUndoesMultiplying(@ForAll int a, @ForAll @IntRange(min = 1) int b) {
        assertThat(Exact.of(a).dividedBy(Exact.of(b)).times(Exact.of(b))).isEqualTo(Exact.of(a));
    }

    @Test
    void refusesToDivideByZero() {
        assertThatThrownBy(() -> Exact.ONE.dividedBy(Exact.ZERO)).isInstanceOf(ArithmeticException.class);
    }

    @Test
    void takesPhysicalFiguresTo15Digits() {
        assertThat(Exact.ofPhysical(0.1 + 0.2)).isEqualTo(Exact.of("0.3"));
    }

    @ParameterizedTest
    @CsvSource({
        // worked example 05a: 3 minutes at 3.50 an hour is 0.175 and prints 0.18
        "0.175,EUR,0.18",
        "-0.175,EUR,-0.18",
        "0.5,JPY,1",
        "1.2345,KWD,1.235",
        "7,EUR,7.00"
    })
    void moneyRoundsHalfUpInItsMinorUnit(String amount, String currency, String printed) {
        assertThat(Money.of(amount).rounded(Currency.getInstance(currency)).toPlainString())
                .isEqualTo(printed);
    }

    @ParameterizedTest
    @CsvSource({
        // HM Revenue & Customs, calculating VAT (worked example 11a): tax inside gross
        "120,20,20",
        "115,15,15",
        "117.50,17.5,17.50",
        "60,20,10"
    })
    void takesTaxOutOfAGrossPrice(String gross, String rate, String tax) {
        Money net = Money.of(gross).withoutTax(Exact.of(rate));
        assertThat(Money.of(gross).minus(net)).isEqualTo(Money.of(tax));
        assertThat(net.withTax(Exact.of(rate))).isEqualTo(Money.of(gross));
    }
}
