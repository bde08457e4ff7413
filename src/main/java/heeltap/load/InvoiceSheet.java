package heeltap.load;

import heeltap.record.FileAccount;
import heeltap.record.KnownNames;
import heeltap.record.NameRule;
import heeltap.source.Cell;
import heeltap.source.ProblemKind;
import heeltap.source.Row;
import heeltap.source.Sheet;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Sorts the rows of one sheet of invoices to their invoices; the invoices themselves are made when all are read. */
final class InvoiceSheet {
    private final Sheet sheet;
    private final Layout layout;
    private final boolean withTax;
    private final Reading reading;
    private final MonthContext context;
    private final RowsOut out;
    private final Fields fields;
    private final ByBottle bottles;
    private final Tally tally = new Tally();
    private InvoiceHeader header = InvoiceHeader.NONE;
    private String supplier = "";
    private String number = "";
    private String day = "";
    private int block;

    /** Takes the rows by invoice. */
    interface Rows {
        void take(InvoiceKey key, InvoiceRow row, InvoiceHeader header, Reading.@Nullable Moment date);
    }

    /**
     * Which rows are of one invoice.
     *
     * @param block tells invoices without a number apart: the sheet and the block of lines in it
     */
    record InvoiceKey(String supplier, String number, String block) {}

    /** @param withTax whether its prices include tax */
    InvoiceSheet(Sheet sheet, Layout layout, boolean withTax, MonthContext context, RowsOut out) {
        this.sheet = sheet;
        this.withTax = withTax;
        this.layout = layout;
        this.context = context;
        this.out = out;
        this.reading = Evidence.read(sheet, layout, context, out.log());
        this.fields = new Fields(layout);
        this.bottles = new ByBottle(layout);
    }

    Tally tally() {
        return tally;
    }

    boolean isWithTax() {
        return withTax;
    }

    Layout layout() {
        return layout;
    }

    void read(Rows rows) {
        for (Row row : layout.above()) {
            InvoiceHeader said = with(header, row);
            header = said == null ? header : said;
        }
        sheet.read(row -> {
            if (row.number() > layout.headingRow() && !row.isBlank()) {
                fields.load(row);
                tally.row();
                take(row, rows);
            }
            return true;
        });
    }

    private void take(Row row, Rows rows) {
        if (layout.isHeading(row)) {
            ignore();
            return;
        }
        String product = fields.text(Field.PRODUCT);
        boolean numbers = reading.number(fields, Field.QUANTITY) != null
                || reading.number(fields, Field.UNIT_PRICE) != null
                || reading.number(fields, Field.LINE_TOTAL) != null;
        InvoiceHeader said = numbers && !product.isEmpty() && !isLabel(row) ? null : with(header, row);
        if (said != null) {
            if (!said.number().equals(header.number())) {
                said = restart(row);
            }
            header = said;
            ignore();
            return;
        }
        if (row.cells().size() == 1 && !numbers) {
            ignore();
            return;
        }
        record(row, product, rows);
    }

    private @Nullable InvoiceHeader with(InvoiceHeader before, Row row) {
        Decimals style = reading.style(Field.LINE_TOTAL);
        return before.with(
                row, context.language(), style == null ? Decimals.of(context.language()) : style, context.month());
    }

    /** {@code Invoice no:} or {@code Invoice no} in the first cell is no product, whatever numbers stand beside it. */
    private static boolean isLabel(Row row) {
        String first = TextFold.trim(row.cells().get(0).text());
        return InvoiceRow.Role.of(first) == InvoiceRow.Role.LINE
                && (first.endsWith(":") || InvoiceHeader.isLabel(first));
    }

    /** Another number opens another invoice: only the supplier and the currency stay. */
    private InvoiceHeader restart(Row row) {
        block++;
        InvoiceHeader fresh = new InvoiceHeader(header.supplier(), "", null, header.currency(), false, null);
        InvoiceHeader said = with(fresh, row);
        return said == null ? fresh : said;
    }

    private void record(Row row, String product, Rows rows) {
        KnownNames.Answer answer = product.isEmpty()
                ? KnownNames.Answer.UNKNOWN
                : context.names()
                        .ask(NameRule.Where.INVOICES, product, fields.text(Field.CODE))
                        .answer();
        String name = product.isEmpty() ? label(row) : product;
        boolean mayCharge = answer == KnownNames.Answer.UNKNOWN || !fields.has(Field.QUANTITY);
        InvoiceRow.Role role = mayCharge ? InvoiceRow.Role.of(name) : InvoiceRow.Role.LINE;
        String misfit = role == InvoiceRow.Role.LINE ? reading.misfit(row, layout) : null;
        if (misfit != null) {
            reject(row, null, ProblemKind.VALUE_DOUBTFUL, misfit);
            return;
        }
        InvoiceRow read = read(row, role, name);
        if (read == null) {
            return;
        }
        if (role == InvoiceRow.Role.LINE && product.isEmpty()) {
            reject(row, Field.PRODUCT, ProblemKind.VALUE_MISSING, "The row names no product.");
            return;
        }
        Cell date = fields.find(Field.DATE);
        Reading.Moment moment = date == null ? null : reading.moment(date);
        if (date != null && moment == null && role == InvoiceRow.Role.LINE) {
            reject(row, Field.DATE, ProblemKind.VALUE_INVALID, "The date cannot be read.");
            return;
        }
        rows.take(key(role), read, header, moment);
    }

    private static String label(Row row) {
        for (Cell cell : row.cells()) {
            if (cell.number() == null && NumberText.readings(cell.text()) == NumberText.Readings.NONE) {
                return TextFold.trim(cell.text());
            }
        }
        return "";
    }

    /** Supplier and number stand in the row, else above it in their columns, else in the header. */
    private InvoiceKey key(InvoiceRow.Role role) {
        String rowSupplier = fields.text(Field.SUPPLIER);
        String rowNumber = fields.text(Field.INVOICE);
        boolean named = role != InvoiceRow.Role.LINE;
        if (!rowNumber.isEmpty() && !(named && InvoiceRow.Role.of(rowNumber) == role)) {
            number = rowNumber;
        } else if (!layout.has(Field.INVOICE)) {
            number = header.number();
        }
        if (!rowSupplier.isEmpty() && !(named && InvoiceRow.Role.of(rowSupplier) == role)) {
            supplier = rowSupplier;
        } else if (!layout.has(Field.SUPPLIER)) {
            supplier = header.supplier();
        }
        // without a number the date tells invoices of one supplier apart
        day = fields.has(Field.DATE) ? fields.text(Field.DATE) : day;
        String place = number.isEmpty() ? layout.sheet() + "#" + block + "#" + day : "";
        return new InvoiceKey(supplier, number, place);
    }

    /** The row with its numbers; null where one cannot be read, which sets a line aside. */
    private @Nullable InvoiceRow read(Row row, InvoiceRow.Role role, String name) {
        Map<Field, BigDecimal> numbers = new EnumMap<>(Field.class);
        BigDecimal percent = null;
        for (Field field : layout.columns().keySet()) {
            Cell cell = field.isNumber() ? fields.find(field) : null;
            if (cell == null) {
                continue;
            }
            boolean inPercent = field == Field.DISCOUNT && cell.text().indexOf('%') >= 0;
            BigDecimal value =
                    field == Field.TAX_RATE || inPercent ? reading.percent(cell, field) : reading.number(cell, field);
            if (value == null && (role == InvoiceRow.Role.LINE || field == Field.LINE_TOTAL)) {
                reject(row, field, ProblemKind.VALUE_INVALID, "The " + field.word() + " cannot be read.");
                return null;
            }
            if (inPercent) {
                percent = value;
            } else if (value != null) {
                numbers.put(field, value);
            }
        }
        boolean line = role == InvoiceRow.Role.LINE;
        String pack = fields.text(Field.PACK);
        if (line && bottles.isAny()) {
            pack = bottles.settle(numbers, pack, context.packs());
        }
        if (pack == null) {
            reject(
                    row,
                    Field.PACK,
                    ProblemKind.VALUE_MISSING,
                    "The price is by the bottle, but no pack says how many bottles one holds.",
                    null);
            return null;
        }
        if (line && !numbers.containsKey(Field.QUANTITY)) {
            reject(row, Field.QUANTITY, ProblemKind.VALUE_MISSING, "The quantity is missing.");
            return null;
        }
        boolean money = numbers.containsKey(Field.UNIT_PRICE) || numbers.containsKey(Field.LINE_TOTAL);
        if (line && !money && !RowWords.is("free kind", fields.text(Field.KIND))) {
            reject(
                    row,
                    Field.UNIT_PRICE,
                    ProblemKind.VALUE_MISSING,
                    "The row has neither a unit price nor a line total.");
            return null;
        }
        return new InvoiceRow(
                this,
                row,
                role,
                name,
                fields.text(Field.CODE),
                pack,
                fields.text(Field.KIND),
                currency(),
                numbers,
                percent);
    }

    /** The currency of its own column, else the one written beside the row's money. */
    private String currency() {
        if (layout.has(Field.CURRENCY)) {
            return fields.text(Field.CURRENCY);
        }
        String total = CurrencyMarks.in(fields.text(Field.LINE_TOTAL));
        return total.isEmpty() ? CurrencyMarks.in(fields.text(Field.UNIT_PRICE)) : total;
    }

    private void ignore() {
        tally.fate(Tally.Fate.IGNORED, null, null);
    }

    private void reject(Row row, @Nullable Field field, ProblemKind kind, String reason) {
        BigDecimal quantity = reading.number(fields, Field.QUANTITY);
        BigDecimal total = reading.number(fields, Field.LINE_TOTAL);
        BigDecimal price = reading.number(fields, Field.UNIT_PRICE);
        BigDecimal money = total != null || price == null || quantity == null ? total : price.multiply(quantity);
        reject(row, field, kind, reason, money);
    }

    private void reject(Row row, @Nullable Field field, ProblemKind kind, String reason, @Nullable BigDecimal money) {
        BigDecimal quantity = reading.number(fields, Field.QUANTITY);
        tally.in(quantity, money);
        tally.fate(Tally.Fate.SET_ASIDE, quantity, money);
        out.setAside(
                field == null ? layout.sheet().withRow(row.number()) : layout.cell(field, row.number()),
                kind,
                reason,
                RowsOut.text(row),
                quantity,
                money,
                List.of());
    }

    FileAccount account(@Nullable BigDecimal printed) {
        return tally.account(
                sheet.facts(),
                FileKind.INVOICES.word(),
                layout.headingRow(),
                reading.datesWord(),
                reading.decimalsWord(),
                true,
                true,
                printed);
    }
}
