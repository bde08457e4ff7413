package heeltap.cost;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import heeltap.BookBuilder;
import heeltap.mixture.Contents;
import heeltap.quantity.Exact;
import heeltap.quantity.Measure;
import heeltap.quantity.Money;
import heeltap.record.Method;
import heeltap.record.Setting;
import heeltap.record.SpecAmount;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.assertj.core.data.Offset;

/** What must hold of any bar. */
class CostPropertiesTest {
    private static final int INGREDIENTS = 6;

    /** Preparations each of ingredients and of earlier preparations, and drinks of all of them. */
    private static BookBuilder bar(Random random, int preparations, int drinks) {
        BookBuilder builder = new BookBuilder().set(Setting.LABOUR_COST_PER_HOUR, Money.of("17.50"));
        for (int i = 0; i < INGREDIENTS; i++) {
            String abv = "" + 10 * i;
            builder.ingredient(
                    "I" + i,
                    Measure.ML,
                    cells -> cells.list("" + (1 + random.nextInt(40)), "700")
                            .with("abv", abv)
                            .with("usable", "" + (50 + random.nextInt(51))));
        }
        for (int i = 0; i < preparations; i++) {
            String name = "P" + i;
            builder.preparation(
                    name,
                    Measure.ML,
                    cells -> cells.makes("" + (100 + random.nextInt(900))).with("minutes", "" + random.nextInt(30)));
            lines(builder, random, name, i);
        }
        for (int i = 0; i < drinks; i++) {
            builder.drink("D" + i);
            lines(builder, random, "D" + i, preparations);
        }
        return builder;
    }

    private static void lines(BookBuilder builder, Random random, String item, int preparations) {
        int count = 1 + random.nextInt(4);
        for (int line = 0; line < count; line++) {
            int choice = random.nextInt(INGREDIENTS + preparations);
            String used = choice < INGREDIENTS ? "I" + choice : "P" + (choice - INGREDIENTS);
            builder.wasteLine(item, used, "" + (1 + random.nextInt(90)), "ml", "" + random.nextInt(15));
        }
    }

    /** Cost is use as bought at the price as bought, through any nesting: nothing is lost and nothing counted twice. */
    @Property(tries = 100)
    void costIsUseTimesPrice(@ForAll long seed) {
        var book = bar(new Random(seed), 8, 4).build();
        IngredientPrices prices = Bar.listPrices(book);
        Costs costs = Bar.costs(book);
        for (DrinkCost drink : costs.drinks()) {
            assertThat(drink.cost()).contains(value(drink.use(), prices));
        }
        for (PreparationCost preparation : costs.preparations()) {
            assertThat(preparation.unitCost()).isEqualTo(value(preparation.use(), prices));
        }
    }

    private static Money value(Map<String, Exact> use, IngredientPrices prices) {
        Money sum = Money.ZERO;
        for (Map.Entry<String, Exact> entry : use.entrySet()) {
            Money unitCost = prices.get(entry.getKey()).unitCost();
            sum = sum.plus(unitCost == null ? Money.ZERO : unitCost.times(entry.getValue()));
        }
        return sum;
    }

    @Property(tries = 50)
    void theOrderOfRowsChangesNothing(@ForAll long seed, @ForAll long order) {
        BookBuilder builder = bar(new Random(seed), 6, 4);
        Costs one = Bar.costs(builder);
        Costs other = Bar.costs(builder.shuffled(order));
        for (DrinkCost drink : one.drinks()) {
            assertThat(other.drink(drink.name())).isEqualTo(drink);
        }
    }

    /**
     * What a drink holds is what its ingredients hold, whatever stands between: the same amounts in one list of lines hold
     * as much, and melted ice adds nothing but water.
     */
    @Property(tries = 50)
    void everythingIsConservedThroughNestingAndIce(@ForAll long seed) {
        Random random = new Random(seed);
        BookBuilder builder = liquids(random);
        builder.preparation("Inner").preparation("Outer").drink("Drink", cells -> cells.method(Method.SHAKEN));
        for (String item : new String[] {"Inner", "Outer", "Drink"}) {
            builder.line(item, "I" + random.nextInt(INGREDIENTS), "" + (1 + random.nextInt(500)), "ml");
            builder.line(item, "I" + random.nextInt(INGREDIENTS), "" + (1 + random.nextInt(500)), "ml");
        }
        builder.line("Outer", "Inner", "0.5", "batch").line("Drink", "Outer", "0.25", "batch");
        DrinkCost drink = Bar.costs(builder).drink("Drink");
        builder.drink("Flat");
        drink.use().forEach((name, ml) -> builder.line("Flat", name, ml.toString(), "ml"));
        Contents flat = Bar.costs(builder).drink("Flat").contents();
        assertSame(drink.contents(), flat, 0);
        assertThat(drink.contents().volumeMl()).isCloseTo(flat.volumeMl(), near(flat.volumeMl()));
        assertThat(drink.glass().waterFrom()).isEqualTo(WaterFrom.HEAT_BALANCE);
        double waterG = drink.glass().waterMl() * Contents.water(1).density();
        assertThat(waterG).isPositive();
        assertSame(drink.glass().served(), flat, waterG);
    }

    private static BookBuilder liquids(Random random) {
        BookBuilder builder = new BookBuilder();
        for (int i = 0; i < INGREDIENTS; i++) {
            String abv = "" + random.nextInt(45);
            String sugar = "" + random.nextInt(25);
            String citric = "" + random.nextInt(5);
            String malic = "" + random.nextInt(4);
            String salt = "" + random.nextInt(3);
            builder.ingredient(
                    "I" + i,
                    Measure.ML,
                    cells -> cells.list("1", "1")
                            .with("abv", abv)
                            .with("sugar", sugar)
                            .with("citric", citric)
                            .with("malic", malic)
                            .with("salt", salt));
        }
        return builder;
    }

    private static void assertSame(Contents found, Contents expected, double waterG) {
        assertThat(found.massG()).isCloseTo(expected.massG() + waterG, near(expected.massG()));
        assertThat(found.ethanolG()).isCloseTo(expected.ethanolG(), near(expected.massG()));
        assertThat(found.sugarG()).isCloseTo(expected.sugarG(), near(expected.massG()));
        assertThat(found.citricG()).isCloseTo(expected.citricG(), near(expected.massG()));
        assertThat(found.malicG()).isCloseTo(expected.malicG(), near(expected.massG()));
        assertThat(found.saltG()).isCloseTo(expected.saltG(), near(expected.massG()));
    }

    /** A batch made in two parts of any size and poured together is the batch. */
    @Property(tries = 30)
    void splittingABatchChangesNothingPerMl(@ForAll long seed, @ForAll @IntRange(min = 1, max = 99) int percent) {
        BookBuilder builder = liquids(new Random(seed));
        builder.preparation("Whole")
                .line("Whole", "I1", "600", "ml")
                .line("Whole", "I2", "400", "ml")
                .preparation("Joined");
        int[] parts = {percent, 100 - percent};
        for (int i = 0; i < parts.length; i++) {
            builder.preparation("Part " + i)
                    .line("Part " + i, "I1", "" + 6 * parts[i], "ml")
                    .line("Part " + i, "I2", "" + 4 * parts[i], "ml")
                    .line("Joined", "Part " + i, "1", "batch");
        }
        Costs costs = Bar.costs(builder);
        Contents whole = costs.preparation("Whole").contents();
        assertSame(costs.preparation("Joined").contents(), whole, 0);
        Money joined = requireNonNull(costs.preparation("Joined").unitCost());
        Money once = requireNonNull(costs.preparation("Whole").unitCost());
        assertThat(joined.amount().toDouble()).isCloseTo(once.amount().toDouble(), within(1e-12));
    }

    private static Offset<Double> near(double value) {
        return within(1e-9 * Math.max(1, Math.abs(value)));
    }

    /** A batch of any size costs, holds and takes the same for each ml. */
    @Property(tries = 50)
    void scalingABatchChangesNothingPerMl(@ForAll @IntRange(min = 1, max = 500) int factor) {
        PreparationCost one = Bar.costs(batch(1)).preparation("Mix");
        PreparationCost many = Bar.costs(batch(factor)).preparation("Mix");
        assertThat(many.faults()).isEmpty();
        Money oneCost = one.unitCost();
        Money manyCost = many.unitCost();
        assertThat(oneCost).isNotNull();
        assertThat(manyCost).isNotNull();
        if (oneCost != null && manyCost != null) {
            assertThat(manyCost.amount().toDouble()).isCloseTo(oneCost.amount().toDouble(), within(1e-12));
        }
        assertThat(many.contents().density()).isCloseTo(one.contents().density(), within(1e-9));
        assertThat(many.contents().citricG()).isCloseTo(one.contents().citricG(), within(1e-9));
        assertThat(many.use().getOrDefault("Citric", Exact.ZERO).toDouble())
                .isCloseTo(one.use().getOrDefault("Citric", Exact.ONE).toDouble(), within(1e-12));
    }

    private static BookBuilder batch(int factor) {
        return new BookBuilder()
                .ingredient(
                        "Sweet orange",
                        Measure.ML,
                        cells -> cells.list("3", "1000").with("citric", "0.8"))
                .ingredient("Cane", Measure.G, cells -> cells.list("1", "1000").with("sugar", "100"))
                .ingredient(
                        "Citric", Measure.G, cells -> cells.list("10", "1000").with("citric", "100"))
                .preparation(
                        "Mix", Measure.ML, cells -> cells.with("citric", "4").with("loss", "3"))
                .line("Mix", "Sweet orange", "" + 130 * factor, "ml")
                .line("Mix", "Cane", "" + 20 * factor, "g")
                .line("Mix", "Citric", new SpecAmount.ToTarget(), "");
    }
}
