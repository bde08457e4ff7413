package heeltap.stock;

import static org.assertj.core.api.Assertions.assertThat;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.stock.MonthSide.DrinkMonth;
import heeltap.stock.MonthSide.GoodsUsed;
import heeltap.stock.Step.Effect;
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
        return new MonthSide(List.of(drinks), Map.of(), Map.of(), Map.of());
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
                        .map(Step.Part::name))
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
        return new MonthSide(
                List.of(new DrinkMonth("made", sold, Money.of("1"), Exact.ZERO, Map.of("material", Exact.of(use)))),
                Map.of("material", Money.of(price)),
                Map.of(),
                Map.of());
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
                Map.of());
        MonthSide actual = new MonthSide(
                List.of(new DrinkMonth(
                        "book", Exact.of(3600), Money.of("936000"), Exact.ZERO, Map.of("paper", Exact.ONE))),
                Map.of("paper", Money.of("180")),
                Map.of(),
                Map.of());
        List<Step> revenue = Variances.netSales(budget, actual);
        assertThat(amount(revenue, Effect.PRICES)).isEqualTo(Money.of("-144000"));
        assertThat(amount(revenue, Effect.VOLUME)).isEqualTo(Money.of("-120000"));
        Money costVolume = amount(Variances.costOfGoods(budget, actual), Effect.VOLUME);
        assertThat(amount(revenue, Effect.VOLUME).minus(costVolume)).isEqualTo(Money.of("-48000"));
    }

    private static final Map<String, Exact> MENU = Map.of(
            "mushrooms", Exact.of("0.1"),
            "turkey", Exact.of("0.1"),
            "potatoes", Exact.of("0.2"),
            "vegetables", Exact.of("0.3"),
            "fruit", Exact.of("0.15"),
            "cream", Exact.of("0.20"),
            "other", Exact.of("0.23"));
    private static final Map<String, Money> STANDARD = Map.of(
            "mushrooms", Money.of("4"),
            "turkey", Money.of("14"),
            "potatoes", Money.of("0.25"),
            "vegetables", Money.of("0.9"),
            "fruit", Money.of("3"),
            "cream", Money.of("1"),
            "other", Money.of("1"));

    private static MonthSide menus(long menus, String sales, Map<String, GoodsUsed> goods) {
        return new MonthSide(
                List.of(new DrinkMonth("menu", Exact.of(menus), Money.of(sales), Exact.ZERO, MENU)),
                STANDARD,
                Map.of(),
                goods);
    }

    private static GoodsUsed used(String ingredient, String quantity, String cost) {
        Exact standard = MENU.getOrDefault(ingredient, Exact.ZERO).times(Exact.of(860));
        return new GoodsUsed(Money.of(cost), Exact.ZERO, Exact.of(quantity).minus(standard));
    }

    /**
     * UK hospitality course, Hungry Jane's (worked example 09j; inputs and budget profit 3375 seen, variances computed
     * there, positive in favour, and closing to zero). Cream and other are flat sums: one unit for one of money.
     */
    @ParameterizedTest
    @CsvSource({
        "mushrooms,90,300,60,-16",
        "turkey,70,1148,-168,224",
        "potatoes,180,40,5,-2",
        "vegetables,270,250,-7,-10.8",
        "fruit,140,450,-30,-33",
        "cream,160,160,0,12",
        "other,200,200,0,-2.2"
    })
    void priceAndUsageOfARestaurantsMenu(
            String ingredient, String quantity, String cost, String priceVariance, String usageVariance) {
        List<Step> steps = Variances.costOfGoods(
                menus(750, "5625", Map.of()), menus(860, "6020", Map.of(ingredient, used(ingredient, quantity, cost))));
        assertThat(step(steps, Effect.VALUATION).negated().ingredients())
                .containsExactlyEntriesOf(Map.of(ingredient, Money.of(priceVariance)));
        assertThat(step(steps, Effect.UNEXPLAINED_USE).negated().ingredients())
                .containsExactlyEntriesOf(Map.of(ingredient, Money.of(usageVariance)));
    }

    /** The same, from the budget's profit to the actual one. */
    @Test
    void aRestaurantMenuClosesToZero() {
        MonthSide budget = menus(750, "5625", Map.of());
        MonthSide actual = menus(
                860,
                "6020",
                Map.of(
                        "mushrooms", used("mushrooms", "90", "300"),
                        "turkey", used("turkey", "70", "1148"),
                        "potatoes", used("potatoes", "180", "40"),
                        "vegetables", used("vegetables", "270", "250"),
                        "fruit", used("fruit", "140", "450"),
                        "cream", used("cream", "160", "160"),
                        "other", used("other", "200", "200")));
        assertThat(Money.of("5625").minus(budget.theoretical())).isEqualTo(Money.of("3375"));
        List<Step> revenue = Variances.netSales(budget, actual);
        List<Step> cost = Variances.costOfGoods(budget, actual);
        assertThat(amount(revenue, Effect.PRICES)).isEqualTo(Money.of("-430"));
        assertThat(amount(revenue, Effect.VOLUME).minus(amount(cost, Effect.VOLUME)))
                .isEqualTo(Money.of("495"));
        // 140 of price against the house, 172 of usage for it: 32 in favour
        assertThat(amount(cost, Effect.VALUATION)).isEqualTo(Money.of("140"));
        assertThat(amount(cost, Effect.UNEXPLAINED_USE)).isEqualTo(Money.of("-172"));
        assertThat(step(cost, Effect.VALUATION).largestIngredient().map(Step.Part::name))
                .contains("turkey");
        assertThat(step(cost, Effect.UNEXPLAINED_USE).largestDrink()).isEmpty();
        assertThat(Money.of("3375").plus(sum(revenue).minus(sum(cost)))).isEqualTo(Money.of("3472"));
    }

    /** Constructed: 100 sold of 40, 4200 used for 90.30 (0.0215 a unit), the drinks at 0.02; 120 of it written down. */
    @Test
    void lossesUnexplainedUseAndValuationAreKeptApart() {
        DrinkMonth sour =
                new DrinkMonth("sour", Exact.of(60), Money.of("600"), Exact.ZERO, Map.of("gin", Exact.of(40)));
        DrinkMonth fizz =
                new DrinkMonth("fizz", Exact.of(30), Money.of("300"), Exact.of(10), Map.of("gin", Exact.of(40)));
        MonthSide before = new MonthSide(List.of(sour, fizz), Map.of("gin", Money.of("0.02")), Map.of(), Map.of());
        MonthSide after = new MonthSide(
                List.of(sour, fizz),
                Map.of("gin", Money.of("0.02")),
                Map.of(),
                Map.of("gin", new GoodsUsed(Money.of("90.30"), Exact.of(120), Exact.of(80))));
        List<Step> cost = Variances.costOfGoods(before, after);
        assertThat(amount(cost, Effect.LOSSES)).isEqualTo(Money.of("2.40"));
        assertThat(amount(cost, Effect.UNEXPLAINED_USE)).isEqualTo(Money.of("1.60"));
        assertThat(amount(cost, Effect.VALUATION)).isEqualTo(Money.of("6.30"));
        assertThat(sum(cost)).isEqualTo(Money.of("10.30"));
        // no drink lost it
        assertThat(step(cost, Effect.UNEXPLAINED_USE).largestDrink()).isEmpty();
        assertThat(step(Variances.costOfGoods(after, before), Effect.LOSSES).largestIngredient())
                .contains(new Step.Part("gin", Money.of("-2.40")));
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
                Map.of());
        MonthSide actual = new MonthSide(
                List.of(new DrinkMonth(
                        "candy", Exact.ONE, Money.of("20"), Exact.ZERO, Map.of("sugar", Exact.of("0.5")))),
                Map.of("sugar", Money.of("9")),
                Map.of(),
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
                Map.of(
                        "i0", new GoodsUsed(Money.of("3.3"), Exact.of(seed), Exact.of("-0.7")),
                        "lost", new GoodsUsed(Money.of("1.7"), Exact.ONE, Exact.of("0.1"))));
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
                .isEqualTo(costOfGoods(after).minus(costOfGoods(before)));
    }

    /** By the counts where there are any, else by theory. */
    private static Money costOfGoods(MonthSide month) {
        Money sum = Money.ZERO;
        for (GoodsUsed used : month.goods().values()) {
            sum = sum.plus(used.cost());
        }
        for (DrinkMonth drink : month.drinks()) {
            Exact served = drink.sold().plus(drink.given());
            sum = sum.plus(
                    month.fixedCosts().getOrDefault(drink.drink(), Money.ZERO).times(served));
            for (Map.Entry<String, Exact> use : drink.use().entrySet()) {
                if (!month.goods().containsKey(use.getKey())) {
                    Money unit = month.unitCosts().getOrDefault(use.getKey(), Money.ZERO);
                    sum = sum.plus(unit.times(use.getValue().times(served)));
                }
            }
        }
        return sum;
    }
}
