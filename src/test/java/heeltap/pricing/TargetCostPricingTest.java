package heeltap.pricing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Prices with 10 % tax in them: net 10 reads 11. */
class TargetCostPricingTest {
    @ParameterizedTest
    @CsvSource({
        // now, cost, target %, grams, rate, step, suggested, reason
        "11.00, 2.20, 22, 0,  0,    0.50, 11.00, AT_TARGET",
        "11.00, 2.30, 22, 0,  0,    0.50, 11.50, TO_TARGET",
        "11.00, 4.00, 22, 0,  0,    0.50, 11.50, TOWARDS_TARGET",
        "11.00, 1.00, 22, 0,  0,    0.50, 10.50, TOWARDS_TARGET",
        // 8 % of 5 is 0.40: no step of 0.50 fits
        "5.00,  2.00, 22, 0,  0,    0.50, 5.00,  STEP_TOO_WIDE",
        // 4.80 is no multiple of a half: 5.00 is the nearest inside the band
        "4.80,  2.00, 22, 0,  0,    0.50, 5.00,  TOWARDS_TARGET",
        "4.80,  0.96, 22, 0,  0,    0.50, 4.80,  AT_TARGET",
        // 40 g at 0.30 is 12: above the largest change, up to the next step
        "10.00, 2.00, 22, 40, 0.30, 0.50, 12.00, LEGAL_FLOOR",
        "10.00, 2.00, 22, 41, 0.30, 0.50, 12.50, LEGAL_FLOOR",
        // floor inside the band, target below it
        "10.00, 1.00, 22, 34, 0.30, 0.50, 10.50, LEGAL_FLOOR",
        // the floor stops a price from falling
        "10.50, 1.00, 22, 34, 0.30, 0.50, 10.50, STEP_TOO_WIDE",
        // cost 12 reads 13.20 and is out of reach of 8 %
        "11.00, 12.0, 22, 0,  0,    0.50, 11.00, COST_OUT_OF_REACH",
        // cost 10.2 reads 11.22: within reach
        "11.00, 10.2, 22, 0,  0,    0.50, 11.50, TOWARDS_TARGET",
    })
    void suggestions(
            String now,
            String cost,
            String target,
            String grams,
            String rate,
            String step,
            String suggested,
            PriceReason.Kind reason) {
        PriceSuggestion suggestion = suggest(drink(now, cost, target, grams, false), rules(rate, step));
        assertThat(suggestion.suggested()).contains(Money.of(suggested));
        assertThat(suggestion.reason().kind()).isEqualTo(reason);
        assertThat(suggestion.isChange()).isEqualTo(!Money.of(now).equals(Money.of(suggested)));
    }

    @Test
    void figuresBeforeAndAfterStandOnTheNetPrice() {
        PriceSuggestion suggestion = suggest(drink("11.00", "2.30", "22", "0", false), rules("0", "0.50"));
        assertThat(suggestion.costPercentNow()).contains(Exact.of(23));
        assertThat(suggestion.costPercentNew())
                .contains(Exact.of("2.30").dividedBy(Exact.of("11.50")).times(Exact.of(110)));
        assertThat(suggestion.marginNow()).contains(Money.of("7.70"));
        Money change = Money.of("0.50").dividedBy(Exact.of("1.1"));
        assertThat(suggestion.breakEvenUnitsPercent())
                .contains(change.negated()
                        .dividedBy(Money.of("7.70").plus(change))
                        .times(Exact.HUNDRED));
        assertThat(suggestion.changePercent())
                .contains(Exact.of("0.50").dividedBy(Exact.of(11)).times(Exact.HUNDRED));
        assertThat(suggestion.floor().reason()).contains(PriceFloor.Reason.COST);
        assertThat(suggestion.floor().price()).isEqualTo(Money.of("2.53"));
    }

    @Test
    void pricesFromCostReadWithTax() {
        PricingRules rules = new PricingRules(
                PriceGrid.step("0.50"), Exact.of(8), Money.ZERO, Optional.of(Money.of("5")), Optional.of(Exact.of(50)));
        PricedDrink drink = new PricedDrink(
                "D",
                "G",
                Optional.of(Money.of("11")),
                Optional.of(Money.of("10")),
                Optional.of(Money.of("2.2")),
                Money.of("0.8"),
                Exact.of(22),
                Optional.of(Exact.ZERO),
                false);
        PriceSuggestion suggestion = suggest(drink, rules);
        assertThat(suggestion.targetCostPrice()).contains(Money.of("11"));
        assertThat(suggestion.marginPrice()).contains(Money.of("7.92"));
        assertThat(suggestion.primeCostPrice()).contains(Money.of("6.6"));
        assertThat(suggest(drink, rules("0", "0.50")).marginPrice()).isEmpty();
    }

    @Test
    void heldPricesStayEvenBelowTheLaw() {
        PriceSuggestion held = suggest(drink("11.00", "4.00", "22", "0", true), rules("0", "0.50"));
        assertThat(held.suggested()).contains(Money.of("11"));
        assertThat(held.reason().kind()).isEqualTo(PriceReason.Kind.HELD);
        PriceSuggestion below = suggest(drink("11.00", "4.00", "22", "40", true), rules("0.30", "0.50"));
        assertThat(below.suggested()).contains(Money.of("11"));
        assertThat(below.reason().kind()).isEqualTo(PriceReason.Kind.HELD_BELOW_LEGAL);
        assertThat(below.reason().figures()).containsExactly(Exact.of(12));
    }

    @Test
    void unknownCostAndUnknownPriceAreShown() {
        PricedDrink noCost = new PricedDrink(
                "D",
                "G",
                Optional.of(Money.of("11")),
                Optional.of(Money.of("10")),
                Optional.empty(),
                Money.ZERO,
                Exact.of(22),
                Optional.of(Exact.of(40)),
                false);
        assertThat(suggest(noCost, rules("0", "0.50")).reason().kind()).isEqualTo(PriceReason.Kind.NO_COST);
        PriceSuggestion law = suggest(noCost, rules("0.30", "0.50"));
        assertThat(law.suggested()).contains(Money.of("12"));
        assertThat(law.reason().kind()).isEqualTo(PriceReason.Kind.LEGAL_FLOOR);
        PricedDrink noPrice = new PricedDrink(
                "D",
                "G",
                Optional.empty(),
                Optional.empty(),
                Optional.of(Money.of("2")),
                Money.ZERO,
                Exact.of(22),
                Optional.of(Exact.ZERO),
                false);
        PriceSuggestion none = suggest(noPrice, rules("0", "0.50"));
        assertThat(none.reason().kind()).isEqualTo(PriceReason.Kind.NO_PRICE);
        assertThat(none.suggested()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"'.95', 9.10, 9.95", "'.00,.50', 9.10, 9.50", "'.00,.50', 9.51, 10.00", "'.95,.45', 9.96, 10.45"})
    void endings(String endings, String low, String expected) {
        List<Money> list = Arrays.stream(endings.split(",")).map(Money::of).toList();
        PriceGrid grid = new PriceGrid(Money.of("0.50"), list);
        assertThat(grid.atLeast(Money.of(low))).isEqualTo(Money.of(expected));
    }

    @Test
    void allPricesOfABand() {
        PriceGrid grid = new PriceGrid(Money.of("1"), List.of(Money.of("0.9"), Money.of("0.5")));
        assertThat(grid.between(Money.of("8.5"), Money.of("10.4")))
                .containsExactly(Money.of("8.5"), Money.of("8.9"), Money.of("9.5"), Money.of("9.9"));
        assertThat(grid.between(Money.of("2"), Money.of("1"))).isEmpty();
        assertThatThrownBy(() -> PriceGrid.step("0")).hasMessageContaining("step");
        assertThatThrownBy(() -> new PriceGrid(Money.of("1"), List.of(Money.of("1"))))
                .hasMessageContaining("ending");
    }

    /** Whatever the figures: on the grid, inside the band, not below the floor; or unchanged. */
    @Property(tries = 500)
    void everyChangeKeepsTheRules(
            @ForAll @IntRange(min = 100, max = 3000) int cents,
            @ForAll @IntRange(min = 1, max = 3000) int costCents,
            @ForAll @IntRange(min = 5, max = 60) int target,
            @ForAll @IntRange(min = 0, max = 50) int grams) {
        Money now = Money.of(Integer.toString(cents)).dividedBy(Exact.HUNDRED);
        PricedDrink drink = drink(
                now.toString(),
                Money.of(Integer.toString(costCents)).dividedBy(Exact.HUNDRED).toString(),
                Integer.toString(target),
                Integer.toString(grams),
                false);
        PriceSuggestion suggestion = suggest(drink, rules("0.25", "0.50"));
        Money price = suggestion.suggested().orElseThrow();
        Money legal = Money.of("0.25").times(Exact.of(grams));
        assertThat(price.compareTo(legal)).isNotNegative();
        if (suggestion.isChange()) {
            assertThat(price.dividedBy(Money.of("0.5")).isWhole()).isTrue();
            assertThat(price).isGreaterThanOrEqualTo(suggestion.floor().price());
            if (legal.compareTo(now) <= 0) {
                assertThat(price.minus(now).abs()).isLessThanOrEqualTo(now.times(Exact.of("0.08")));
            }
        }
    }

    private static PricedDrink drink(String now, String cost, String target, String grams, boolean held) {
        return new PricedDrink(
                "D",
                "G",
                Optional.of(Money.of(now)),
                Optional.of(Money.of(now).withoutTax(Exact.of(10))),
                Optional.of(Money.of(cost)),
                Money.ZERO,
                Exact.of(target),
                Optional.of(Exact.of(grams)),
                held);
    }

    private static PricingRules rules(String rate, String step) {
        return new PricingRules(PriceGrid.step(step), Exact.of(8), Money.of(rate), Optional.empty(), Optional.empty());
    }

    private static PriceSuggestion suggest(PricedDrink drink, PricingRules rules) {
        return TargetCostPricing.suggest(List.of(drink), rules).get(0);
    }
}
