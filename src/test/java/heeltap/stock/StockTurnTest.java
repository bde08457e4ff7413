package heeltap.stock;

import static org.assertj.core.api.Assertions.assertThat;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StockTurnTest {
    /**
     * OpenStax, Principles of Accounting vol. 1, 10.5 (worked example 08e). Inputs, average and turnover seen in the source;
     * it prints days of 306.79 and 433.32 from rounded 6053 / 19.73 and 9403 / 21.70: exactly they are 306.83 and 433.35
     * (computed).
     */
    @ParameterizedTest
    @CsvSource({"7200,3150,8955,6053,1.19,306.83", "7920,8955,9851,9403,0.84,433.35"})
    void turnsOverAsPublished(
            String cost, String opening, String closing, BigDecimal average, BigDecimal turnover, BigDecimal days) {
        Money costOfGoods = Money.of(cost);
        Money from = Money.of(opening);
        Money to = Money.of(closing);
        assertThat(StockTurn.averageStock(from, to).amount().round(0, RoundingMode.HALF_UP))
                .isEqualTo(average);
        assertThat(StockTurn.turnover(costOfGoods, from, to).orElseThrow().round(2, RoundingMode.HALF_UP))
                .isEqualTo(turnover);
        assertThat(StockTurn.daysInStock(costOfGoods, from, to, 365)
                        .orElseThrow()
                        .round(2, RoundingMode.HALF_UP))
                .isEqualTo(days);
    }

    /** The print's own way: days from the rounded average over the rounded cost of a day. */
    @ParameterizedTest
    @CsvSource({"6053,7200,306.79", "9403,7920,433.32"})
    void thePrintedDaysComeFromRoundedFigures(String average, String cost, BigDecimal printed) {
        BigDecimal aDay = Exact.of(cost).dividedBy(Exact.of(365)).round(2, RoundingMode.HALF_UP);
        assertThat(Exact.of(average).dividedBy(Exact.of(aDay)).round(2, RoundingMode.HALF_UP))
                .isEqualTo(printed);
    }

    @Test
    void withoutStockOrUseThereIsNoFigure() {
        assertThat(StockTurn.turnover(Money.of("5"), Money.ZERO, Money.ZERO)).isEmpty();
        assertThat(StockTurn.daysInStock(Money.ZERO, Money.of("5"), Money.of("5"), 30))
                .isEmpty();
    }
}
