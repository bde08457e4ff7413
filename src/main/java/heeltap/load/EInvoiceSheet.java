package heeltap.load;

import heeltap.source.Cell;
import heeltap.source.Place;
import heeltap.source.Row;
import heeltap.source.Sheet;
import heeltap.source.SheetFacts;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * An electronic invoice as rows, so that it is read as any other: a row a line, then one for each charge, the tax and the
 * total. A row's number is its place in that order.
 */
final class EInvoiceSheet implements Sheet {
    private static final List<Field> COLUMNS = List.of(
            Field.SUPPLIER,
            Field.INVOICE,
            Field.DATE,
            Field.KIND,
            Field.CURRENCY,
            Field.PRODUCT,
            Field.CODE,
            Field.PACK,
            Field.QUANTITY,
            Field.LINE_TOTAL,
            Field.DISCOUNT,
            Field.DEPOSIT);
    private final EInvoices.EInvoice invoice;
    private final SheetFacts facts;
    private final EInvoiceUnits units;

    EInvoiceSheet(EInvoices.EInvoice invoice, Place place, PackReader packs) {
        this.invoice = invoice;
        this.facts = new SheetFacts(place, "", "", false, List.of());
        this.units = new EInvoiceUnits(packs);
    }

    Layout layout() {
        Map<Field, Integer> columns = new EnumMap<>(Field.class);
        COLUMNS.forEach(field -> columns.put(field, columns.size()));
        return new Layout(facts.place(), 0, columns, Map.of(), Set.of(), List.of(), 0);
    }

    @Override
    public SheetFacts facts() {
        return facts;
    }

    @Override
    public void read(RowReader reader) {
        for (Row row : rows()) {
            if (!reader.take(row)) {
                return;
            }
        }
    }

    private List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        for (EInvoices.Line line : invoice.lines()) {
            List<Cell> cells = start(line.product());
            text(cells, Field.CODE, line.code());
            text(cells, Field.PACK, units.pack(line));
            number(cells, Field.QUANTITY, line.quantity());
            number(cells, Field.LINE_TOTAL, line.net());
            number(cells, Field.DISCOUNT, line.allowance());
            number(cells, Field.DEPOSIT, line.deposit());
            rows.add(new Row(rows.size() + 1, cells));
        }
        for (EInvoices.Charge charge : invoice.charges()) {
            add(rows, charge.deposit() ? "Deposit" : charge.isCharge() ? "Delivery" : "Discount", charge.amount());
        }
        if (invoice.tax() != null) {
            add(rows, "Tax", invoice.tax());
        }
        if (invoice.total() != null) {
            add(rows, "Total", invoice.total());
        }
        return rows;
    }

    private void add(List<Row> rows, String name, BigDecimal amount) {
        List<Cell> cells = start(name);
        number(cells, Field.LINE_TOTAL, amount);
        rows.add(new Row(rows.size() + 1, cells));
    }

    private List<Cell> start(String product) {
        List<Cell> cells = new ArrayList<>();
        text(cells, Field.SUPPLIER, invoice.supplier());
        text(cells, Field.INVOICE, invoice.number());
        if (invoice.date() != null) {
            cells.add(new Cell(
                    COLUMNS.indexOf(Field.DATE),
                    invoice.date().toString(),
                    null,
                    invoice.date().atStartOfDay()));
        }
        text(cells, Field.KIND, invoice.creditNote() ? "credit note" : "invoice");
        text(cells, Field.CURRENCY, invoice.currency());
        text(cells, Field.PRODUCT, product);
        return cells;
    }

    private static void text(List<Cell> cells, Field field, String text) {
        if (!text.isBlank()) {
            cells.add(Cell.text(COLUMNS.indexOf(field), text));
        }
    }

    private static void number(List<Cell> cells, Field field, BigDecimal number) {
        cells.add(new Cell(COLUMNS.indexOf(field), number.toPlainString(), number, null));
    }
}
