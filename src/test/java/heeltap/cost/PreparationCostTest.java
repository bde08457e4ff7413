package heeltap.cost;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;
import static org.assertj.core.api.Assertions.within;

import heeltap.BookBuilder;
import heeltap.quantity.Amount;
import heeltap.quantity.Exact;
import heeltap.quantity.Measure;
import heeltap.quantity.Money;
import heeltap.quantity.Units;
import heeltap.record.AcidTargets;
import heeltap.record.Setting;
import heeltap.record.SpecAmount;
import heeltap.source.Problem;
import heeltap.source.ProblemKind;
import org.assertj.core.data.Offset;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PreparationCostTest {
    private static final Offset<Double> TINY = within(1e-9);

    private static BookBuilder bar() {
        return new BookBuilder()
                .ingredient("Rum", Measure.ML, cells -> cells.list("20", "1000").with("abv", "40"))
                .ingredient(
                        "Still water", Measure.ML, cells -> cells.list("0", "1").with("abv", "0"))
                .ingredient(
                        "White sugar",
                        Measure.G,
                        cells -> cells.list("1", "1000").with("sugar", "100").with("density", "0.85"))
                .ingredient(
                        "Sweet orange",
                        Measure.ML,
                        cells -> cells.list("3", "1000").with("citric", "0.8"))
                .ingredient(
                        "Citric", Measure.G, cells -> cells.list("10", "1000").with("citric", "100"))
                .ingredient(
                        "Malic", Measure.G, cells -> cells.list("15", "1000").with("malic", "100"))
                .ingredient(
                        "Salt crystals",
                        Measure.G,
                        cells -> cells.list("1", "1000").with("salt", "100"))
                .ingredient("Cinnamon bark", Measure.G, cells -> cells.list("50", "1000"));
    }

    private static double number(@Nullable Amount amount) {
        return requireNonNull(amount).value().toDouble();
    }

    @Test
    void costFlowsThroughAnyDepth() {
        BookBuilder builder = bar();
        builder.preparation("L0", Measure.ML, cells -> cells.makes("500").with("minutes", "10"))
                .line("L0", "Rum", "1000", "ml");
        for (int i = 1; i <= 300; i++) {
            String name = "L" + i;
            builder.preparation(name, Measure.ML, cells -> cells.makes("100")).line(name, "L" + (i - 1), "100", "ml");
        }
        Costs costs = Bar.costs(builder.drink("Sour")
                .line("Sour", "L300", "50", "ml")
                .set(Setting.LABOUR_COST_PER_HOUR, Money.of("30")));
        assertThat(costs.drink("Sour").cost()).contains(Money.of("2"));
        assertThat(costs.drink("Sour").use()).containsExactly(entry("Rum", Exact.of(100)));
        assertThat(costs.drink("Sour").preparations()).hasSize(301).containsEntry("L0", Exact.of(50));
        assertThat(costs.drink("Sour").labour()).isEqualTo(Money.of("0.5"));
        assertThat(costs.drink("Sour").contents().ethanolG()).isCloseTo(100 * 0.4 * 0.78924, TINY);
    }

    @Test
    void batchesAndMassAndVolumeOfAPreparationConvert() {
        Costs costs = Bar.costs(bar().preparation(
                        "Syrup",
                        Measure.ML,
                        cells -> cells.makes(
                                "0.8", Units.standard().find("l", Measure.ML).orElseThrow()))
                .line("Syrup", "White sugar", "500", "g")
                .line("Syrup", "Still water", "500", "ml")
                .drink("By batch")
                .line("By batch", "Syrup", "0.1", "batch")
                .drink("By weight")
                .line("By weight", "Syrup", "62.384", "g"));
        PreparationCost syrup = costs.preparation("Syrup");
        assertThat(syrup.makes()).isEqualTo(Amount.of("800", Measure.ML));
        assertThat(syrup.batchCost()).isEqualTo(Money.of("0.5"));
        assertThat(syrup.contents().density()).isCloseTo((500 + 499.1) / 800, within(1e-3));
        assertThat(costs.drink("By batch").use()).containsEntry("Still water", Exact.of(50));
        assertThat(requireNonNull(costs.drink("By weight").use().get("White sugar"))
                        .toDouble())
                .isCloseTo(500 * 62.384 / 999.1, within(1e-3));
    }

    @Test
    void aYieldThatIsNotTypedIsComputed() {
        Costs costs = Bar.costs(bar().preparation("Syrup", Measure.ML, cells -> cells.with("loss", "10"))
                .line("Syrup", "White sugar", "1000", "g")
                .line("Syrup", "Rum", "1000", "g")
                .preparation("Weighed", Measure.G, cells -> cells.with("loss", "5"))
                .line("Weighed", "White sugar", "600", "g")
                .line("Weighed", "Cinnamon bark", "400", "g")
                .preparation("Infusion", Measure.ML, cells -> cells.with("loss", "5"))
                .line("Infusion", "Rum", "700", "ml")
                .line("Infusion", "Cinnamon bark", "10", "g"));
        // no density of rum is typed, so grams of it cannot be measured out
        assertThat(costs.preparation("Syrup").faults())
                .extracting(Problem::kind)
                .containsExactly(ProblemKind.DENSITY_MISSING);
        assertThat(costs.preparation("Weighed").makes()).isEqualTo(Amount.of("950", Measure.G));
        assertThat(costs.preparation("Weighed").unitCost())
                .isEqualTo(Money.of("20.6").dividedBy(Exact.of(950)));
        PreparationCost infusion = costs.preparation("Infusion");
        assertThat(infusion.makes()).isEqualTo(Amount.of("665", Measure.ML));
        assertThat(infusion.batchCost()).isEqualTo(Money.of("14.5"));
        assertThat(infusion.contents().abvPercent()).isCloseTo(40, TINY);
        assertThat(infusion.notices())
                .extracting(Problem::reason)
                .singleElement()
                .asString()
                .contains("Cinnamon bark");
    }

    /** 120 g of bark stay in the strainer: a ml of what comes out weighs what its known parts weigh, 0.9982 g of water. */
    @Test
    void whatNobodyDescribedDoesNotWeighDownTheLiquid() {
        PreparationCost tea = Bar.costs(bar().preparation("Tea", Measure.ML, cells -> cells.makes("860"))
                        .line("Tea", "Still water", "1000", "ml")
                        .line("Tea", "Cinnamon bark", "120", "g"))
                .preparation("Tea");
        assertThat(tea.contents().massG()).isCloseTo(0.9982, within(1e-4));
        assertThat(tea.contents().volumeMl()).isEqualTo(1);
        assertThat(tea.unknownComposition()).containsExactly("Cinnamon bark");
    }

    /** 1 kg of sugar and 1 kg of water make 1626 ml: check value of the published sucrose density at 50 °Bx. */
    @Test
    void equalMassesOfSugarAndWaterMakeTheirPublishedVolume() {
        Costs costs = Bar.costs(new BookBuilder()
                .ingredient(
                        "White sugar",
                        Measure.G,
                        cells -> cells.list("1", "1000").with("sugar", "100"))
                .ingredient(
                        "Weighed water",
                        Measure.G,
                        cells -> cells.list("0", "1").with("abv", "0"))
                .preparation("Syrup")
                .line("Syrup", "White sugar", "1", "kg")
                .line("Syrup", "Weighed water", "1", "kg"));
        PreparationCost syrup = costs.preparation("Syrup");
        assertThat(number(syrup.makes())).isCloseTo(1626, within(1.0));
    }

    /**
     * Acid-corrected orange juice, rule of common practice: for each 100 ml of juice of 0.8 % citric acid, 3.2 g citric
     * and 2.0 g malic acid bring it to 4 and 2.
     */
    @ParameterizedTest
    @CsvSource({"100, 3.2, 2", "1000, 32, 20", "250, 8, 5", "333, 10.656, 6.66"})
    void acidTargetsAreSolvedByTheRule(String juice, String citric, String malic) {
        PreparationCost lime = Bar.costs(corrected(juice)).preparation("Lime orange");
        assertThat(lime.faults()).isEmpty();
        assertThat(lime.lines())
                .extracting(CostLine::amount)
                .containsExactly(
                        Amount.of(juice, Measure.ML), Amount.of(citric, Measure.G), Amount.of(malic, Measure.G));
        assertThat(lime.lines()).extracting(CostLine::computed).containsExactly(false, true, true);
        assertThat(lime.lines().get(1).cost()).isEqualTo(Money.of("0.01").times(Exact.of(citric)));
        assertThat(lime.contents().acidG() * 100).isCloseTo(6 / 1.031, within(0.02));
    }

    private static BookBuilder corrected(String juice) {
        return bar().preparation(
                        "Lime orange",
                        Measure.ML,
                        cells -> cells.with("citric", "4").with("malic", "2"))
                .line("Lime orange", "Sweet orange", juice, "ml")
                .line("Lime orange", "Citric", new SpecAmount.ToTarget(), "g")
                .line("Lime orange", "Malic", new SpecAmount.ToTarget(), "g");
    }

    /** In the finished liquid 3.33 g citric and 2.06 g malic acid would be exact (check values of common practice). */
    @Test
    void acidTargetsAreMetExactlyWhereSetSo() {
        PreparationCost lime = Bar.costs(corrected("100").set(Setting.ACID_TARGETS, AcidTargets.EXACT))
                .preparation("Lime orange");
        assertThat(lime.contents().citricG()).isCloseTo(0.04, TINY);
        assertThat(lime.contents().malicG()).isCloseTo(0.02, TINY);
        assertThat(number(lime.lines().get(1).amount())).isCloseTo(3.33, within(0.02));
        assertThat(number(lime.lines().get(2).amount())).isCloseTo(2.06, within(0.01));
    }

    @Test
    void saltTargetsAreByMassOfTheFinishedLiquid() {
        Costs costs = Bar.costs(bar().preparation("Saline", Measure.ML, cells -> cells.with("salt", "20"))
                .line("Saline", "Still water", "400", "ml")
                .line("Saline", "Salt crystals", new SpecAmount.ToTarget(), ""));
        PreparationCost saline = costs.preparation("Saline");
        assertThat(saline.contents().massPercent(saline.contents().saltG())).isCloseTo(20, TINY);
    }

    @ParameterizedTest
    @CsvSource({
        "Rum, citric, 4, SPEC_FAULT",
        "Citric, malic, 4, SPEC_FAULT",
        "Citric, citric, 0.5, TARGET_UNREACHABLE",
        "Citric, keeps, 3, SPEC_FAULT",
    })
    void aTargetThatCannotBeMetLeavesOutThePreparationAndItsDrinks(
            String added, String target, String value, ProblemKind kind) {
        Costs costs = Bar.costs(bar().preparation("Mix", Measure.ML, cells -> cells.with(target, value))
                .line("Mix", "Sweet orange", "100", "ml")
                .line("Mix", added, new SpecAmount.ToTarget(), "")
                .drink("Sour")
                .line("Sour", "Mix", "30", "ml"));
        assertThat(costs.preparation("Mix").faults()).extracting(Problem::kind).containsExactly(kind);
        assertThat(costs.drink("Sour").cost()).isEmpty();
        assertThat(costs.drink("Sour").reason()).startsWith("It uses Mix. ");
    }

    /** A ruling of the contract: two lines for one target are a fault of the spec, whatever their ingredients hold. */
    @Test
    void twoLinesForOneTargetAreAFaultOfTheSpec() {
        Costs costs = Bar.costs(bar().ingredient(
                        "Citric crystals",
                        Measure.G,
                        cells -> cells.list("10", "1000").with("citric", "91.43"))
                .preparation("Mix", Measure.ML, cells -> cells.with("citric", "4"))
                .line("Mix", "Sweet orange", "100", "ml")
                .line("Mix", "Citric", new SpecAmount.ToTarget(), "")
                .line("Mix", "Citric crystals", new SpecAmount.ToTarget(), ""));
        assertThat(costs.preparation("Mix").faults()).singleElement().satisfies(fault -> {
            assertThat(fault.kind()).isEqualTo(ProblemKind.SPEC_FAULT);
            assertThat(fault.reason()).isEqualTo("Two lines are to meet the target for citric acid.");
        });
    }

    @Test
    void aTypedAmountBesideATargetIsComparedWithIt() {
        Costs costs = Bar.costs(bar().ingredient(
                        "Misread orange",
                        Measure.ML,
                        cells -> cells.list("3", "1000").with("citric", "0.08"))
                .preparation("Mix", Measure.ML, cells -> cells.with("citric", "4"))
                .line("Mix", "Misread orange", "100", "ml")
                .line("Mix", "Citric", "3.2", "g"));
        PreparationCost mix = costs.preparation("Mix");
        assertThat(mix.faults()).isEmpty();
        assertThat(mix.notices()).singleElement().satisfies(notice -> {
            assertThat(notice.reason()).contains("3.2 g typed, 3.92 g needed", "0.08 or 0.8");
            assertThat(notice.kind()).isEqualTo(ProblemKind.VALUE_DOUBTFUL);
        });
    }

    @Test
    void aTargetThatNoLineMeetsIsSaid() {
        Costs costs = Bar.costs(bar().preparation("Mix", Measure.ML, cells -> cells.with("citric", "4"))
                .line("Mix", "Sweet orange", "100", "ml"));
        assertThat(costs.preparation("Mix").notices())
                .extracting(Problem::reason)
                .containsExactly("A target is set for citric acid, but no line brings it there.");
        assertThat(costs.preparation("Mix").faults()).isEmpty();
    }

    @Test
    void aMeasuredYieldAndALossAreAFault() {
        Costs costs = Bar.costs(
                bar().preparation("Mix", Measure.ML, cells -> cells.makes("90").with("loss", "10"))
                        .line("Mix", "Rum", "100", "ml")
                        .preparation("None", Measure.ML, cells -> cells.makes("0"))
                        .line("None", "Rum", "100", "ml")
                        .preparation("Pieces", Measure.EACH, cells -> cells)
                        .line("Pieces", "Rum", "100", "ml")
                        .preparation("Bare")
                        .drink("Sour")
                        .line("Sour", "Mix", "9", "ml")
                        .line("Sour", "Bare", "9", "ml"));
        assertThat(costs.preparation("Mix").faults()).extracting(Problem::kind).containsExactly(ProblemKind.SPEC_FAULT);
        assertThat(costs.preparation("None").faults())
                .extracting(Problem::kind)
                .containsExactly(ProblemKind.SPEC_FAULT);
        assertThat(costs.preparation("Pieces").faults())
                .extracting(Problem::kind)
                .containsExactly(ProblemKind.SPEC_FAULT);
        assertThat(costs.preparation("Bare").faults())
                .extracting(Problem::kind)
                .containsExactly(ProblemKind.SPEC_MISSING);
        assertThat(costs.drink("Sour").use()).as("known lines").containsExactly(entry("Rum", Exact.of(10)));
        assertThat(costs.drink("Sour").faults()).hasSize(2);
    }

    @Test
    void aCycleIsNamedWithItsPathAndOnlyCostsThoseItTouches() {
        BookBuilder builder = bar().preparation("Cordial", Measure.ML, cells -> cells.makes("100"))
                .preparation("Base", Measure.ML, cells -> cells.makes("100"))
                .preparation("Above", Measure.ML, cells -> cells.makes("100"))
                .drink("Sour")
                .drink("Fine")
                .drink("Snake")
                .line("Cordial", "Base", "50", "ml")
                .line("Cordial", "Rum", "50", "ml")
                .line("Base", "Cordial", "50", "ml")
                .line("Base", "White sugar", "50", "g")
                .line("Above", "Cordial", "50", "ml")
                .line("Sour", "Above", "10", "ml")
                .line("Fine", "Rum", "10", "ml")
                .line("Snake", "Snake", "1", "serve");
        for (long seed = 0; seed < 5; seed++) {
            Costs costs = Bar.costs(builder.shuffled(seed));
            assertThat(costs.preparation("Base").faults()).singleElement().satisfies(fault -> {
                assertThat(fault.kind()).isEqualTo(ProblemKind.SPEC_CYCLE);
                assertThat(fault.reason()).contains("Base > Cordial > Base");
            });
            assertThat(costs.preparation("Cordial").faults())
                    .extracting(Problem::reason)
                    .allMatch(r -> r.contains("Base > Cordial > Base"));
            assertThat(costs.drink("Sour").reason()).contains("Base > Cordial > Base");
            assertThat(costs.drink("Sour").use()).containsExactly(entry("Rum", Exact.of("2.5")));
            assertThat(costs.drink("Fine").cost()).isPresent();
            assertThat(costs.drink("Snake").reason()).contains("Snake > Snake");
        }
    }
}
