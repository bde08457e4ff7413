package heeltap.cost;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import heeltap.BookBuilder;
import heeltap.quantity.Amount;
import heeltap.quantity.Exact;
import heeltap.quantity.Measure;
import heeltap.quantity.Money;
import heeltap.record.SpecAmount;
import heeltap.source.Problem;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whole fruit: its juice, its peel, and what each bears of its cost. */
class FruitTest {
    /** A lemon for 0.40 that yields 40 ml; what its juice holds comes from the published table. */
    private static BookBuilder bar() {
        return new BookBuilder()
                .ingredient(
                        "Lemon", Measure.EACH, cells -> cells.list("40", "100").with("juice", "40"))
                .ingredient("Gin", Measure.ML, cells -> cells.list("20", "1000").with("abv", "40"))
                .ingredient(
                        "House syrup",
                        Measure.ML,
                        cells -> cells.list("2", "1000").with("sugar", "61.48").with("density", "1.2296"));
    }

    /** Lemon juice: 4.80 g citric acid (Penniston et al. 2008) and 2.60 g sugar (USDA SR28) in 100 ml. */
    @ParameterizedTest
    @CsvSource({"'', 1000", "950, 950", "1080, 1080"})
    void juiceIsAsStrongAsPublishedHoweverMuchWasYielded(String makes, String ml) {
        Costs costs =
                Bar.costs(bar().preparation("Juice", Measure.ML, cells -> makes.isEmpty() ? cells : cells.makes(makes))
                        .line("Juice", "Lemon", "25", "each"));
        PreparationCost juice = costs.preparation("Juice");
        assertThat(juice.makes()).isEqualTo(Amount.of(ml, Measure.ML));
        assertThat(juice.unitCost()).isEqualTo(Money.of("10").dividedBy(Exact.of(ml)));
        assertThat(100 * juice.contents().citricG()).isCloseTo(4.80, within(1e-9));
        assertThat(100 * juice.contents().sugarG()).isCloseTo(2.60, within(1e-9));
        assertThat(juice.contents().density()).isCloseTo(1.0313, within(1e-9));
        assertThat(juice.unknownComposition()).isEmpty();
        assertThat(juice.publishedComposition()).containsExactly("Lemon");
        assertThat(costs.publishedContents("Lemon").orElseThrow().name()).isEqualTo("lemon juice");
    }

    /** Ten lemons and 500 ml of syrup fill 900 ml only with the juice; what makes 500 ml holds none of it. */
    @ParameterizedTest
    @CsvSource({"900, each, 19.2, 0", "880, '', 19.2, 0", "500, each, 0, 1", "500, peel, 0, 0", "900, peel, 0, 0"})
    void theMeasuredYieldTellsWhetherFruitIsJuiced(String makes, String unit, double citric, int notices) {
        PreparationCost mix = Bar.costs(bar().preparation("Mix", Measure.ML, cells -> cells.makes(makes))
                        .line("Mix", "Lemon", "10", unit)
                        .line("Mix", "House syrup", "500", "ml"))
                .preparation("Mix");
        assertThat(mix.contents().citricG() * Double.parseDouble(makes)).isCloseTo(citric, within(1e-9));
        assertThat(mix.notices()).hasSize(notices);
    }

    /** A spirit that is steeped with fruit keeps its volume, and it is said that no juice was counted. */
    @Test
    void fruitBesideALiquidWithoutAMeasuredYieldIsNotJuiced() {
        PreparationCost steeped = Bar.costs(bar().preparation("Steeped", Measure.ML, cells -> cells.with("loss", "4"))
                        .line("Steeped", "Gin", "700", "ml")
                        .line("Steeped", "Lemon", "2", "each"))
                .preparation("Steeped");
        assertThat(steeped.makes()).isEqualTo(Amount.of("672", Measure.ML));
        assertThat(steeped.batchCost()).isEqualTo(Money.of("14.8"));
        assertThat(steeped.contents().citricG()).isZero();
        assertThat(steeped.notices())
                .extracting(Problem::reason)
                .containsExactly("Whether Lemon is juiced here is not said, so it was counted as adding no juice.");
    }

    /** USDA SR28: what the juice of one fruit weighs. */
    @ParameterizedTest
    @CsvSource({"Lime, 43.0, 44", "Lemon, 46.5, 48", "Orange, 82.0, 86", "Grapefruit, 187.7, 196"})
    void theJuiceOfOneFruitWeighsWhatIsPublished(String fruit, String ml, double grams) {
        DrinkCost drink = Bar.costs(new BookBuilder()
                        .ingredient(
                                fruit,
                                Measure.EACH,
                                cells -> cells.list("1", "1").with("juice", ml))
                        .drink("Pressed")
                        .line("Pressed", fruit, new SpecAmount.JuiceOf(Exact.ONE), ""))
                .drink("Pressed");
        assertThat(drink.contents().massG()).isCloseTo(grams, within(0.06));
        assertThat(drink.contents().citricG()).isPositive();
        assertThat(drink.use()).containsEntry(fruit, Exact.ONE);
    }

    @Test
    void fruitOfWhichNobodySaidWhatItYieldsIsUnknown() {
        PreparationCost juice = Bar.costs(new BookBuilder()
                        .ingredient(
                                "Yuzu",
                                Measure.EACH,
                                cells -> cells.list("1", "1").with("citric", "5"))
                        .preparation("Juice", Measure.ML, cells -> cells.makes("100"))
                        .line("Juice", "Yuzu", "10", "each"))
                .preparation("Juice");
        assertThat(juice.unknownComposition()).containsExactly("Yuzu");
    }

    /**
     * 40 cents a lemon, peel and juice of one shared at 0, 10 or 100 percent. All lines together bear as many lemons as had
     * to be cut: the greater of what is peeled and what is juiced.
     */
    @ParameterizedTest
    @CsvSource({
        "25, 25, 0, 0, 10",
        "25, 25, 10, 1, 9",
        "25, 25, 100, 10, 0",
        "10, 25, 0, 0, 10",
        "10, 25, 10, 0.4, 9.6",
        "75, 25, 0, 20, 10",
        "75, 25, 10, 21, 9",
        "75, 0, 0, 30, 0",
        "0, 25, 10, 0, 10",
    })
    void peelOfJuicedFruitCostsNothingTwice(String peeled, String juiced, String percent, String peel, String juice) {
        FruitShare share = FruitShare.of(
                Exact.of(peeled), Exact.of(juiced), Exact.of(percent).percent());
        Costs costs = Bar.costs(bar().preparation("Juice", Measure.ML, cells -> cells.makes("1000"))
                        .line("Juice", "Lemon", "25", "")
                        .drink("Twist")
                        .line("Twist", "Lemon", "1", "zest"))
                .sharing(Map.of("Lemon", share));
        Exact batches = Exact.of(juiced).dividedBy(Exact.of(25));
        Money peels = costs.drink("Twist").cost().orElseThrow().times(Exact.of(peeled));
        Money juices = requireNonNull(costs.preparation("Juice").batchCost()).times(batches);
        assertThat(peels).isEqualTo(Money.of(peel));
        assertThat(juices).isEqualTo(Money.of(juice));
        Exact cut = Exact.of(peeled).isLessThan(Exact.of(juiced)) ? Exact.of(juiced) : Exact.of(peeled);
        assertThat(peels.plus(juices)).isEqualTo(Money.of("0.4").times(cut));
    }

    /** Where nothing says what was sold, peel bears its fruit; wedges of juiced fruit always do. */
    @Test
    void whatIsTakenFromNothingElseIsPaidFor() {
        Costs costs = Bar.costs(bar().drink("Twist")
                .line("Twist", "Lemon", "0.5", "twist")
                .drink("Wedge")
                .line("Wedge", "Lemon", "0.25", "wedge"));
        assertThat(costs.drink("Twist").cost()).contains(Money.of("0.2"));
        FruitShare free = new FruitShare(Exact.ZERO, Exact.ONE);
        assertThat(costs.sharing(Map.of("Lemon", free)).drink("Wedge").cost()).contains(Money.of("0.1"));
    }
}
