package heeltap.cost;

import static org.assertj.core.api.Assertions.assertThat;

import heeltap.BookBuilder;
import heeltap.match.NameBook;
import heeltap.quantity.Exact;
import heeltap.quantity.Measure;
import heeltap.quantity.Money;
import heeltap.record.Book;
import heeltap.record.Setting;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Published worked examples of yields, costs and tax, through the calculating classes, to the printed digit. */
class WorkedExamplesTest {
    private static Money cost(BookBuilder builder, String drink) {
        return Bar.costs(builder).drink(drink).cost().orElseThrow();
    }

    private static void assertPrinted(Money actual, String printed) {
        assertPrinted(actual.amount(), printed);
    }

    /** Within half a unit of the last printed digit. */
    private static void assertPrinted(Exact actual, String printed) {
        BigDecimal expected = new BigDecimal(printed);
        assertThat(actual.round(expected.scale(), RoundingMode.HALF_UP)).isEqualByComparingTo(expected);
    }

    /**
     * Traster, Foundations of Cost Control, ch. 7: a bottle of 750 ml at 17.50, 33.8 oz a litre as the source has it, costs
     * 0.69 an ounce as bought; 94.7 % of it can be poured, so that a portion of 1.25 oz costs 0.9112 (inputs and first
     * figure seen, the portion recomputed).
     */
    @Test
    void aSpiritWithAYieldCostsMoreThanItsBottleSays() {
        BookBuilder builder = new BookBuilder()
                .ingredient(
                        "Agave spirit",
                        Measure.ML,
                        cells -> cells.list("17.50", "750").with("usable", "94.7"))
                .ingredient("All poured", Measure.ML, cells -> cells.list("17.50", "750"))
                .measure(
                        "source oz",
                        Exact.of(1000)
                                .dividedBy(Exact.of("33.8"))
                                .toSignificant(15)
                                .toPlainString())
                .drink("Ounce")
                .line("Ounce", "All poured", "1", "source oz")
                .drink("Portion")
                .line("Portion", "Agave spirit", "1.25", "source oz");
        assertPrinted(cost(builder, "Ounce"), "0.69");
        assertPrinted(cost(builder, "Portion"), "0.9112");
    }

    /** The same chapter: a keg of 15 gallons is 1920 oz; 108 pints of 16 oz are 1728 oz or 90 % (seen). */
    @Test
    void aKegYieldsItsPints() {
        BookBuilder builder = new BookBuilder()
                .ingredient(
                        "Ale",
                        Measure.ML,
                        cells -> cells.list("1920", BookBuilder.pack("15", "3785.411784", Measure.ML))
                                .with("usable", "90"))
                .drink("Pint")
                .line("Pint", "Ale", "16", "fl oz");
        DrinkCost pint = Bar.costs(builder).drink("Pint");
        assertThat(pint.cost()).contains(Money.of("16").dividedBy(Exact.of("0.9")));
        Exact keg = Exact.of(15).times(Exact.of("3785.411784"));
        assertPrinted(keg.dividedBy(pint.use().getOrDefault("Ale", Exact.ZERO)), "108");
    }

    /**
     * Wall, trade calculations: 5.2 kg as bought give 4.6 kg, 88.5 %; at 11.95 a kg the usable kg costs 13.51, and 85
     * portions of 170 g take 14.45 kg usable and 16.33 kg as bought. Ontario Pork: 5 kg for 25 give 3.75 kg, 75 %, 6.67 a
     * kg (inputs and percentages seen, the rest recomputed).
     */
    @ParameterizedTest
    @CsvSource({"5.2, 4.6, 62.14, 88.5, 13.51, 14.45, 16.33", "5, 3.75, 25, 75, 6.67, 3.75, 5.00"})
    void usablePercentTurnsBoughtIntoUsable(
            String bought, String usable, String price, String percent, String perKg, String wanted, String toBuy) {
        Exact share = Exact.of(usable).dividedBy(Exact.of(bought)).times(Exact.HUNDRED);
        assertPrinted(share, percent);
        BookBuilder builder = new BookBuilder()
                .ingredient(
                        "Cut",
                        Measure.G,
                        cells -> cells.list(price, BookBuilder.pack(bought, "1000", Measure.G))
                                .with("usable", share.toSignificant(18).toPlainString()))
                .drink("Kilo")
                .line("Kilo", "Cut", "1", "kg")
                .drink("Feast")
                .line("Feast", "Cut", wanted, "kg");
        assertPrinted(cost(builder, "Kilo"), perKg);
        Exact use = Bar.costs(builder).drink("Feast").use().getOrDefault("Cut", Exact.ZERO);
        assertPrinted(use.dividedBy(Exact.of(1000)), toBuy);
    }

    /**
     * Textbook butcher test of a leg of veal: 112.93 kg for 850.41; fat, bones, shanks and trimmings are worth 218.4807;
     * 37 kg usable at 17.0792 a kg, a portion of 150 g at 2.5619 (inputs seen, outputs recomputed). By-products are entered
     * as lines that take cost back.
     */
    @Test
    void byProductsTakeCostBack() {
        BookBuilder builder = new BookBuilder()
                .priced("Leg", Measure.G, "850.41", "112930")
                .priced("Fat", Measure.G, "1.00", "1000")
                .priced("Bones", Measure.G, "1.00", "1000")
                .priced("Shanks", Measure.G, "7.50", "1000")
                .priced("Trimmings", Measure.G, "4.99", "1000")
                .preparation("Usable", Measure.G, cells -> cells.makes("37000"))
                .line("Usable", "Leg", "112.93", "kg")
                .line("Usable", "Fat", "-18.80", "kg")
                .line("Usable", "Bones", "-25.62", "kg")
                .line("Usable", "Shanks", "-8.95", "kg")
                .line("Usable", "Trimmings", "-21.43", "kg")
                .drink("Portion")
                .line("Portion", "Usable", "150", "g");
        PreparationCost usable = Bar.costs(builder).preparation("Usable");
        assertThat(usable.batchCost()).isEqualTo(Money.of("631.9293"));
        assertPrinted(cost(builder, "Portion"), "2.5619");
    }

    /**
     * Dopson, Hayes and Miller, a drink of gin, juice and soda under five recipes (inputs and outputs seen). The source
     * rounds costs an ounce to cents first (0.37, 0.08, 0.06); its fourth percentage, 11.43, is of the rounded cost 0.80,
     * where 0.795 over 7.00 is 11.357.
     */
    @ParameterizedTest
    @CsvSource({
        "1, 3, 2, 0.73, 10.43",
        "2, 3, 2, 1.10, 15.71",
        "1, 1, 4, 0.69, 9.86",
        "1.5, 1.5, 2, 0.80, 11.36",
        "2, 1, 3, 1.00, 14.29",
    })
    void fiveRecipesOfOneDrink(String gin, String juice, String soda, String cost, String percent) {
        BookBuilder builder = new BookBuilder()
                .priced("Gin", Measure.ML, "0.37", "29.5735295625")
                .priced("Fruit juice", Measure.ML, "0.08", "29.5735295625")
                .priced("Soda", Measure.ML, "0.06", "29.5735295625")
                .drink("Triple")
                .line("Triple", "Gin", gin, "oz")
                .line("Triple", "Fruit juice", juice, "oz")
                .line("Triple", "Soda", soda, "oz");
        Money actual = cost(builder, "Triple");
        assertPrinted(actual, cost);
        assertPrinted(actual.dividedBy(Money.of("7.00")).times(Exact.HUNDRED), percent);
    }

    /** The same without rounding in between: gin at 9.50 for 25.35 oz is 0.3748 an ounce, the first drink 0.7291. */
    @Test
    void nothingIsRoundedInBetween() {
        BookBuilder builder = new BookBuilder()
                .priced(
                        "Gin",
                        Measure.ML,
                        "9.50",
                        Exact.of("25.35").times(Exact.of("29.5735295625")).toString())
                .priced("Fruit juice", Measure.ML, "2.50", "946.352946")
                .priced("Soda", Measure.ML, "0.06", "29.5735295625")
                .drink("Triple")
                .line("Triple", "Gin", "1", "oz")
                .line("Triple", "Fruit juice", "3", "oz")
                .line("Triple", "Soda", "2", "oz");
        assertPrinted(cost(builder, "Triple"), "0.7291");
    }

    /** Foodservice management supplement 2025, tables 17.6 and 17.7: a pan for 36.00 makes 24 portions of 1.50 (seen). */
    @Test
    void aPanIsSharedOutInPortions() {
        BookBuilder builder = new BookBuilder()
                .priced("Everything", Measure.EACH, "36.00", "1")
                .preparation("Pan", Measure.EACH, cells -> cells.makes("24"))
                .line("Pan", "Everything", "1", "each")
                .drink("Portion")
                .line("Portion", "Pan", "1", "each");
        assertPrinted(cost(builder, "Portion"), "1.50");
        assertPrinted(cost(builder, "Portion").dividedBy(Exact.of("0.35")), "4.29");
    }

    /**
     * Goodheart-Willcox, Controlling Costs in the Foodservice Industry: prime cost is food and labour with its tax, 3.75 +
     * 2.40 = 6.15 and 0.65 + 2.38 = 3.03 (seen). Labour enters as minutes at the bar's rate.
     */
    @ParameterizedTest
    @CsvSource({"3.75, 2.40, 6.15", "0.65, 2.38, 3.03"})
    void primeCostIsCostAndLabour(String food, String labour, String prime) {
        BookBuilder builder = new BookBuilder()
                .priced("Food", Measure.EACH, food, "1")
                .drink("Plate", cells -> cells.with("minutes", "6"))
                .line("Plate", "Food", "1", "each")
                .set(Setting.LABOUR_COST_PER_HOUR, Money.of(labour).times(Exact.of(10)));
        DrinkCost plate = Bar.costs(builder).drink("Plate");
        assertThat(plate.cost().orElseThrow().plus(plate.labour())).isEqualTo(Money.of(prime));
    }

    /** Dopson, Hayes and Miller, ch. 6, student answers: cost percent and margin of four sizes (seen). */
    @ParameterizedTest
    @CsvSource({
        "3.60, 9.99, 36.0, 6.39",
        "4.60, 11.99, 38.4, 7.39",
        "5.60, 13.99, 40.0, 8.39",
        "6.60, 15.99, 41.3, 9.39"
    })
    void costPercentAndMarginOfAFixedCost(String cost, String price, String percent, String margin) {
        Money actual = cost(new BookBuilder().drink("Pizza", cells -> cells.with("fixed", cost)), "Pizza");
        assertPrinted(actual.dividedBy(Money.of(price)).times(Exact.HUNDRED), percent);
        assertPrinted(Money.of(price).minus(actual), margin);
    }

    /** Catering Management, p. 260: a bottle at 15 gives 12 drinks; at a cost of 50 % a drink sells at 2.50 (seen). */
    @Test
    void aBottleIsSharedOutInDrinks() {
        BookBuilder builder = new BookBuilder()
                .priced("Spirit", Measure.ML, "15", "750")
                .drink("Measure")
                .line("Measure", "Spirit", "62.5", "ml");
        assertPrinted(cost(builder, "Measure").dividedBy(Exact.of("0.50")), "2.50");
    }

    /** HM Revenue & Customs, VAT fractions: the tax in a gross sum is r/(100 + r) of it (seen). */
    @ParameterizedTest
    @CsvSource({"120, 20, 20", "115, 15, 15", "117.50, 17.5, 17.50", "60, 20, 10", "80, 5, 3.81"})
    void taxIsTakenOutOfInvoicesFixedCostsAndListPricesAlike(String gross, String rate, String tax) {
        BookBuilder builder = new BookBuilder()
                .priced("Spirit", Measure.EACH, gross, "1")
                .drink("Listed")
                .line("Listed", "Spirit", "1", "each")
                .drink("Fixed", cells -> cells.with("fixed", gross))
                .set(Setting.INVOICE_PRICES_INCLUDE_TAX, true)
                .set(Setting.INVOICE_TAX_PERCENT, Exact.of(rate));
        Book book = builder.build();
        Purchase bought = Purchases.of(
                        book,
                        NameBook.of(book),
                        List.of(new InvoiceBuilder("1", "2026-10-01")
                                .pricesWithTax(null)
                                .line("Spirit", null, "1", gross)
                                .build()))
                .value()
                .get(0);
        assertPrinted(Money.of(gross).minus(cost(builder, "Listed")), tax);
        assertPrinted(Money.of(gross).minus(cost(builder, "Fixed")), tax);
        assertPrinted(Money.of(gross).minus(bought.cost()), tax);
    }
}
