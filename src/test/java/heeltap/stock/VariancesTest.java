package heeltap.stock;

import static org.assertj.core.api.Assertions.assertThat;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.stock.Variances.DrinkMonth;
import heeltap.stock.Variances.Effect;
import heeltap.stock.Variances.MonthSide;
import heeltap.stock.Variances.Step;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VariancesTest {
    private static DrinkMonth sold(String name, long units, String netSales) {
        return new DrinkMonth(name, Exact.of(units), Money.of(netSales), Exact.ZERO, Map.of());
    }

    private static MonthSide sales(DrinkMonth... drinks) {
        return new MonthSide(List.of(drinks), Map.of(), Map.of(), Money.ZERO, Map.of());
    }

    private static Money amount(List<Step> steps, Effect effect) {
        return steps.stream()
                .filter(step -> step.effect() == effect)
                .map(Step::amount)
                .reduce(Money.ZERO, Money::plus);
    }

    @Test
    void mixAndVolumeAsInTheAccaWorkbook() {
        // ACCA PM workbook exercise 6 (worked example 09f, seen): contribution 760, 94, 940 a unit; mix -570600 in all,
        // quantity 2124600; the print labels the quantity variance with the wrong letter
        MonthSide budget = sales(
                sold("tables", 8000, "6080000"), sold("chairs", 26000, "2444000"), sold("sideboards", 6000, "5640000"));
        MonthSide actual = sales(
                sold("tables", 7200, "5472000"), sold("chairs", 31000, "2914000"), sold("sideboards", 7800, "7332000"));
        List<Step> steps = Variances.netSales(budget, actual);
        assertThat(step(steps, Effect.MIX).drinks())
                .containsExactlyInAnyOrderEntriesOf(Map.of(
                        "tables", Money.of("-1520000"),
                        "chairs", Money.of("103400"),
                        "sideboards", Money.of("846000")));
        assertThat(step(steps, Effect.VOLUME).drinks())
                .containsExactlyInAnyOrderEntriesOf(Map.of(
                        "tables", Money.of("912000"),
                        "chairs", Money.of("366600"),
                        "sideboards", Money.of("846000")));
        assertThat(amount(steps, Effect.MIX)).isEqualTo(Money.of("-570600"));
        assertThat(amount(steps, Effect.VOLUME)).isEqualTo(Money.of("2124600"));
        assertThat(amount(steps, Effect.PRICES)).isEqualTo(Money.ZERO);
        assertThat(steps.stream()
                        .filter(step -> step.effect() == Effect.MIX)
                        .findFirst()
                        .orElseThrow()
                        .largestDrink()
                        .map(Variances.Part::name))
                .contains("tables");
    }

    private static Step step(List<Step> steps, Effect effect) {
        return steps.stream()
                .filter(step -> step.effect() == effect)
                .findFirst()
                .orElseThrow();
    }

    private static MonthSide made(String units, String use, String price) {
        Exact sold = Exact.of(units);
        Money cost = Money.of(price).times(sold).times(Exact.of(use));
        return new MonthSide(
                List.of(new DrinkMonth("made", sold, Money.of("1"), Exact.ZERO, Map.of("material", Exact.of(use)))),
                Map.of("material", Money.of(price)),
                Map.of(),
                cost,
                Map.of("material", cost));
    }

    /**
     * OpenStax, Principles of Accounting vol. 2, 8.2, Connie's Candy and Sweet and Fresh (worked example 09a, seen; signs
     * as cost: positive is dearer). The source takes one price variance of 20 lb bought; here quantity is always quantity
     * used, so 80 boxes of 0.25 lb use the 20 lb.
     */
    @ParameterizedTest
    @CsvSource({
        "1,0.25,7,0.50,9,1.00,1.75",
        "80,0.25,7,0.25,6,-20,0",
        "80,0.25,7,0.25,9,40,0",
        "1,0.25,7,0.20,7,0,-0.35",
        "1,0.25,7,0.50,7,0,1.75",
        "1,88000,0.85,89000,0.84,-890,850"
    })
    void priceAndQuantityAsInOpenStax(
            String units,
            String standardUse,
            String standardPrice,
            String use,
            String price,
            String priceVariance,
            String quantityVariance) {
        List<Step> cost = Variances.costOfGoods(made(units, standardUse, standardPrice), made(units, use, price));
        assertThat(amount(cost, Effect.INVOICE_PRICES)).isEqualTo(Money.of(priceVariance));
        assertThat(amount(cost, Effect.SPECS)).isEqualTo(Money.of(quantityVariance));
        assertThat(step(cost, Effect.INVOICE_PRICES).ingredients())
                .containsExactlyInAnyOrderEntriesOf(Map.of("material", Money.of(priceVariance)));
        assertThat(sum(cost)).isEqualTo(Money.of(priceVariance).plus(Money.of(quantityVariance)));
    }

    @Test
    void priceAndVolumeAsInTheBookPublishersCase() {
        // course notes, book publisher (worked example 09i, seen): price -144000, volume -120000 of revenue, -48000 of
        // contribution
        MonthSide budget = new MonthSide(
                List.of(new DrinkMonth(
                        "book", Exact.of(4000), Money.of("1200000"), Exact.ZERO, Map.of("paper", Exact.ONE))),
                Map.of("paper", Money.of("180")),
                Map.of(),
                Money.of("720000"),
                Map.of());
        MonthSide actual = new MonthSide(
                List.of(new DrinkMonth(
                        "book", Exact.of(3600), Money.of("936000"), Exact.ZERO, Map.of("paper", Exact.ONE))),
                Map.of("paper", Money.of("180")),
                Map.of(),
                Money.of("648000"),
                Map.of());
        List<Step> revenue = Variances.netSales(budget, actual);
        assertThat(amount(revenue, Effect.PRICES)).isEqualTo(Money.of("-144000"));
        assertThat(amount(revenue, Effect.VOLUME)).isEqualTo(Money.of("-120000"));
        Money costVolume = amount(Variances.costOfGoods(budget, actual), Effect.VOLUME);
        assertThat(amount(revenue, Effect.VOLUME).minus(costVolume)).isEqualTo(Money.of("-48000"));
    }

    @Test
    void aRestaurantMenuClosesToZero() {
        // UK hospitality course, Hungry Jane's (worked example 09j; inputs and budget profit 3375 seen, variances
        // computed
        // there and closing to zero): sales price -430, sales volume 495 of profit
        Map<String, Exact> spec = Map.of(
                "mushrooms", Exact.of("0.1"),
                "turkey", Exact.of("0.1"),
                "potatoes", Exact.of("0.2"),
                "vegetables", Exact.of("0.3"),
                "fruit", Exact.of("0.15"));
        Map<String, Money> standard = Map.of(
                "mushrooms", Money.of("4"),
                "turkey", Money.of("14"),
                "potatoes", Money.of("0.25"),
                "vegetables", Money.of("0.9"),
                "fruit", Money.of("3"));
        Map<String, Money> flat = Map.of("menu", Money.of("0.43"));
        MonthSide budget = new MonthSide(
                List.of(new DrinkMonth("menu", Exact.of(750), Money.of("5625"), Exact.ZERO, spec)),
                standard,
                flat,
                Money.of("2250"),
                Map.of());
        MonthSide actual = new MonthSide(
                List.of(new DrinkMonth("menu", Exact.of(860), Money.of("6020"), Exact.ZERO, spec)),
                standard,
                flat,
                Money.of("2548"),
                Map.of(
                        "mushrooms", Money.of("300"),
                        "turkey", Money.of("1148"),
                        "potatoes", Money.of("40"),
                        "vegetables", Money.of("250"),
                        "fruit", Money.of("450")));
        assertThat(budget.costOfGoods()).isEqualTo(Variances.theoretical(budget));
        List<Step> revenue = Variances.netSales(budget, actual);
        List<Step> cost = Variances.costOfGoods(budget, actual);
        assertThat(amount(revenue, Effect.PRICES)).isEqualTo(Money.of("-430"));
        assertThat(amount(revenue, Effect.VOLUME).minus(amount(cost, Effect.VOLUME)))
                .isEqualTo(Money.of("495"));
        // all ingredient price and usage variances of the example together: 32 in favour
        assertThat(amount(cost, Effect.UNEXPLAINED_USE)).isEqualTo(Money.of("-32"));
        // price and usage together by ingredient, as cost: mushrooms -(60 - 16), turkey -(-168 + 224), and so on
        assertThat(step(cost, Effect.UNEXPLAINED_USE).ingredients())
                .containsExactlyInAnyOrderEntriesOf(Map.of(
                        "mushrooms", Money.of("-44"),
                        "turkey", Money.of("-56"),
                        "potatoes", Money.of("-3"),
                        "vegetables", Money.of("17.8"),
                        "fruit", Money.of("63")));
        assertThat(step(cost, Effect.UNEXPLAINED_USE).largestIngredient().map(Variances.Part::name))
                .contains("fruit");
        Money profitChange = sum(revenue).minus(sum(cost));
        assertThat(Money.of("3375").plus(profitChange)).isEqualTo(Money.of("3472"));
    }

    @Test
    void invoicePricesAndSpecsAreKeptApart() {
        // OpenStax, Principles of Accounting vol. 2 (worked example 09a, seen): price 1.00, quantity 1.75 for each box
        // at
        // standard 0.25 lb x 7, actual 0.50 lb x 9 bought as used: here quantity is always quantity used
        MonthSide standard = new MonthSide(
                List.of(new DrinkMonth(
                        "candy", Exact.ONE, Money.of("20"), Exact.ZERO, Map.of("sugar", Exact.of("0.25")))),
                Map.of("sugar", Money.of("7")),
                Map.of(),
                Money.of("1.75"),
                Map.of());
        MonthSide actual = new MonthSide(
                List.of(new DrinkMonth(
                        "candy", Exact.ONE, Money.of("20"), Exact.ZERO, Map.of("sugar", Exact.of("0.5")))),
                Map.of("sugar", Money.of("9")),
                Map.of(),
                Money.of("4.50"),
                Map.of());
        List<Step> cost = Variances.costOfGoods(standard, actual);
        assertThat(amount(cost, Effect.INVOICE_PRICES)).isEqualTo(Money.of("1.00"));
        assertThat(amount(cost, Effect.SPECS)).isEqualTo(Money.of("1.75"));
        assertThat(sum(cost)).isEqualTo(Money.of("2.75"));
    }

    private static Money sum(List<Step> steps) {
        return steps.stream().map(Step::amount).reduce(Money.ZERO, Money::plus);
    }

    private static MonthSide side(List<Integer> numbers, int seed) {
        List<DrinkMonth> drinks = new java.util.ArrayList<>();
        for (int i = 0; i < numbers.size(); i++) {
            Map<String, Exact> use = new HashMap<>();
            use.put("i" + (i + seed) % 3, Exact.of(i + seed));
            use.put("j", Exact.of("0.5"));
            drinks.add(new DrinkMonth(
                    "d" + (i + seed % 2),
                    Exact.of(numbers.get(i)),
                    Money.of(numbers.get(i) * 7 + seed + ".13"),
                    Exact.of(i % 2),
                    use));
        }
        Map<String, Money> units = new HashMap<>();
        units.put("i0", Money.of("0.0" + (seed + 1)));
        units.put("i1", Money.of("1.1"));
        if (seed > 3) {
            units.put("j", Money.of("0.7"));
        }
        return new MonthSide(
                drinks,
                units,
                Map.of("d1", Money.of("2.05")),
                Money.of(100 + seed + ".17"),
                Map.of("i0", Money.of("3.3")));
    }

    @Property
    void eachChainAddsUpExactly(
            @ForAll @Size(max = 6) List<@IntRange(min = -3, max = 90) Integer> a,
            @ForAll @Size(max = 6) List<@IntRange(min = -3, max = 90) Integer> b,
            @ForAll @IntRange(min = 0, max = 9) int seedA,
            @ForAll @IntRange(min = 0, max = 9) int seedB) {
        MonthSide before = side(a, seedA);
        MonthSide after = side(b, seedB);
        Money salesBefore = before.drinks().stream().map(DrinkMonth::netSales).reduce(Money.ZERO, Money::plus);
        Money salesAfter = after.drinks().stream().map(DrinkMonth::netSales).reduce(Money.ZERO, Money::plus);
        assertThat(sum(Variances.netSales(before, after))).isEqualTo(salesAfter.minus(salesBefore));
        assertThat(sum(Variances.costOfGoods(before, after)))
                .isEqualTo(after.costOfGoods().minus(before.costOfGoods()));
    }
}
