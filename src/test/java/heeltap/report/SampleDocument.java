package heeltap.report;

import heeltap.document.BarChart;
import heeltap.document.Block;
import heeltap.document.Block.TableView;
import heeltap.document.CellValue;
import heeltap.document.Column;
import heeltap.document.Document;
import heeltap.document.Finding;
import heeltap.document.Format;
import heeltap.document.LineChart;
import heeltap.document.ScatterChart;
import heeltap.document.ScatterChart.Cut;
import heeltap.document.ScatterChart.Kind;
import heeltap.document.ScatterChart.Point;
import heeltap.document.Section;
import heeltap.document.Table;
import heeltap.document.TableRow;
import heeltap.document.TableRow.Emphasis;
import heeltap.document.WorkbookSheet;
import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.NullMarked;

/** An invented bar's month with everything that makes a report hard: long names, other scripts, negatives, empty tables. */
@NullMarked
final class SampleDocument {
    static final List<String> DRINKS = List.of(
            "Harbour Sour",
            "Crème Brûlée Flip",
            "Ζέφυρος Spritz",
            "Северное сияние",
            "The Lighthouse Keeper's Very Long Goodbye, Large",
            "Kelp & Tonic",
            "=Salt Line",
            "Ñandú Punch",
            "Low Tide",
            "Slipway No. 4",
            "Gull",
            "Smørrebrød Mary",
            "Foghorn",
            "Brine Highball",
            "Anchor Watch",
            "Pilot Boat",
            "Storm Petrel",
            "Quay Mule",
            "Driftwood Old Fashioned",
            "Breakwater",
            "Tidal Pool",
            "Bosun's Cup",
            "Marram",
            "Sandbar Colada",
            "Spindrift",
            "Zero-Proof Samphire Cooler");

    private static final Kind[] KINDS = {
        new Kind(0, "star"), new Kind(1, "plowhorse"), new Kind(2, "puzzle"), new Kind(3, "dog")
    };

    private SampleDocument() {}

    static Document english() {
        return of(Locale.forLanguageTag("en"), Currency.getInstance("EUR"));
    }

    static Document of(Locale language, Currency currency) {
        Table drinks = drinks();
        Table invoices = lines();
        Table aside = new Table(
                "set_aside",
                "Set aside",
                "",
                List.of(
                        Column.of("file", "File", "Path from the bar folder.", Format.TEXT),
                        Column.of("row", "Row", "As the spreadsheet counts.", Format.COUNT)),
                List.of(),
                Optional.empty());
        ScatterChart popularity = chart("all-cost", "Cost against popularity", drinks, true);
        ScatterChart margin = chart("all-margin", "Margin against popularity", drinks, false);
        BarChart bars =
                new BarChart("drivers", "What moved the margin", "effect on margin, EUR", Format.MONEY, movement());
        LineChart line = new LineChart(
                "sales",
                "Net sales by month",
                "net sales, EUR",
                Format.MONEY,
                IntStream.rangeClosed(1, 10)
                        .mapToObj(i -> "2026-" + (i < 10 ? "0" : "") + i)
                        .toList(),
                List.of(new LineChart.Line("this year", months(0)), new LineChart.Line("last year", months(1))));
        return new Document(
                "The Salt & Anchor, Hôtel de la Mer",
                YearMonth.of(2026, 10),
                language,
                currency,
                "Review of October 2026",
                List.of(
                        first(),
                        new Section(
                                "menu",
                                "Cost, margin and popularity",
                                true,
                                List.of(
                                        new Block.Paragraph(
                                                "Each mark is a drink. To the right of the upright line it sells more than its"
                                                        + " share; below the level line its ingredients cost less than the target."),
                                        popularity,
                                        margin)),
                        new Section(
                                "drinks",
                                "Drinks",
                                true,
                                List.of(
                                        new TableView(
                                                drinks,
                                                drinks.columns().stream()
                                                        .map(Column::key)
                                                        .toList()),
                                        new Block.Heading("Movement"),
                                        bars,
                                        line)),
                        new Section(
                                "stock",
                                "Invoice lines",
                                true,
                                List.of(new TableView(
                                        invoices,
                                        List.of("row", "date", "product", "quantity", "goods", "unit_cost")))),
                        new Section(
                                "aside",
                                "Set aside",
                                false,
                                List.of(
                                        new TableView(aside, List.of("file", "row")),
                                        new Block.Caution(
                                                "Prices are suggestions. Local law on alcohol, minimum prices and allergens comes"
                                                        + " first; ask the authority where in doubt.")))),
                List.of(
                        new WorkbookSheet("Summary", first().blocks()),
                        new WorkbookSheet("Drinks", List.of(new TableView(drinks, List.of()), popularity, margin)),
                        new WorkbookSheet("Movement", List.of(bars, line)),
                        new WorkbookSheet("What if", List.of(new TableView(whatIf(), List.of()))),
                        new WorkbookSheet("Invoice lines", List.of(new TableView(invoices, List.of()))),
                        new WorkbookSheet("Set aside", List.of(new TableView(aside, List.of())))),
                List.of(drinks, invoices, aside));
    }

    private static Section first() {
        return new Section(
                "findings",
                "The month in short",
                false,
                List.of(
                        new Block.Figures(List.of(
                                figure("Net sales", "48250.40", Format.MONEY, "+3.2 % on September"),
                                figure("Cost of goods", "10422.085", Format.MONEY, "+1.1 % on September"),
                                new Block.Figure(
                                        "Cost percent",
                                        CellValue.of(Exact.of("21.6")),
                                        Format.PERCENT,
                                        "\u22120.4 points on September"),
                                figure("Margin", "37828.315", Format.MONEY, "+3.8 % on September"),
                                figure("Unexplained stock", "-412.5", Format.MONEY, ""))),
                        new Block.Heading("Findings"),
                        new Block.Findings(List.of(
                                new Finding(
                                        "Kelp & Tonic sells well but its gin rose by 14 % since September; at the present price each"
                                                + " serve brings 0.42 less.",
                                        Money.of("-412.50"), "menu"),
                                new Finding("Harbour Sour could carry 50 cents more.", Money.of("286.2"), "drinks"),
                                new Finding("Two invoices do not add up.", Money.of("35.99"), "stock"),
                                new Finding("One till name is unknown.", null, "aside"))),
                        new Block.Heading("To decide today"),
                        new Block.Points(List.of(
                                "Raise Harbour Sour to 12.50 from Monday, or say why not.",
                                "Ask the supplier about the difference on invoice 4711.")),
                        new Block.Caution(
                                "12 rows of the till export were set aside; they hold 1.4 % of the sales money.")));
    }

    private static Block.Figure figure(String name, String amount, Format format, String change) {
        return new Block.Figure(name, CellValue.of(Money.of(amount)), format, change);
    }

    /** Rows whose formulas can be checked against their values. */
    static Table drinks() {
        List<TableRow> rows = new ArrayList<>();
        Money sales = Money.ZERO;
        Money margins = Money.ZERO;
        Exact sold = Exact.ZERO;
        for (int i = 0; i < DRINKS.size(); i++) {
            boolean unknown = i == 10;
            Exact units = Exact.of(i == 20 ? 0 : 17 + (i * 37L) % 211);
            Money price = Money.of("9.50").plus(Money.of("0.25").times(Exact.of((i * 7L) % 23)));
            Money cost = Money.of("1.4375").plus(Money.of("0.137").times(Exact.of((i * 11L) % 17)));
            Money net = price.times(units).withoutTax(Exact.of(19));
            Money margin = price.withoutTax(Exact.of(19)).minus(cost);
            Money total = margin.times(units);
            List<CellValue> cells = new ArrayList<>();
            cells.add(CellValue.of(DRINKS.get(i)));
            cells.add(CellValue.of(i % 2 == 0 ? "Sours and long drinks" : "Stirred"));
            cells.add(CellValue.of(units));
            cells.add(CellValue.of(net));
            cells.add(units.isZero() ? CellValue.BLANK : CellValue.of(net.dividedBy(units)));
            cells.add(unknown ? CellValue.BLANK : CellValue.of(cost));
            boolean priced = !unknown && !units.isZero();
            cells.add(
                    priced ? CellValue.of(cost.dividedBy(net.dividedBy(units)).times(Exact.HUNDRED)) : CellValue.BLANK);
            cells.add(priced ? CellValue.of(margin) : CellValue.BLANK);
            cells.add(priced ? CellValue.of(total) : CellValue.BLANK);
            cells.add(CellValue.of(kind(i).word()));
            cells.add(CellValue.of(!unknown));
            cells.add(
                    unknown
                            ? CellValue.of("-no cost: the spec names an ingredient that has no price anywhere")
                            : CellValue.BLANK);
            rows.add(new TableRow(cells, unknown ? Emphasis.FAINT : i == 5 ? Emphasis.MARKED : Emphasis.PLAIN));
            sales = sales.plus(net);
            sold = sold.plus(units);
            margins = priced ? margins.plus(total) : margins;
        }
        List<CellValue> total = new ArrayList<>();
        total.add(CellValue.of("Total"));
        total.add(CellValue.BLANK);
        total.add(CellValue.of(sold));
        total.add(CellValue.of(sales));
        total.add(CellValue.of(sales.dividedBy(sold)));
        for (int i = 0; i < 3; i++) {
            total.add(CellValue.BLANK);
        }
        total.add(CellValue.of(margins));
        for (int i = 0; i < 3; i++) {
            total.add(CellValue.BLANK);
        }
        return new Table(
                "drinks",
                "Drinks",
                "Without tax. Marked rows are worth a second look.",
                drinkColumns(),
                rows,
                Optional.of(new TableRow(total, Emphasis.PLAIN)));
    }

    /** A table of the workbook alone, with a column to type in. */
    private static Table whatIf() {
        List<TableRow> rows = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            Exact price = Exact.of("9.5").plus(Exact.of(i));
            rows.add(new TableRow(
                    List.of(
                            CellValue.of(DRINKS.get(i)),
                            CellValue.of(Money.of("2.345")),
                            CellValue.of(new Money(price)),
                            CellValue.of(new Money(price.minus(Exact.of("2.345"))))),
                    Emphasis.PLAIN));
        }
        return new Table(
                "what_if",
                "What if",
                "Type other prices into the framed cells.",
                List.of(
                        Column.of("drink", "Drink", "", Format.TEXT),
                        Column.of("cost", "Cost", "", Format.UNIT_MONEY),
                        Column.of("price", "Price to try", "Without tax.", Format.UNIT_MONEY)
                                .asInput(Column.Input.FROM_ZERO),
                        Column.of("margin", "Margin", "Price less cost.", Format.UNIT_MONEY)
                                .withFormula("{price}-{cost}")),
                rows,
                Optional.empty());
    }

    private static List<Column> drinkColumns() {
        return List.of(
                Column.of("drink", "Drink", "As the book names it.", Format.TEXT),
                Column.of("category", "Category", "The drink's category in the book.", Format.TEXT),
                Column.of("sold", "Sold", "Paid units in the month.", Format.COUNT)
                        .withTotal("SUM({sold:all})"),
                Column.of("net_sales", "Net sales", "Sales without tax.", Format.MONEY)
                        .withTotal("SUM({net_sales:all})"),
                Column.of("net_price", "Net price", "Net sales over paid units.", Format.UNIT_MONEY)
                        .withFormula("IF({sold}=0,\"\",{net_sales}/{sold})")
                        .withTotal("IF({sold}=0,\"\",{net_sales}/{sold})"),
                Column.of("cost", "Cost", "Ingredients of one serve.", Format.UNIT_MONEY),
                Column.of("cost_percent", "Cost percent", "Cost over net price.", Format.PERCENT)
                        .withFormula("IF({net_price}=0,\"\",100*{cost}/{net_price})"),
                Column.of("margin", "Margin", "Net price less cost.", Format.UNIT_MONEY)
                        .withFormula("{net_price}-{cost}"),
                Column.of("total_margin", "Total margin", "Margin times paid units.", Format.MONEY)
                        .withFormula("{margin}*{sold}")
                        .withTotal("SUMIF({included:all},{yes},{total_margin:all})"),
                Column.of("margin_class", "Class", "After Kasavana and Smith.", Format.TEXT),
                Column.of("included", "Included", "Whether it counts in sums.", Format.YES_NO),
                Column.of("note", "Note", "What to know about the row.", Format.TEXT));
    }

    private static Table lines() {
        List<TableRow> rows = new ArrayList<>();
        Money sum = Money.ZERO;
        for (int i = 0; i < 150; i++) {
            Money goods = i % 13 == 5 ? Money.of("-12.345") : Money.of("3.335").times(Exact.of(i + 1));
            sum = sum.plus(goods);
            rows.add(new TableRow(
                    List.of(
                            CellValue.of(i + 2),
                            CellValue.of(LocalDate.of(2026, 10, 1).plusDays(i % 31)),
                            CellValue.of("Invented product " + i
                                    + (i % 10 == 3
                                            ? " in a box of twelve, returnable, from the" + " other side of the bay"
                                            : "")),
                            CellValue.of(Exact.of(i % 7 + 1).dividedBy(Exact.of(2))),
                            CellValue.of(goods),
                            CellValue.of(Money.of("0.0123456").times(Exact.of(i + 1)))),
                    Emphasis.PLAIN));
        }
        return new Table(
                "invoice_lines",
                "Invoice lines",
                "All lines of the month.",
                List.of(
                        Column.of("row", "Row", "As the spreadsheet counts.", Format.COUNT),
                        Column.of("date", "Date", "Of the invoice.", Format.DATE),
                        Column.of("product", "Product", "As printed.", Format.TEXT),
                        Column.of("quantity", "Quantity", "Packs.", Format.AMOUNT),
                        Column.of("goods", "Goods", "Without tax and delivery.", Format.MONEY)
                                .withTotal("SUM({goods:all})"),
                        Column.of(
                                "unit_cost",
                                "Cost of one ml, g or piece",
                                "With its share of delivery.",
                                Format.FINE_MONEY)),
                rows,
                Optional.of(new TableRow(
                        List.of(
                                CellValue.BLANK,
                                CellValue.BLANK,
                                CellValue.of("Total"),
                                CellValue.BLANK,
                                CellValue.of(sum),
                                CellValue.BLANK),
                        Emphasis.PLAIN)));
    }

    private static Kind kind(int i) {
        return KINDS[(i * 5) % 4];
    }

    private static ScatterChart chart(String name, String title, Table drinks, boolean cost) {
        List<Point> points = new ArrayList<>();
        String yKey = cost ? "cost_percent" : "margin";
        for (int i = 0; i < drinks.rows().size(); i++) {
            if (drinks.cell(i, yKey) instanceof CellValue.Blank) {
                continue;
            }
            points.add(new Point(
                    DRINKS.get(i),
                    number(drinks.cell(i, "sold")),
                    number(drinks.cell(i, yKey)),
                    kind(i),
                    number(drinks.cell(i, "total_margin")),
                    i % 6 != 2));
        }
        return new ScatterChart(
                name,
                title,
                "Popular means seven tenths of an equal share.",
                "paid units in the month",
                cost ? "cost in percent of net price" : "margin of one serve, EUR",
                Format.COUNT,
                cost ? Format.PERCENT : Format.UNIT_MONEY,
                points,
                List.of(new Cut(Exact.of("84.2"), "70 % of an equal share: 84.2")),
                List.of(
                        cost
                                ? new Cut(Exact.of("23.5"), "target 23.5 %")
                                : new Cut(Exact.of("7.9"), "weighted average margin 7.90")),
                cost
                        ? List.of("marginal", "marginal", "loser", "winner")
                        : List.of("puzzle", "star", "dog", "plowhorse"),
                "drinks.sold",
                "drinks." + yKey,
                "drinks.drink");
    }

    static Exact number(CellValue value) {
        return value instanceof CellValue.Sum sum ? sum.money().amount() : ((CellValue.Figure) value).number();
    }

    private static List<BarChart.Bar> movement() {
        return List.of(
                new BarChart.Bar("Price of gin", Exact.of("-612.4")),
                new BarChart.Bar("More guests", Exact.of("1480")),
                new BarChart.Bar("Menu mix: long drinks instead of stirred ones", Exact.of("-212.75")),
                new BarChart.Bar("Own price changes", Exact.of("330.1")));
    }

    /** With a gap in April. */
    private static List<Optional<Exact>> months(int shift) {
        return IntStream.rangeClosed(1, 10)
                .mapToObj(i ->
                        i == 4 ? Optional.<Exact>empty() : Optional.of(Exact.of(40000 + ((i + shift) * 7919L) % 9000)))
                .toList();
    }
}
