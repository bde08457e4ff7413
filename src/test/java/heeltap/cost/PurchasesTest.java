package heeltap.cost;

import static org.assertj.core.api.Assertions.assertThat;

import heeltap.BookBuilder;
import heeltap.match.NameBook;
import heeltap.quantity.Exact;
import heeltap.quantity.Measure;
import heeltap.quantity.Money;
import heeltap.record.Book;
import heeltap.record.Invoice;
import heeltap.record.NameRule.Where;
import heeltap.record.Setting;
import heeltap.source.Problem;
import heeltap.source.ProblemKind;
import heeltap.source.WithProblems;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PurchasesTest {
    private static BookBuilder bar() {
        return new BookBuilder()
                .ingredient("Gin", Measure.ML, cells -> cells.with("density", "0.95"))
                .ingredient("Honey", Measure.G, cells -> cells.with("density", "1.42"))
                .ingredient(
                        "Tonic",
                        Measure.ML,
                        cells -> cells.with("bottle", "200").pack("24", "200", Measure.ML))
                .ingredient(
                        "Lime", Measure.EACH, cells -> cells.with("each", "80").with("juice", "25"))
                .ingredient("Mint", Measure.G)
                .name("Tray of tonic", "Tonic", Where.INVOICES, "4")
                .name("Pallet fee", "(ignore)", Where.INVOICES, "1");
    }

    private static WithProblems<List<Purchase>> read(BookBuilder builder, Invoice... invoices) {
        Book book = builder.build();
        return Purchases.of(book, NameBook.of(book), List.of(invoices));
    }

    private static Purchase one(BookBuilder builder, InvoiceBuilder invoice) {
        return read(builder, invoice.build()).value().get(0);
    }

    @ParameterizedTest
    @CsvSource({
        "Gin, 6, 700, ML, 2, 8400",
        "Gin, 1, 950, G, 1, 1000",
        "Honey, 1, 1000, ML, 3, 4260",
        "Tonic, 24, 1, EACH, 1, 4800",
        "Tray of tonic, 6, 200, ML, 1, 4800",
        "Lime, 1, 5000, G, 1, 62.5",
        "Lime, 48, 1, EACH, 1, 48",
        "Lime, 1, 1000, ML, 1, 40",
        "Mint, 1, 250, G, 2, 500",
    })
    void packsComeToTheIngredientsMeasure(
            String product, String units, String size, Measure measure, String quantity, String base) {
        Purchase purchase = one(
                bar(),
                new InvoiceBuilder("1", "2026-10-05")
                        .line(product, BookBuilder.pack(units, size, measure), quantity, "10"));
        assertThat(purchase.baseQuantity()).isEqualTo(Exact.of(base));
        assertThat(purchase.unitCost()).isEqualTo(Money.of("10").dividedBy(Exact.of(base)));
    }

    @ParameterizedTest
    @CsvSource({
        "Mint, 1, 100, ML, DENSITY_MISSING, a density",
        "Mint, 10, 1, EACH, UNIT_UNKNOWN, Each g",
        "Gin, 12, 1, EACH, UNIT_UNKNOWN, Bottle ml",
    })
    void aPackThatDoesNotFitIsAFaultAndPricesNothing(
            String product, String units, String size, Measure measure, ProblemKind kind, String says) {
        WithProblems<List<Purchase>> read = read(
                bar(),
                new InvoiceBuilder("1", "2026-10-05")
                        .line(product, BookBuilder.pack(units, size, measure), "1", "10")
                        .build());
        assertThat(read.value().get(0).baseQuantity()).isNull();
        assertThat(read.value().get(0).unitCost()).isNull();
        assertThat(read.value().get(0).goods()).isEqualTo(Money.of("10"));
        assertThat(read.problems()).singleElement().satisfies(problem -> {
            assertThat(problem.kind()).isEqualTo(kind);
            assertThat(problem.reason()).contains(product, says);
            assertThat(problem.place().row()).isEqualTo(2);
        });
    }

    @Test
    void aMissingPackIsTheListPackButAMisprintIsNot() {
        WithProblems<List<Purchase>> read = read(
                bar(),
                new InvoiceBuilder("1", "2026-10-05")
                        .line("Tonic", null, "", "2", "30", null)
                        .line("Tonic", null, "BAG", "1", "15", null)
                        .line("Tonic", null, "12.0Z", "1", "15", null)
                        .line("Mint", null, "", "1", "5", null)
                        .build());
        assertThat(read.value())
                .extracting(Purchase::baseQuantity)
                .containsExactly(Exact.of("9600"), Exact.of("4800"), null, null);
        assertThat(read.problems())
                .extracting(Problem::kind, problem -> problem.place().row())
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(ProblemKind.PACK_UNREADABLE, 4),
                        org.assertj.core.groups.Tuple.tuple(ProblemKind.PACK_UNREADABLE, 5));
    }

    @Test
    void deliveryAndDiscountAreSharedByValueAndDepositsAreNoCost() {
        WithProblems<List<Purchase>> read = read(
                bar(),
                new InvoiceBuilder("1", "2026-10-05")
                        .discount("12")
                        .delivery("6")
                        .line("Gin", BookBuilder.pack("1", "700", Measure.ML), "1", "20")
                        .line("Unheard of", BookBuilder.pack("1", "700", Measure.ML), "1", "30")
                        .line("Pallet fee", null, "1", "10")
                        .line("Mint", BookBuilder.pack("1", "100", Measure.G), "-1", "-5")
                        .line("Lime", BookBuilder.pack("10", "1", Measure.EACH), "1", "0")
                        .build());
        assertThat(read.value())
                .extracting(Purchase::goods)
                .containsExactly(Money.of("16"), Money.of("24"), Money.of("8"), Money.of("-5"), Money.ZERO);
        assertThat(read.value())
                .extracting(Purchase::delivery)
                .containsExactly(Money.of("2"), Money.of("3"), Money.of("1"), Money.ZERO, Money.ZERO);
        assertThat(read.value()).extracting(Purchase::ingredient).containsExactly("Gin", null, null, "Mint", "Lime");
        assertThat(read.value()).extracting(Purchase::ignored).containsExactly(false, false, true, false, false);
        assertThat(read.value().get(0).unitCost()).isEqualTo(Money.of("18").dividedBy(Exact.of(700)));
    }

    @Test
    void chargesOnAnInvoiceOfFreeGoodsAreSharedAlikeAndSaidSo() {
        WithProblems<List<Purchase>> read = read(
                bar(),
                new InvoiceBuilder("1", "2026-10-05")
                        .delivery("6")
                        .line("Gin", BookBuilder.pack("1", "700", Measure.ML), "1", "0")
                        .line("Mint", BookBuilder.pack("1", "100", Measure.G), "1", "0")
                        .build());
        assertThat(read.value()).extracting(Purchase::delivery).containsExactly(Money.of("3"), Money.of("3"));
        assertThat(read.problems()).extracting(Problem::kind).containsExactly(ProblemKind.VALUE_DOUBTFUL);
    }

    @Test
    void aCreditNoteGivesItsDiscountBack() {
        Purchase purchase = one(
                bar(),
                new InvoiceBuilder("C1", "2026-10-09")
                        .creditNote()
                        .discount("-2")
                        .line("Gin", BookBuilder.pack("1", "700", Measure.ML), "-1", "-20"));
        assertThat(purchase.goods()).isEqualTo(Money.of("-18"));
        assertThat(purchase.baseQuantity()).isEqualTo(Exact.of("-700"));
        assertThat(purchase.unitCost()).isEqualTo(Money.of("18").dividedBy(Exact.of(700)));
        assertThat(purchase.isPriced()).isFalse();
    }

    /** Recoverable tax out of gross: HM Revenue & Customs, VAT fractions, gross 120, 117.50, 80 (inputs seen). */
    @ParameterizedTest
    @CsvSource({"120, 20, 100", "115, 15, 100", "117.50, 17.5, 100", "60, 20, 50", "105, 5, 100"})
    void taxIsTakenOutBySettingWhereNoneIsPrinted(String gross, String rate, String net) {
        BookBuilder builder = bar().set(Setting.INVOICE_TAX_PERCENT, Exact.of(rate));
        InvoiceBuilder invoice = new InvoiceBuilder("1", "2026-10-05")
                .pricesWithTax(null)
                .line("Gin", BookBuilder.pack("1", "700", Measure.ML), "1", gross);
        assertThat(one(builder, invoice).goods()).isEqualTo(Money.of(net));
    }

    @Test
    void printedTaxWinsOverTheSetting() {
        BookBuilder builder = bar().set(Setting.INVOICE_TAX_PERCENT, Exact.of("50"));
        InvoiceBuilder byLine = new InvoiceBuilder("1", "2026-10-05")
                .pricesWithTax("22")
                .delivery("12")
                .line("Gin", BookBuilder.pack("1", "700", Measure.ML), "", "1", "120", "20");
        InvoiceBuilder whole = new InvoiceBuilder("2", "2026-10-05")
                .pricesWithTax("22")
                .delivery("12")
                .line("Gin", BookBuilder.pack("1", "700", Measure.ML), "1", "120");
        assertThat(one(builder, byLine).cost()).isEqualTo(Money.of("110"));
        assertThat(one(builder, whole).cost()).isEqualTo(Money.of("110"));
        // nobody printed a tax on the delivery, so none is taken out of it
        InvoiceBuilder lineOnly = new InvoiceBuilder("3", "2026-10-05")
                .pricesWithTax("20")
                .delivery("12")
                .line("Gin", BookBuilder.pack("1", "700", Measure.ML), "", "1", "120", "20");
        assertThat(one(builder, lineOnly).cost()).isEqualTo(Money.of("112"));
    }

    @Test
    void taxOnTopOfPricesIsNoCost() {
        InvoiceBuilder invoice = new InvoiceBuilder("1", "2026-10-05")
                .line("Gin", BookBuilder.pack("1", "700", Measure.ML), "", "1", "100", "20");
        assertThat(one(bar(), invoice).cost()).isEqualTo(Money.of("100"));
    }

    @Test
    void pricesWithTaxOfAnUnknownRateAreSaidSo() {
        WithProblems<List<Purchase>> read = read(
                bar(),
                new InvoiceBuilder("1", "2026-10-05")
                        .pricesWithTax(null)
                        .line("Gin", BookBuilder.pack("1", "700", Measure.ML), "1", "100")
                        .build());
        assertThat(read.problems()).extracting(Problem::kind).containsExactly(ProblemKind.SETTING_MISSING);
        assertThat(read.value().get(0).goods()).isEqualTo(Money.of("100"));
    }

    @Property(tries = 200)
    void sharesAddUpToTheCharges(
            @ForAll @Size(min = 1, max = 8) List<@IntRange(min = -50, max = 500) Integer> cents,
            @ForAll @IntRange(max = 1000) int discount,
            @ForAll @IntRange(max = 1000) int delivery) {
        InvoiceBuilder invoice =
                new InvoiceBuilder("1", "2026-10-05").discount("" + discount).delivery("" + delivery);
        Money goods = Money.ZERO;
        for (int cent : cents) {
            invoice.line("Gin", BookBuilder.pack("1", "700", Measure.ML), "1", "" + cent);
            goods = goods.plus(Money.of("" + cent));
        }
        Money cost = read(bar(), invoice.build()).value().stream()
                .map(Purchase::cost)
                .reduce(Money.ZERO, Money::plus);
        assertThat(cost).isEqualTo(goods.minus(Money.of("" + discount)).plus(Money.of("" + delivery)));
    }
}
