package heeltap.stock;

import static org.assertj.core.api.Assertions.assertThat;

import heeltap.quantity.Exact;
import heeltap.quantity.Measure;
import heeltap.quantity.Money;
import heeltap.quantity.Unit;
import heeltap.quantity.Units;
import heeltap.source.Place;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Small beverage figures (worked example 08g: a course problem, Jagels, Dittmer ch. 15; inputs, drinks and bottle
 * potential seen, the two percentages computed).
 */
class BottleFiguresTest {
    private static final Place PLACE = Place.of("2026-10/stock.csv").withRow(2);
    private static final Countable GIN = new Countable(
            "Gin",
            Measure.ML,
            Optional.empty(),
            false,
            Containers.NONE,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());

    private static Exact ml(String number, String unit) {
        return Counting.toBase(GIN, Exact.of(number), unit, PLACE, Units.standard())
                .amount()
                .orElseThrow();
    }

    @Test
    void aQuartHoldsSoManyDrinks() {
        Unit ounce = Units.standard().find("fl oz", Measure.ML).orElseThrow();
        Exact drinks = ml("1", "quart").dividedBy(ounce.factor().times(Exact.of("1.25")));
        assertThat(drinks.round(1, RoundingMode.HALF_UP)).isEqualTo(new BigDecimal("25.6"));
    }

    @Test
    void aLitreSellsForSoMuch() {
        Unit ounce = Units.standard().find("fl oz", Measure.ML).orElseThrow();
        BigDecimal ounces = ml("1", "l").dividedBy(ounce.factor()).round(1, RoundingMode.HALF_UP);
        assertThat(ounces).isEqualTo(new BigDecimal("33.8"));
        assertThat(Money.of("3.00").times(Exact.of(ounces))).isEqualTo(Money.of("101.40"));
    }
}
