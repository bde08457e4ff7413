package heeltap.load;

import heeltap.load.Column.Need;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** The files of a month, as blank ones are laid out; exports with other headings are understood too. */
public final class TemplateMonth {
    static final ColumnTable SALES = new ColumnTable(
            "sales",
            false,
            "What the till sold: one row a line of a ticket, or one row an item and day.",
            List.of(
                    Column.text("Item", "The drink; Item or Code is needed.").needs(Need.HEADING),
                    Column.text("Code", "The till's code for it."),
                    number("Quantity", "Units sold.").needs(Need.VALUE),
                    Column.of("Date", Column.Type.DATE, "Day of the sale, with or without the time."),
                    Column.of("Time", Column.Type.TIME, "Time of the sale."),
                    Column.text("Ticket", "Number of the ticket."),
                    money("Unit price", "Price of one."),
                    money("Gross", "Money before discount."),
                    money("Discount", "Taken off Gross."),
                    money("Net", "Money without tax, after discount."),
                    money("Tax", "Tax on the row."),
                    Column.choice("Kind", "What the row is.", "sale", "refund", "void", "complimentary")
                            .standing("sale")));
    static final ColumnTable INVOICES = new ColumnTable(
            "invoices",
            false,
            "What suppliers charged: one row a line of an invoice.",
            List.of(
                    Column.text("Supplier", "Who sent it."),
                    Column.text("Invoice", "Its number."),
                    Column.of("Date", Column.Type.DATE, "Its date."),
                    Column.text("Product", "As printed.").needs(Need.VALUE),
                    Column.of(
                            "Pack",
                            Column.Type.PACK,
                            "What one holds, such as 6 x 70cl; empty: the ingredient's List pack."),
                    number("Quantity", "Packs.").needs(Need.VALUE),
                    money("Unit price", "Of one pack; Unit price or Line total is needed.")
                            .needs(Need.HEADING),
                    money("Line total", "Of the line, after Discount."),
                    money("Discount", "Money off the line."),
                    money("Tax", "Tax on the line."),
                    Column.choice("Kind", "What the paper is.", "invoice", "credit note")
                            .standing("invoice"),
                    money("Deposit", "Returnable deposit beside the line."),
                    money("Delivery", "Charge on the invoice as a whole."),
                    money("Invoice total", "What the paper says is to pay, with tax.")));
    static final ColumnTable STOCK = new ColumnTable(
            "stock",
            false,
            "The count at the month's end; stock-opening is the one at its beginning.",
            List.of(
                    Column.text("Ingredient", "An ingredient or a preparation.").needs(Need.VALUE),
                    number("Count", "May have decimals, as 3.4 bottles.").needs(Need.VALUE),
                    Column.of(
                            "Unit",
                            Column.Type.UNIT,
                            "bottle, case, keg, ml, l, g, kg, each or weighed g; empty: bottles where Bottle ml is known."),
                    Column.text("Location", "Where it stands; rows of one ingredient add up.")));
    static final ColumnTable LOSSES = new ColumnTable(
            "losses",
            false,
            "What left without being sold, or came from elsewhere.",
            List.of(
                    Column.of("Date", Column.Type.DATE, "The day."),
                    Column.text("Item", "An ingredient, a preparation or a drink.")
                            .needs(Need.VALUE),
                    number("Amount", "How much.").needs(Need.VALUE),
                    Column.of("Unit", Column.Type.UNIT, "Empty: the ingredient's Measure, or a serve of a drink."),
                    Column.choice(
                            "Reason",
                            "Why.",
                            "spill",
                            "breakage",
                            "spoiled",
                            "returned",
                            "staff",
                            "complimentary",
                            "training",
                            "transfer in",
                            "transfer out")));
    static final ColumnTable PRICES = new ColumnTable(
            "prices",
            false,
            "The till's price list, for sales lines that carry only a code.",
            List.of(
                    Column.text("Code", "The till's code."),
                    Column.text("Item", "Its name.").needs(Need.HEADING),
                    money("Price", "As the guest reads it.")));

    public static final List<ColumnTable> ALL = List.of(SALES, INVOICES, STOCK, LOSSES, PRICES);

    private TemplateMonth() {}

    /** The fields that the sheet Columns may name. */
    static List<String> fields() {
        Stream<String> headings = ALL.stream()
                .flatMap(table -> table.columns().stream())
                .map(column -> column.heading().toLowerCase(Locale.ROOT));
        Stream<String> others = FileKind.fieldsByWord().keySet().stream().sorted();
        return Stream.of(headings, others, Stream.of(WideSheet.FIELD))
                .flatMap(words -> words)
                .distinct()
                .toList();
    }

    private static Column number(String heading, String explanation) {
        return Column.number(heading, "", ColumnBounds.ANY, explanation);
    }

    private static Column money(String heading, String explanation) {
        return Column.money(heading, ColumnBounds.ANY, explanation);
    }
}
