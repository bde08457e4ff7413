package heeltap.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.entry;

import heeltap.BookBuilder;
import heeltap.match.Match;
import heeltap.quantity.Amount;
import heeltap.quantity.Exact;
import heeltap.quantity.Measure;
import heeltap.quantity.Money;
import heeltap.record.NameRule.Where;
import heeltap.record.Setting;
import heeltap.record.SpecAmount;
import heeltap.source.Place;
import heeltap.source.Problem;
import heeltap.source.ProblemKind;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DrinkCostTest {
    private static final Place HERE = Place.of("losses.csv").withRow(5);

    /** Each ingredient costs 1 for one of its measure, so that cost shows the amount used. */
    private static BookBuilder bar() {
        return new BookBuilder()
                .ingredient("Gin", Measure.ML, cells -> cells.list("1", "1").with("abv", "40"))
                .ingredient("Syrup", Measure.ML, cells -> cells.list("1", "1").with("density", "1.25"))
                .ingredient(
                        "Honey",
                        Measure.G,
                        cells -> cells.list("1", "1").with("density", "1.4").with("sugar", "82"))
                .ingredient("Nutmeg", Measure.G, cells -> cells.list("1", "1"))
                .ingredient(
                        "Lime",
                        Measure.EACH,
                        cells -> cells.list("1", "1")
                                .with("juice", "30")
                                .with("each", "80")
                                .with("citric", "4.5"))
                .ingredient(
                        "Lemon juice", Measure.ML, cells -> cells.list("1", "1").with("juice", "45"))
                .ingredient(
                        "Cube",
                        Measure.EACH,
                        cells -> cells.list("1", "1").with("each", "4").with("sugar", "100"))
                .ingredient("Tonic", Measure.ML, cells -> cells.list("1", "1").with("bottle", "200"))
                .ingredient(
                        "Mint",
                        Measure.EACH,
                        cells -> cells.list("1", "1").with("usable", "80").allergens("Celery"));
    }

    private static DrinkCost drink(BookBuilder builder) {
        return Bar.costs(builder).drink("Sour");
    }

    @ParameterizedTest
    @CsvSource({
        "Gin, 50, ml, 50",
        "Gin, 50, '', 50",
        "Gin, 2.25, cl, 22.5",
        "Gin, 1, oz, 29.5735295625",
        "Gin, 1, fl oz, 29.5735295625",
        "Gin, 1, uk fl oz, 28.4130625",
        "Gin, 2, dash, 1.84",
        "Gin, 10, drops, 0.5",
        "Gin, 1, bar spoon, 5",
        "Gin, 1, tsp, 4.92892159375",
        "Gin, 1, tbsp, 14.78676478125",
        "Gin, 1, cup, 236.5882365",
        "Gin, 1, pint, 473.176473",
        "Gin, 1, quart, 946.352946",
        "Gin, 1, gallon, 3785.411784",
        "Gin, 1, uk pint, 568.26125",
        "Gin, 1, jigger, 44.36",
        "Gin, 1, shot, 30",
        "Honey, 20, g, 20",
        "Honey, 1, oz, 28.349523125",
        "Honey, 1, lb, 453.59237",
        "Honey, 10, ml, 14",
        "Honey, 500, mg, 0.5",
        "Nutmeg, 1, pinch, 0.4",
        "Syrup, 25, g, 20",
        "Syrup, 1, oz, 29.5735295625",
        "Lime, 2, wedge, 2",
        "Lime, 15, ml, 0.5",
        "Lime, 40, g, 0.5",
        "Cube, 1, each, 1",
        "Cube, 8, g, 2",
        "Tonic, 1, each, 200",
        "Mint, 4, leaves, 5",
    })
    void everyUnitComesToTheIngredientsMeasure(String ingredient, String amount, String unit, String used) {
        DrinkCost drink = drink(bar().drink("Sour").line("Sour", ingredient, amount, unit));
        assertThat(drink.faults()).isEmpty();
        assertThat(drink.cost()).contains(Money.of(used));
        assertThat(drink.use()).containsExactly(entry(ingredient, Exact.of(used)));
    }

    @ParameterizedTest
    @CsvSource({
        "Gin, 5, g, DENSITY_MISSING, a density",
        "Nutmeg, 1, tsp, DENSITY_MISSING, a density",
        "Nutmeg, 1, each, UNIT_UNKNOWN, Each g",
        "Gin, 1, each, UNIT_UNKNOWN, Bottle ml",
        "Mint, 5, ml, UNIT_UNKNOWN, Juice ml",
        "Mint, 5, g, UNIT_UNKNOWN, Each g",
        "Gin, 1, thimble, UNIT_UNKNOWN, not known",
        "Gin, 1, serve, UNIT_UNKNOWN, A serve is of a drink",
        "Gin, 1, batch, UNIT_UNKNOWN, A batch is of a preparation",
        "Ginn, 1, ml, NAME_UNKNOWN, has this name",
    })
    void anAmountThatCannotBeWorkedOutLeavesTheDrinkWithoutCost(
            String ingredient, String amount, String unit, ProblemKind kind, String says) {
        DrinkCost drink =
                drink(bar().drink("Sour").line("Sour", "Syrup", "10", "ml").line("Sour", ingredient, amount, unit));
        assertThat(drink.cost()).isEmpty();
        assertThat(drink.reason()).contains(says);
        assertThat(drink.faults()).singleElement().satisfies(fault -> {
            assertThat(fault.kind()).isEqualTo(kind);
            assertThat(fault.place().toString()).isEqualTo("book.xlsx, sheet Specs, row 3");
        });
        assertThat(drink.use()).as("known lines stay in use").containsExactly(entry("Syrup", Exact.of(10)));
        assertThat(drink.lines()).extracting(CostLine::cost).containsExactly(Money.of("10"), null);
    }

    @Test
    void wasteAndUsablePercentAreInCostAndInUse() {
        DrinkCost drink = drink(bar().drink("Sour").wasteLine("Sour", "Mint", "4", "leaf", "10"));
        assertThat(drink.cost()).contains(Money.of("5.5"));
        assertThat(drink.use()).containsExactly(entry("Mint", Exact.of("5.5")));
        assertThat(drink.lines().get(0).amount()).isEqualTo(Amount.of("4", Measure.EACH));
        assertThat(drink.lines().get(0).unitCost()).isEqualTo(Money.of("1.25"));
    }

    @Test
    void aDrinkFillsUpToItsServe() {
        DrinkCost drink = drink(bar().drink("Sour", cells -> cells.with("serve", "200"))
                .line("Sour", "Gin", "40", "ml")
                .line("Sour", "Honey", "14", "g")
                .line("Sour", "Lime", "0.5", "each")
                .line("Sour", "Nutmeg", "1", "g")
                .line("Sour", "Tonic", new SpecAmount.ToTop(), ""));
        assertThat(drink.faults()).isEmpty();
        assertThat(drink.use().get("Tonic")).isEqualTo(Exact.of(150));
        assertThat(drink.notices())
                .extracting(Problem::reason)
                .singleElement()
                .asString()
                .contains("What Nutmeg fills");
    }

    @Test
    void partsShareOutTheServe() {
        DrinkCost drink = drink(bar().drink("Sour", cells -> cells.with("serve", "90"))
                .line("Sour", "Gin", "2", "parts")
                .line("Sour", "Syrup", "0.5", "part")
                .line("Sour", "Lime", "0.5", "part"));
        assertThat(drink.use())
                .containsExactly(
                        entry("Gin", Exact.of(60)), entry("Lime", Exact.of("0.5")), entry("Syrup", Exact.of(15)));
    }

    @Test
    void aRinseIsOneOfItsUnitOrFiveMl() {
        BookBuilder builder = bar().drink("Sour")
                .line("Sour", "Gin", new SpecAmount.Rinse(), "")
                .line("Sour", "Syrup", new SpecAmount.Rinse(), "bar spoon");
        assertThat(drink(builder).use()).containsExactly(entry("Gin", Exact.of(5)), entry("Syrup", Exact.of(5)));
        assertThat(drink(builder.measure("bar spoon", "3")).use())
                .containsExactly(entry("Gin", Exact.of(5)), entry("Syrup", Exact.of(3)));
    }

    @Test
    void juiceOfFruitGoesThroughItsYield() {
        SpecAmount half = new SpecAmount.JuiceOf(Exact.of("0.5"));
        DrinkCost drink =
                drink(bar().drink("Sour").line("Sour", "Lime", half, "").line("Sour", "Lemon juice", half, ""));
        assertThat(drink.use()).containsExactly(entry("Lemon juice", Exact.of("22.5")), entry("Lime", Exact.of("0.5")));
        assertThat(drink.contents().volumeMl()).isBetween(37.4, 37.6);
        assertThat(Bar.costs(bar().drink("Sour").line("Sour", "Gin", half, ""))
                        .drink("Sour")
                        .faults())
                .extracting(Problem::kind)
                .containsExactly(ProblemKind.VALUE_MISSING);
    }

    @ParameterizedTest
    @CsvSource({"0, Gin, 1, part", "90, Gin, 95, ml"})
    void toTopNeedsRoomAndPartsNeedAServe(String serve, String ingredient, String amount, String unit) {
        DrinkCost drink = drink(bar().drink("Sour", cells -> serve.equals("0") ? cells : cells.with("serve", serve))
                .line("Sour", ingredient, amount, unit)
                .line("Sour", "Tonic", new SpecAmount.ToTop(), ""));
        assertThat(drink.cost()).isEmpty();
        assertThat(drink.faults()).isNotEmpty().extracting(Problem::kind).containsOnly(ProblemKind.SPEC_FAULT);
    }

    @Test
    void amountsToTasteLeaveTheDrinkWithoutCostWithTheirReason() {
        DrinkCost drink = drink(
                bar().drink("Sour").line("Sour", "Gin", new SpecAmount.Unclear("\"to taste\" is no amount."), ""));
        assertThat(drink.reason()).isEqualTo("\"to taste\" is no amount.");
        // the reading of the book has told it where it stands; so too of what a name it left out would mean
        Costs unclear = Bar.costs(bar().drink("Sour")
                .line("Sour", "Gin", new SpecAmount.Unclear("\"to taste\" is no amount."), "")
                .line("Sour", "Left out", new SpecAmount.Unclear("\"Left out\" is left out."), "")
                .line("Sour", "Nowhere", "1", "ml")
                .drink("Large sour")
                .line("Large sour", "Sour", "2", "serve"));
        assertThat(unclear.problems()).extracting(Problem::raw).containsExactly("Nowhere");
        BookBuilder target = bar().drink("Sour").line("Sour", "Gin", new SpecAmount.ToTarget(), "");
        assertThat(drink(target).reason()).contains("Targets are for preparations");
    }

    @Test
    void drinksInDrinksCountInServes() {
        Costs costs = Bar.costs(bar().drink("Shot", cells -> cells.with("minutes", "1"))
                .line("Shot", "Gin", "40", "ml")
                .drink("Sour", cells -> cells.with("minutes", "2"))
                .line("Sour", "Shot", "2", "serve")
                .line("Sour", "Shot", "1", "")
                .drink("Wrong")
                .line("Wrong", "Shot", "30", "ml")
                .set(Setting.LABOUR_COST_PER_HOUR, Money.of("18")));
        assertThat(costs.drink("Sour").cost()).contains(Money.of("120"));
        assertThat(costs.drink("Sour").labour()).isEqualTo(Money.of("1.5"));
        assertThat(costs.drink("Sour").contents().abvPercent()).isBetween(39.99, 40.01);
        assertThat(costs.drink("Wrong").reason()).contains("measured in serves");
        assertThat(costs.drinks()).extracting(DrinkCost::name).containsExactly("Shot", "Sour", "Wrong");
    }

    @Test
    void aFixedCostHoldsTaxWhereInvoicePricesDo() {
        BookBuilder builder = bar().drink("Sour", cells -> cells.with("fixed", "2.40"))
                .set(Setting.INVOICE_TAX_PERCENT, Exact.of(20));
        assertThat(drink(builder).cost()).contains(Money.of("2.40"));
        assertThat(drink(builder.set(Setting.INVOICE_PRICES_INCLUDE_TAX, true)).cost())
                .contains(Money.of("2"));
        DrinkCost both = drink(builder.line("Sour", "Gin", "40", "ml"));
        assertThat(both.cost()).isEmpty();
        assertThat(both.reason()).contains("a fixed cost and a spec");
        assertThat(both.use()).containsExactly(entry("Gin", Exact.of(40)));
    }

    @Test
    void aDrinkWithoutSpecAndAnIngredientWithoutPriceAreTold() {
        Costs costs = Bar.costs(bar().drink("Bare")
                .ingredient("Mezcal", Measure.ML)
                .drink("Sour")
                .line("Sour", "Mezcal", "40", "ml")
                .line("Sour", "Gin", "10", "ml"));
        assertThat(costs.drink("Bare").faults()).extracting(Problem::kind).containsExactly(ProblemKind.SPEC_MISSING);
        assertThat(costs.drink("Sour").reason()).startsWith("It uses Mezcal. No invoice of this or an earlier month");
        assertThat(costs.drink("Sour").use())
                .containsExactly(entry("Gin", Exact.of(10)), entry("Mezcal", Exact.of(40)));
        assertThat(costs.problems())
                .extracting(Problem::kind)
                .containsExactly(ProblemKind.SPEC_MISSING, ProblemKind.PRICE_MISSING);
        assertThatThrownBy(() -> costs.drink("None")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void specsFollowTheDayAndPricesTheMonth() {
        Costs costs = Bar.costs(bar().drink("Sour")
                .preparation("Mix", Measure.ML, cells -> cells.makes("100"))
                .line("Mix", "Syrup", "100", "ml")
                .lineFrom("2026-10-20", "Mix", "Syrup", "50", "ml")
                .line("Sour", "Mix", "30", "ml")
                .lineFrom("2026-10-10", "Sour", "Mix", "40", "ml")
                .lineFrom("2026-11-01", "Sour", "Gin", "500", "ml")
                .drink("Late")
                .lineFrom("2026-10-15", "Late", "Gin", "10", "ml"));
        assertThat(costs.drinkOn("Sour", LocalDate.of(2026, 10, 9)).cost()).contains(Money.of("30"));
        assertThat(costs.drinkOn("Sour", LocalDate.of(2026, 10, 10)).cost()).contains(Money.of("40"));
        assertThat(costs.drinkOn("Sour", LocalDate.of(2026, 10, 20)).cost()).contains(Money.of("20"));
        assertThat(costs.drink("Sour").cost()).contains(Money.of("20"));
        assertThat(costs.drinkOn("Sour", null)).isSameAs(costs.drinkOn("Sour", LocalDate.of(2026, 10, 25)));
        assertThat(costs.drinkOn("Late", LocalDate.of(2026, 10, 14)).reason()).contains("begins only on 2026-10-15");
        assertThat(costs.drink("Late").cost()).contains(Money.of("10"));
    }

    @Test
    void aNameOfTheSheetNamesCountsItsTimes() {
        DrinkCost drink = drink(
                bar().drink("Sour").name("Squeeze", "Lime", Where.ANY, "2").line("Sour", "Squeeze", "1", ""));
        assertThat(drink.use()).containsExactly(entry("Lime", Exact.of(2)));
    }

    @Test
    void allergensAndUnknownCompositionAreGathered() {
        Costs costs = Bar.costs(bar().ingredient(
                        "Cream", Measure.ML, cells -> cells.list("1", "1").allergens("Milk", "Celery"))
                .preparation("Mix", Measure.ML, cells -> cells.makes("100"))
                .line("Mix", "Cream", "100", "ml")
                .drink("Sour")
                .line("Sour", "Mix", "20", "ml")
                .line("Sour", "Mint", "1", "leaf")
                .line("Sour", "Nutmeg", "1", "g"));
        assertThat(costs.drink("Sour").allergens()).containsExactly("Celery", "Milk");
        assertThat(costs.drink("Sour").unknownComposition()).contains("Mint", "Nutmeg");
    }

    @Test
    void useOfAnyAmountOfAnythingIsAsBought() {
        Costs costs = Bar.costs(bar().preparation("Mix", Measure.ML, cells -> cells.makes("100"))
                .line("Mix", "Mint", "40", "leaf")
                .drink("Sour")
                .line("Sour", "Mix", "20", "ml")
                .drink("Bare"));
        ItemUse drink = costs.use(match("Sour", Match.Kind.DRINK, "2"), Exact.of(3), "", null, HERE);
        assertThat(drink.ingredients()).containsExactly(entry("Mint", Exact.of(60)));
        assertThat(drink.preparations()).containsExactly(entry("Mix", Exact.of(120)));
        assertThat(costs.use(match("Mix", Match.Kind.PREPARATION, "1"), Exact.of(1), "cl", null, HERE)
                        .ingredients())
                .containsExactly(entry("Mint", Exact.of(5)));
        assertThat(costs.use(match("Gin", Match.Kind.INGREDIENT, "1"), Exact.of(1), "cl", null, HERE)
                        .ingredients())
                .containsExactly(entry("Gin", Exact.of(10)));
        ItemUse wrong = costs.use(match("Gin", Match.Kind.INGREDIENT, "1"), Exact.of(1), "g", null, HERE);
        assertThat(wrong.ingredients()).isEmpty();
        assertThat(wrong.problems())
                .singleElement()
                .satisfies(p -> assertThat(p.place()).isEqualTo(HERE));
        assertThat(costs.use(match("Bare", Match.Kind.DRINK, "1"), Exact.ONE, "", null, HERE)
                        .problems())
                .extracting(Problem::kind)
                .containsExactly(ProblemKind.SPEC_MISSING);
    }

    private static Match match(String name, Match.Kind kind, String times) {
        return new Match(name, kind, Exact.of(times));
    }

    @Test
    void aMeasureThatCannotBeSetIsReported() {
        Costs costs = Bar.costs(
                bar().measure("ml", "2").measure("dash", "0.6").drink("Sour").line("Sour", "Gin", "1", "dash"));
        assertThat(costs.problems()).extracting(Problem::raw).containsExactly("ml");
        assertThat(costs.drink("Sour").cost()).contains(Money.of("0.6"));
    }

    @Test
    void specLinesOfNothingAreReported() {
        List<Problem> problems = Bar.costs(bar().line("Sur", "Gin", "1", "ml")).problems();
        assertThat(problems)
                .extracting(Problem::raw, Problem::kind)
                .containsExactly(org.assertj.core.groups.Tuple.tuple("Sur", ProblemKind.NAME_UNKNOWN));
    }
}
