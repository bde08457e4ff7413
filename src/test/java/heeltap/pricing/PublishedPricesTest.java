package heeltap.pricing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * The worked examples in the resources beside this test; each file names its source, says which of its figures were
 * seen in print, and where the print is wrong. Printed figures are met to half a unit of their last digit.
 */
class PublishedPricesTest {
    @Test
    void averagePricesOfATwelvePriceCard() {
        JsonNode json = read("06c-latour-desserts-pmd-pmo");
        List<RangeItem> items = new ArrayList<>();
        for (JsonNode price : json.at("/inputs/card")) {
            Money money = Money.of(price.asText());
            Exact sold = Exact.of(json.at("/inputs/sales").path(price.asText()).asText("0"));
            items.add(new RangeItem("Dessert " + price.asText(), "Desserts", money, sold, money.times(sold)));
        }
        GroupRange range = PriceRange.of(items).get(0);
        printed(range.offeredAverage().amount(), json.at("/expectedPrinted/pmo"));
        printed(range.soldAverage().orElseThrow().amount(), json.at("/expectedPrinted/pmd"));
        close(range.response().orElseThrow(), json.at("/recomputed/ratioPmdPmo"));
        close(range.opening(), json.at("/recomputed/opening"));
        close(range.bands().lowerLimit().amount(), json.at("/recomputed/limit1"));
        close(range.bands().upperLimit().amount(), json.at("/recomputed/limit2"));
        // two prices lie exactly on the limits: the middle band is closed
        JsonNode closed = json.at("/recomputed/countsByEdgeRule/closedMiddle");
        assertThat(List.of(
                        range.bands().low(),
                        range.bands().middle(),
                        range.bands().high()))
                .containsExactly(
                        closed.get(0).asInt(),
                        closed.get(1).asInt(),
                        closed.get(2).asInt());
        assertThat(range.findings()).isEmpty();
    }

    @Test
    void sixDishesOfWhichTheSourcePrintsSums() {
        JsonNode json = read("06e-omnes-spanish");
        JsonNode in = json.get("inputs");
        // the four prices between are constructed so that the sum is the printed one; the revenue stands on one dish
        List<RangeItem> items = new ArrayList<>();
        List<String> prices = List.of("6.50", "9.50", "10.00", "10.50", "11.00", "15.00");
        assertThat(prices.stream().map(Exact::of).reduce(Exact.ZERO, Exact::plus))
                .isEqualTo(Exact.of(in.get("sumOfPrices").asText()));
        for (int i = 0; i < prices.size(); i++) {
            items.add(new RangeItem(
                    "Dish " + i,
                    "Dishes",
                    Money.of(prices.get(i)),
                    i == 0 ? Exact.of(in.get("units").asText()) : Exact.ZERO,
                    i == 0 ? Money.of(in.get("revenue").asText()) : Money.ZERO));
        }
        GroupRange range = PriceRange.of(items).get(0);
        JsonNode expected = json.get("expectedPrinted");
        printed(range.bands().lowest().times(PriceRange.widest(range.items())).amount(), expected.get("maxAllowed"));
        printed(range.bands().lowerLimit().amount(), expected.get("limit1"));
        printed(range.bands().upperLimit().amount(), expected.get("limit2"));
        printed(range.offeredAverage().amount(), expected.get("pmo"));
        printed(range.soldAverage().orElseThrow().amount(), expected.get("pmd"));
        // the source cuts the ratio 0.9863 off to 0.98
        close(range.response().orElseThrow(), json.at("/recomputed/ratio"));
        assertThat(range.findings()).isEmpty();
    }

    @Test
    void breakEvenChangeOfUnits() {
        JsonNode json = read("07a-swing-steady-breakeven");
        for (String firm : List.of("swing", "steady")) {
            JsonNode in = json.at("/inputs/" + firm);
            Money margin = money(in.get("price")).minus(money(in.get("variableCost")));
            Exact percent = PriceMethods.breakEvenUnitsPercent(margin, money(json.at("/inputs/priceChange")))
                    .orElseThrow();
            printed(percent, json.at("/expectedPrinted/" + firm + "/breakEvenPct"));
            printed(
                    percent.percent().times(Exact.of(in.get("units").asText())),
                    json.at("/expectedPrinted/" + firm + "/breakEvenUnits"));
        }
        JsonNode west = read("07c-westside");
        Money price = money(west.at("/inputs/price"));
        Money margin = price.times(Exact.of(west.at("/inputs/cmPct").asText()).percent());
        printed(
                PriceMethods.breakEvenUnitsPercent(margin, money(west.at("/inputs/priceChange")))
                        .orElseThrow(),
                west.at("/expectedPrinted/breakEvenPct"));
    }

    @Test
    void noNumberOfUnitsMakesUpForALostMargin() {
        assertThat(PriceMethods.breakEvenUnitsPercent(Money.of("1"), Money.of("-1")))
                .isEmpty();
        assertThat(PriceMethods.breakEvenUnitsPercent(Money.of("1"), Money.ZERO))
                .isEmpty();
    }

    @Test
    void pricesByCostPercent() {
        JsonNode pan = read("07h-foodcost-factor-pricing");
        Money portion = money(pan.at("/inputs/panCost"))
                .dividedBy(Exact.of(pan.at("/inputs/portions").asText()));
        printed(portion.amount(), pan.at("/expectedPrinted/lasagnaCost"));
        printed(
                PriceMethods.atCostPercent(portion, percent(pan.at("/inputs/target")))
                        .amount(),
                pan.at("/expectedPrinted/lasagnaPrice35"));
        JsonNode list = read("07l-price-list-answers");
        for (int i = 0; i < list.at("/inputs/costs").size(); i++) {
            printed(
                    PriceMethods.atCostPercent(money(list.at("/inputs/costs/" + i)), percent(list.at("/inputs/target")))
                            .amount(),
                    list.at("/expectedPrinted/prices42/" + i));
        }
        JsonNode bottle = read("07m-bottle-to-drink-price");
        printed(
                PriceMethods.atCostPercent(
                                money(bottle.at("/inputs/bottleCost"))
                                        .dividedBy(Exact.of(
                                                bottle.at("/inputs/drinks").asText())),
                                percent(bottle.at("/inputs/target")))
                        .amount(),
                bottle.at("/expectedPrinted/drinkPrice"));
    }

    @Test
    void costPercentAndMarginOfFourSizes() {
        JsonNode list = read("07l-price-list-answers");
        for (int i = 0; i < list.at("/inputs/pizzas").size(); i++) {
            JsonNode in = list.at("/inputs/pizzas/" + i);
            PricedDrink size = drink(money(in.get("price")), money(in.get("price")), money(in.get("cost")), "36");
            PriceSuggestion suggestion =
                    TargetCostPricing.suggest(List.of(size), rules()).get(0);
            printed(
                    suggestion.costPercentNow().orElseThrow(),
                    list.at("/expectedPrinted/pizzas/" + i + "/foodCostPct"));
            printed(suggestion.marginNow().orElseThrow().amount(), list.at("/expectedPrinted/pizzas/" + i + "/cm"));
        }
    }

    @Test
    void pricesByMarginAndByPrimeCost() {
        JsonNode list = read("07l-price-list-answers");
        for (int i = 0; i < list.at("/inputs/cmMethod/costs").size(); i++) {
            printed(
                    PriceMethods.atMargin(
                                    money(list.at("/inputs/cmMethod/costs/" + i)),
                                    money(list.at("/inputs/cmMethod/cm")))
                            .amount(),
                    list.at("/expectedPrinted/cmPrices/" + i));
        }
        JsonNode prime = read("07j-prime-cost");
        JsonNode salmon = prime.at("/inputs/salmon");
        printed(
                PriceMethods.atPrimeCostPercent(
                                money(salmon.get("food")),
                                money(salmon.get("labour")).plus(money(salmon.get("payrollTax"))),
                                percent(salmon.get("target")))
                        .amount(),
                prime.at("/expectedPrinted/salmonPrice50"));
        JsonNode exercise = prime.at("/inputs/exercise");
        Money labour = money(exercise.get("labour"))
                .withTax(Exact.of(exercise.get("taxPctOfLabour").asText()));
        close(
                PriceMethods.atPrimeCostPercent(
                                money(exercise.get("food")), labour, percent(exercise.get("primeTarget")))
                        .amount(),
                prime.at("/recomputed/exercise_prime55"));
    }

    @Test
    void aPriceFromCostCarriesTheTaxOfThePriceItReplaces() {
        JsonNode json = read("11b-french-coefficient");
        Exact vat = percent(json.at("/inputs/vat"));
        Money now = Money.of("12.00").withTax(vat);
        PricedDrink dish = drink(now, Money.of("12.00"), money(json.at("/inputs/cost")), "30");
        PriceSuggestion suggestion =
                TargetCostPricing.suggest(List.of(dish), rules()).get(0);
        // the source rounds the coefficient first; unrounded it is 19.93
        close(suggestion.targetCostPrice().orElseThrow().amount(), json.at("/recomputed/grossExact"));
        assertThat(Money.of("16.65").withTax(vat).amount().round(2, RoundingMode.HALF_UP))
                .isEqualTo(json.at("/expectedPrinted/grossRounded").asText());
    }

    private static PricingRules rules() {
        return new PricingRules(PriceGrid.step("0.50"), Exact.of(8), Money.ZERO, Optional.empty(), Optional.empty());
    }

    private static PricedDrink drink(Money now, Money net, Money cost, String target) {
        return new PricedDrink(
                "Drink",
                "Group",
                Optional.of(now),
                Optional.of(net),
                Optional.of(cost),
                Money.ZERO,
                Exact.of(target),
                Optional.of(Exact.ZERO),
                false);
    }

    private static Money money(JsonNode number) {
        return Money.of(number.asText());
    }

    private static Exact percent(JsonNode fraction) {
        return Exact.of(fraction.asText()).times(Exact.HUNDRED);
    }

    /** To half a unit of the last printed digit. */
    private static void printed(Exact actual, JsonNode printed) {
        BigDecimal expected = new BigDecimal(printed.asText());
        BigDecimal half = BigDecimal.ONE.scaleByPowerOfTen(-expected.scale()).multiply(new BigDecimal("0.5"));
        assertThat(actual.round(expected.scale() + 6, RoundingMode.HALF_UP)).isCloseTo(expected, within(half));
    }

    /** To the ten decimals of the independent recalculation. */
    private static void close(Exact actual, JsonNode expected) {
        assertThat(actual.toDouble()).isCloseTo(expected.asDouble(), within(1e-9));
    }

    private static JsonNode read(String name) {
        try (InputStream in = PublishedPricesTest.class.getResourceAsStream(name + ".json")) {
            return new ObjectMapper().readTree(in);
        } catch (IOException e) {
            throw new AssertionError(name, e);
        }
    }
}
