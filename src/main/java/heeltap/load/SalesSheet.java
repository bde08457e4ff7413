package heeltap.load;

import heeltap.record.FileAccount;
import heeltap.record.KnownNames;
import heeltap.record.NameRule;
import heeltap.record.SaleKind;
import heeltap.record.SaleTotal;
import heeltap.source.Cell;
import heeltap.source.ProblemKind;
import heeltap.source.Row;
import heeltap.source.Sheet;
import java.math.BigDecimal;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Reads one sheet of sales, adding its rows up while they pass. */
final class SalesSheet {
    private static final Field[] SUMMED = {Field.QUANTITY, Field.GROSS, Field.DISCOUNT, Field.NET, Field.TAX};

    private final Sheet sheet;
    private final Layout layout;
    private final Reading reading;
    private final MonthContext context;
    private final RowsOut out;
    private final PriceList prices;
    private final @Nullable SaleKind given;
    private final Fields fields;
    private final SaleRow sale;
    private final Tally tally = new Tally();
    private final PrintedTotals totals;
    private final Map<String, Map<String, Entry>> entries = new HashMap<>();
    private final RepeatedRows own = new RepeatedRows();
    private final Voids voids;
    private @Nullable RepeatedRows earlier;
    private boolean tracked;
    private boolean allRepeated;
    private boolean anyMoney;
    private long digest;

    /** What is known of one name and code. */
    private static final class Entry {
        private final String item;
        private final String code;
        private final KnownNames.Verdict verdict;
        private final SaleSums sums;

        Entry(String item, String code, KnownNames.Verdict verdict) {
            this.item = item;
            this.code = code;
            this.verdict = verdict;
            this.sums = new SaleSums(item, code);
        }
    }

    /** @param given the kind of all rows of a sheet of returns; null for other sheets */
    SalesSheet(
            Sheet sheet, Layout layout, MonthContext context, RowsOut out, PriceList prices, @Nullable SaleKind given) {
        this.sheet = sheet;
        this.layout = layout;
        this.context = context;
        this.out = out;
        this.prices = prices;
        this.given = given;
        this.reading = Evidence.read(sheet, layout, context, out.log());
        this.fields = new Fields(layout);
        this.sale = new SaleRow(layout, reading, fields, prices, context.settings());
        this.totals = new PrintedTotals(layout, reading, SUMMED);
        this.voids = new Voids(layout);
    }

    /** @param earlierRows of sheets read before; null for none */
    void read(@Nullable RepeatedRows earlierRows, boolean repeatsAll) {
        earlier = earlierRows;
        tracked = earlierRows != null;
        allRepeated = repeatsAll;
        if (reading.hasVoids()) {
            findVoids();
        }
        sheet.read(row -> {
            if (row.number() > layout.headingRow() && !row.isBlank()) {
                take(row);
                if ((tally.rows() & 0x3FFF) == 0) {
                    context.progress().rows(tally.rows());
                }
            }
            return true;
        });
        tellMoney();
    }

    private void findVoids() {
        for (boolean counting : new boolean[] {false, true}) {
            sheet.read(row -> {
                if (row.number() > layout.headingRow() && !row.isBlank()) {
                    fields.load(row);
                    sale.read(given, fields.text(Field.CODE));
                    voids.see(fields, sale, counting);
                }
                return true;
            });
        }
        voids.decide(layout, out.log());
    }

    private void take(Row row) {
        fields.load(row);
        tally.row();
        Entry entry = entry(fields.text(Field.ITEM), fields.text(Field.CODE));
        boolean known = entry != null && entry.verdict.answer() != KnownNames.Answer.UNKNOWN;
        if (!known && isNoRecord(row, entry)) {
            tally.fate(Tally.Fate.IGNORED, null, null);
            return;
        }
        sale.read(given, entry == null ? "" : entry.code);
        totals.add(fields);
        tally.in(sale.quantity, sale.money);
        anyMoney |= sale.money != null;
        if (entry == null) {
            setAside(row, ProblemKind.VALUE_MISSING, null, "The row names no item.", RowsOut.text(row), List.of());
        } else if (sale.flaw != null) {
            SaleRow.Flaw flaw = sale.flaw;
            setAside(row, flaw.kind(), flaw.field(), flaw.reason(), RowsOut.text(row), List.of());
        } else {
            settle(row, entry);
        }
    }

    /** Repeated headings, section rows and totals carry no sale of their own. */
    private boolean isNoRecord(Row row, @Nullable Entry entry) {
        if (layout.isHeading(row)) {
            return true;
        }
        Field name = layout.has(Field.ITEM) ? Field.ITEM : Field.CODE;
        if (totals.isTotal(row, fields, name)) {
            totals.total(row, fields, name);
            return true;
        }
        if (row.cells().size() == 1
                && layout.columns().size() > 1
                && isText(row.cells().get(0))) {
            totals.section(row.cells().get(0).text());
            return true;
        }
        return entry == null && row.cells().stream().noneMatch(cell -> isMapped(cell.column()));
    }

    private boolean isMapped(int column) {
        return layout.columns().containsValue(column);
    }

    private static boolean isText(Cell cell) {
        return cell.number() == null && NumberText.readings(cell.text()) == NumberText.Readings.NONE;
    }

    private void settle(Row row, Entry entry) {
        YearMonth month = context.month();
        boolean outside = sale.day != null && !YearMonth.from(sale.day).equals(month);
        if (outside) {
            setAside(
                    row,
                    ProblemKind.DATE_OUTSIDE,
                    Field.DATE,
                    "The row belongs to another month than " + month + ".",
                    RowsOut.text(row),
                    List.of());
            return;
        }
        if (isRepeated()) {
            setAside(
                    row,
                    ProblemKind.ROW_REPEATED,
                    null,
                    "The row repeats one of another file of this month.",
                    RowsOut.text(row),
                    List.of());
        } else if (entry.verdict.answer() == KnownNames.Answer.IGNORED
                || sale.kind == SaleKind.VOID
                || voids.cancels(fields, sale)) {
            tally.fate(Tally.Fate.IGNORED, sale.quantity, sale.money);
        } else if (entry.verdict.answer() == KnownNames.Answer.UNKNOWN) {
            String name = entry.item.isEmpty() ? entry.code : entry.item;
            Field field = fields.has(Field.ITEM) ? Field.ITEM : Field.CODE;
            setAside(row, ProblemKind.NAME_UNKNOWN, field, "The name is not known.", name, entry.verdict.nearest());
        } else {
            use(row, entry);
        }
        if (sale.kind == SaleKind.VOID) {
            totals.addVoid(fields);
        }
    }

    private void use(Row row, Entry entry) {
        BigDecimal quantity = Objects.requireNonNull(sale.quantity);
        BigDecimal net = sale.net;
        if (sale.kind == SaleKind.REFUND) {
            quantity = quantity.abs();
            net = net == null ? null : net.abs();
        }
        entry.sums.add(sale.day, sale.kind, quantity, net, sale.rate, row.number());
        tally.fate(Tally.Fate.USED, sale.quantity, sale.money);
    }

    /** By ticket, time and item; without tickets a sheet repeats another only as a whole. */
    private boolean isRepeated() {
        if (!tracked) {
            return false;
        }
        String ticket = fields.text(Field.TICKET);
        long hash = RepeatedRows.hash(RepeatedRows.hash(0, fields.text(Field.ITEM)), fields.text(Field.CODE));
        if (sale.moment != null) {
            hash = RepeatedRows.hash(hash, sale.moment.date().toEpochDay());
            hash = RepeatedRows.hash(
                    hash, sale.moment.time() == null ? -1 : sale.moment.time().toSecondOfDay());
        }
        digest += rowHash(hash, ticket);
        if (allRepeated) {
            return true;
        }
        if (ticket.isEmpty()) {
            return false;
        }
        hash = RepeatedRows.hash(hash, ticket);
        own.add(hash);
        return earlier != null && earlier.contains(hash);
    }

    private long rowHash(long hash, String ticket) {
        long row = RepeatedRows.hash(hash, ticket);
        row = RepeatedRows.hash(
                row,
                sale.quantity == null ? 0 : sale.quantity.stripTrailingZeros().hashCode());
        row = RepeatedRows.hash(
                row, sale.money == null ? 0 : sale.money.stripTrailingZeros().hashCode());
        return RepeatedRows.hash(row, sale.kind.name().length());
    }

    private void setAside(
            Row row, ProblemKind kind, @Nullable Field field, String reason, String text, List<String> nearest) {
        tally.fate(Tally.Fate.SET_ASIDE, sale.quantity, sale.money);
        out.setAside(
                field == null ? layout.sheet().withRow(row.number()) : layout.cell(field, row.number()),
                kind,
                reason,
                text,
                sale.quantity,
                sale.money,
                nearest);
    }

    private @Nullable Entry entry(String item, String code) {
        if (item.isEmpty() && code.isEmpty()) {
            return null;
        }
        Map<String, Entry> byCode = entries.get(item);
        Entry entry = byCode == null ? null : byCode.get(code);
        if (entry == null) {
            String name = item.isEmpty() ? prices.name(code) : item;
            entry = new Entry(name, code, context.names().ask(NameRule.Where.SALES, name, code));
            entries.computeIfAbsent(item, k -> new HashMap<>()).put(code, entry);
        }
        return entry;
    }

    private void tellMoney() {
        if (!anyMoney && tally.rows() > 0 && !layout.hasAny(Field.GROSS, Field.NET, Field.UNIT_PRICE)) {
            out.log()
                    .notice(
                            ProblemKind.COLUMN_MISSING,
                            layout.sheet(),
                            "",
                            "The file has no money; the menu prices of the book serve.",
                            "Export it with a column of gross or net sales for the money really taken.");
        }
    }

    /** Everything that tells this sheet's rows from another's, whatever their order. */
    String digest() {
        return tally.rows() + ":" + digest;
    }

    boolean hasRows() {
        return tally.rows() > 0;
    }

    RepeatedRows own() {
        return own;
    }

    List<SaleTotal> sales() {
        List<SaleTotal> sales = new ArrayList<>();
        for (Map<String, Entry> byCode : entries.values()) {
            for (Entry entry : byCode.values()) {
                sales.addAll(entry.sums.totals(layout.sheet(), context.month()));
            }
        }
        sales.sort(SalesFiles.ORDER);
        return sales;
    }

    FileAccount account() {
        BigDecimal printed = totals.finish(out.log(), Field.GROSS, Field.NET);
        boolean hasMoney = anyMoney || layout.hasAny(Field.GROSS, Field.NET, Field.UNIT_PRICE);
        return tally.account(
                sheet.facts(),
                FileKind.SALES.word(),
                layout.headingRow(),
                reading.datesWord(),
                reading.decimalsWord(),
                true,
                hasMoney,
                printed);
    }
}
