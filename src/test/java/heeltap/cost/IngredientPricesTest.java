package heeltap.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import heeltap.BookBuilder;
import heeltap.match.NameBook;
import heeltap.quantity.Exact;
import heeltap.quantity.Measure;
import heeltap.quantity.Money;
import heeltap.record.Book;
import heeltap.record.Invoice;
import heeltap.record.PriceRule;
import heeltap.record.Setting;
import heeltap.source.Problem;
import heeltap.source.ProblemKind;
import java.time.YearMonth;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class IngredientPricesTest {
    private static final YearMonth OCTOBER = YearMonth.of(2026, 10);
    private static final Book BOOK = new BookBuilder()
            .ingredient("Gin", Measure.ML, cells -> cells.list("14", "700"))
            .ingredient("Rum", Measure.ML)
            .build();

    /** {@code number day packs-of-700-ml goods}; a number that begins with C is a credit note. */
    private static Invoice invoice(String text) {
        String[] parts = text.split(" ", -1);
        InvoiceBuilder invoice = new InvoiceBuilder(parts[0], parts[1]);
        if (parts[0].startsWith("C")) {
            invoice.creditNote();
        }
        return invoice.line("Gin", BookBuilder.pack("1", "700", Measure.ML), parts[2], parts[3])
                .build();
    }

    private static MonthPurchases month(YearMonth month, StockPosition position, String... invoices) {
        List<Purchase> purchases = Purchases.of(
                        BOOK,
                        NameBook.of(BOOK),
                        Arrays.stream(invoices)
                                .map(IngredientPricesTest::invoice)
                                .toList())
                .value();
        return new MonthPurchases(month, purchases, Map.of("Gin", position));
    }

    private static MonthPurchases october(String... invoices) {
        return month(OCTOBER, StockPosition.UNKNOWN, invoices);
    }

    private static IngredientPrice gin(PriceRule rule, MonthPurchases month, MonthPurchases... earlier) {
        return IngredientPrices.of(BOOK, rule, month, List.of(earlier)).get("Gin");
    }

    private static Money perMl(String bottle) {
        return Money.of(bottle).dividedBy(Exact.of(700));
    }

    @Test
    void latestIsTheLaterRowOfTheLatestDayWithCreditsAndFreeGoodsAside() {
        IngredientPrice price = gin(
                PriceRule.LATEST,
                october(
                        "B 2026-10-20 1 17",
                        "A 2026-10-20 2 32",
                        "D 2026-10-03 1 15",
                        "E 2026-10-28 1 0",
                        "C 2026-10-29 -1 -19"));
        assertThat(price.unitCost()).isEqualTo(perMl("17"));
        assertThat(price.basis()).isEqualTo(PriceBasis.LATEST);
        assertThat(price.source()).isNotNull().extracting(Purchase::invoice).isEqualTo("B");
        assertThat(price.previousUnitCost()).isEqualTo(perMl("16"));
        assertThat(price.changePercent()).contains(Exact.of("6.25"));
    }

    @Test
    void previousReachesIntoEarlierMonths() {
        IngredientPrice price = gin(
                PriceRule.LATEST,
                october("A 2026-10-20 1 18"),
                month(YearMonth.of(2026, 8), StockPosition.UNKNOWN, "X 2026-08-02 1 12", "Y 2026-08-09 1 15"),
                month(YearMonth.of(2026, 11), StockPosition.UNKNOWN, "Z 2026-11-02 1 99"));
        assertThat(price.previousUnitCost()).isEqualTo(perMl("15"));
        assertThat(price.changePercent()).contains(Exact.of("20"));
    }

    @Test
    void averageWeighsPurchasesCreditsFreeGoodsAndOpeningStock() {
        StockPosition opening = new StockPosition(List.of(new StockLayer(Exact.of(1400), Money.of("20"), null)), null);
        String[] bought = {"A 2026-10-02 4 64", "B 2026-10-12 2 38", "E 2026-10-13 1 0", "C 2026-10-14 -1 -19"};
        IngredientPrice without = gin(PriceRule.AVERAGE, october(bought));
        IngredientPrice with = gin(
                PriceRule.AVERAGE,
                month(OCTOBER, opening, bought),
                month(YearMonth.of(2026, 9), StockPosition.UNKNOWN, "X 2026-09-02 1 12"));
        assertThat(without.unitCost()).isEqualTo(Money.of("83").dividedBy(Exact.of(4200)));
        assertThat(without.previousUnitCost()).isNull();
        assertThat(with.unitCost()).isEqualTo(Money.of("103").dividedBy(Exact.of(5600)));
        assertThat(with.basis()).isEqualTo(PriceBasis.AVERAGE);
        assertThat(with.source()).isNotNull().extracting(Purchase::invoice).isEqualTo("B");
        assertThat(with.previousUnitCost()).isEqualTo(perMl("12"));
    }

    @Test
    void anAverageOfGoodsMostlySentBackIsTheLatestPriceAndSaysSo() {
        IngredientPrice price = gin(PriceRule.AVERAGE, october("A 2026-10-02 1 16", "C 2026-10-14 -3 -40"));
        assertThat(price.unitCost()).isEqualTo(perMl("16"));
        assertThat(price.basis()).isEqualTo(PriceBasis.LATEST);
    }

    /** Layers: 2 bottles of opening stock at 10, then 4 at 16, 2 at 19 and 1 free; one of those at 19 went back. */
    @ParameterizedTest
    @CsvSource({
        "0, 19",
        "350, 19",
        "700, 19",
        "1400, 19",
        "1401, 16",
        "4200, 16",
        "4201, 10",
        "5600, 10",
        "9999, 10",
    })
    void fifoIsTheOldestLayerStillThere(String closing, String bottle) {
        StockPosition position =
                new StockPosition(List.of(new StockLayer(Exact.of(1400), Money.of("20"), null)), Exact.of(closing));
        IngredientPrice price = gin(
                PriceRule.FIFO,
                month(
                        OCTOBER,
                        position,
                        "A 2026-10-02 4 64",
                        "B 2026-10-12 2 38",
                        "C 2026-10-14 -1 -19",
                        "E 2026-10-15 1 0"));
        assertThat(price.unitCost()).isEqualTo(perMl(bottle));
        assertThat(price.basis()).isEqualTo(PriceBasis.FIFO);
        assertThat(price.source() == null).isEqualTo(bottle.equals("10"));
    }

    @Test
    void fifoWithoutACountIsTheLatestPriceAndSaysSo() {
        IngredientPrice price = gin(PriceRule.FIFO, october("A 2026-10-02 4 64", "B 2026-10-12 2 38"));
        assertThat(price.basis()).isEqualTo(PriceBasis.LATEST);
        assertThat(price.unitCost()).isEqualTo(perMl("19"));
    }

    @ParameterizedTest
    @EnumSource(PriceRule.class)
    void theNearestEarlierMonthFollowsTheSameRule(PriceRule rule) {
        StockPosition counted = new StockPosition(List.of(), Exact.of(1500));
        IngredientPrice price = gin(
                rule,
                october("E 2026-10-15 1 0"),
                month(YearMonth.of(2026, 7), counted, "X 2026-07-02 1 99"),
                month(YearMonth.of(2026, 8), counted, "Y 2026-08-02 1 12", "Z 2026-08-09 2 30"));
        assertThat(price.basis()).isEqualTo(PriceBasis.EARLIER_MONTH);
        assertThat(price.unitCost())
                .isEqualTo(perMl(rule == PriceRule.LATEST ? "15" : rule == PriceRule.AVERAGE ? "14" : "12"));
        assertThat(price.previousUnitCost()).isEqualTo(perMl(rule == PriceRule.LATEST ? "12" : "99"));
    }

    @Test
    void theListPriceServesLastAndNothingIsSaidToBeNothing() {
        IngredientPrices prices = IngredientPrices.of(BOOK, PriceRule.LATEST, october(), List.of());
        assertThat(prices.get("Gin").unitCost()).isEqualTo(perMl("14"));
        assertThat(prices.get("Gin").basis()).isEqualTo(PriceBasis.LIST);
        assertThat(prices.get("Rum").unitCost()).isNull();
        assertThat(prices.get("Rum").basis().text()).isEqualTo("none");
        assertThat(prices.all()).extracting(IngredientPrice::ingredient).containsExactly("Gin", "Rum");
        assertThatThrownBy(() -> prices.get("Mead")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void listPricesHoldTaxWhereInvoicePricesDo() {
        Book book = new BookBuilder()
                .priced("Gin", Measure.ML, "16.80", "700")
                .priced("Water", Measure.ML, "0", "1")
                .ingredient("Rum", Measure.ML, cells -> cells.list("9", (heeltap.quantity.Pack) null))
                .ingredient("Mint", Measure.G, cells -> cells.list("9", BookBuilder.pack("1", "5", Measure.ML)))
                .set(Setting.INVOICE_PRICES_INCLUDE_TAX, true)
                .set(Setting.INVOICE_TAX_PERCENT, Exact.of("20"))
                .build();
        IngredientPrices prices = IngredientPrices.of(book, PriceRule.LATEST, october(), List.of());
        assertThat(prices.get("Gin").unitCost()).isEqualTo(perMl("14"));
        assertThat(prices.get("Water").unitCost()).isEqualTo(Money.ZERO);
        assertThat(prices.get("Rum").basis()).isEqualTo(PriceBasis.NONE);
        assertThat(prices.get("Mint").basis()).isEqualTo(PriceBasis.NONE);
        assertThat(prices.problems())
                .extracting(Problem::kind)
                .containsExactly(ProblemKind.PACK_UNREADABLE, ProblemKind.DENSITY_MISSING);
    }
}
