package heeltap.load;

import heeltap.quantity.Money;
import heeltap.record.FileAccount;
import heeltap.record.KnownNames;
import heeltap.record.SaleKind;
import heeltap.record.SaleTotal;
import heeltap.source.Cell;
import heeltap.source.ProblemKind;
import heeltap.source.Row;
import heeltap.source.Sheet;
import java.math.BigDecimal;
import java.time.YearMonth;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** Reads one sheet of sales, adding its rows up while they pass. */
final class SalesSheet {
    private static final Field[] SUMMED = {Field.QUANTITY, Field.GROSS, Field.DISCOUNT, Field.NET, Field.TAX};

    private final Sheet sheet;
    private final Layout layout;
    private final Reading reading;
    private final MonthContext context;
    private final RowsOut out;
    private final Fields fields;
    private final SaleRow sale;
    private final Tally tally = new Tally();
    private final PrintedTotals totals;
    private final SoldItems items;
    private final RowIdentity identity;
    private final TicketDiscounts discounts = new TicketDiscounts();
    private final Voids voids;
    private final @Nullable SaleKind given;
    private @Nullable RepeatedRows earlier;
    private @Nullable Returns returns;
    private RepeatedRows wholeTickets = new RepeatedRows();
    private boolean[] repeatedDays = RowIdentity.noDays();
    private @Nullable String sumsOf;
    private int givenRows;
    private BigDecimal givenMoney = BigDecimal.ZERO;
    private boolean anyMoney;
    private boolean otherTable;

    /**
     * @param given the kind of all of its rows; null where each says its own
     * @param elsewhere voids that cancel rows of other sheets
     */
    SalesSheet(
            Sheet sheet,
            Layout layout,
            @Nullable SaleKind given,
            MonthContext context,
            RowsOut out,
            PriceList prices,
            VoidsElsewhere elsewhere) {
        this.given = given;
        this.sheet = sheet;
        this.layout = layout;
        this.context = context;
        this.out = out;
        this.reading = Evidence.read(sheet, layout, context, out.log());
        this.fields = new Fields(layout);
        this.items = new SoldItems(context, prices);
        this.identity = new RowIdentity(new ItemKeys(context, prices));
        this.sale = new SaleRow(layout, reading, fields, prices, context);
        this.totals = new PrintedTotals(layout, reading, SUMMED);
        this.voids = new Voids(layout, given == SaleKind.VOID, elsewhere);
    }

    /**
     * @param earlierRows of sheets read before; null where there is no other sheet
     * @param repeated the days that an earlier sheet holds, row for row
     * @param wholes tickets that an earlier sheet holds, row for row
     */
    void read(@Nullable RepeatedRows earlierRows, boolean[] repeated, RepeatedRows wholes) {
        earlier = earlierRows;
        wholeTickets = wholes;
        repeatedDays = repeated;
        read();
        tellMoney();
    }

    /** Its rows only sum up those of the sheets named, and are set aside. */
    void repeatsSumsOf(String others) {
        sumsOf = others;
    }

    /** Reads a sheet of returns: each row is taken off the sale of its ticket and item. */
    void readReturns(Returns sold) {
        returns = sold;
        read();
    }

    private void read() {
        if (reading.hasDiscountRows()) {
            findDiscounts();
        }
        each(row -> {
            take(row);
            if ((tally.rows() & 0x3FFF) == 0) {
                context.progress().rows(tally.rows());
            }
        });
        discounts.share(this::settleDiscount);
        tellGiven();
    }

    private void tellGiven() {
        if (givenRows > 0) {
            out.log()
                    .notice(
                            ProblemKind.VALUE_DOUBTFUL,
                            layout.column(Field.KIND),
                            "",
                            "Rows marked complimentary or staff have money, " + givenRows + " of "
                                    + givenMoney.toPlainString() + " together; it does not count as sales.",
                            "If guests or staff paid it, mark the rows as sales.");
        }
    }

    private void findDiscounts() {
        each(row -> {
            sale.load(row);
            sale.read(null, "");
            if (TicketDiscounts.isOne(fields.text(Field.ITEM), fields.text(Field.TICKET), sale.money)) {
                discounts.want(fields.text(Field.TICKET));
            }
        });
    }

    private void settleDiscount(TicketDiscounts.Discount discount, boolean shared) {
        Tally.Fate fate = shared ? Tally.Fate.USED : Tally.Fate.SET_ASIDE;
        tally.fate(fate, discount.quantity(), discount.money());
        if (!shared) {
            out.setAside(
                    layout.sheet().withRow(discount.row().number()),
                    ProblemKind.VALUE_INVALID,
                    "The ticket has no sales that could bear this discount.",
                    RowsOut.text(discount.row()),
                    discount.quantity(),
                    discount.money(),
                    List.of());
        }
    }

    /** Finds what is void, before anything is read. */
    void findVoids() {
        if (!reading.hasVoids() && given != SaleKind.VOID) {
            return;
        }
        for (boolean counting : new boolean[] {false, true}) {
            each(row -> {
                sale.load(row);
                sale.read(given, fields.text(Field.CODE));
                voids.see(fields, sale, counting);
            });
        }
        voids.decide(layout, out.log());
        each(row -> {
            sale.load(row);
            sale.read(given, fields.text(Field.CODE));
            voids.seeOpen(fields, sale, layout.sheet().withRow(row.number()));
        });
    }

    /** The rows below the heading that are not blank. */
    private void each(Consumer<Row> consumer) {
        sheet.read(row -> {
            if (row.number() > layout.headingRow() && !row.isBlank()) {
                consumer.accept(row);
            }
            return true;
        });
    }

    private void take(Row row) {
        sale.load(row);
        tally.row();
        if (otherTable && !layout.isHeading(row)) {
            tally.fate(Tally.Fate.IGNORED, null, null);
            return;
        }
        otherTable = false;
        SoldItems.Item entry = items.find(fields.text(Field.ITEM), fields.hasVariant() ? "" : fields.text(Field.CODE));
        boolean known = entry != null && entry.verdict().answer() != KnownNames.Answer.UNKNOWN;
        if (!known && isNoRecord(row, entry)) {
            tally.fate(Tally.Fate.IGNORED, null, null);
            return;
        }
        sale.read(given, entry == null ? "" : entry.code().isEmpty() ? entry.item() : entry.code());
        totals.add(fields);
        tally.in(sale.quantity, sale.money);
        anyMoney |= sale.money != null;
        if (entry == null) {
            totals.addNameless(fields);
            setAside(row, ProblemKind.VALUE_MISSING, null, "The row names no item.", RowsOut.text(row), List.of());
        } else if (!known && isTicketDiscount(row, entry)) {
            return;
        } else if (sale.flaw != null) {
            SaleRow.Flaw flaw = sale.flaw;
            setAside(row, flaw.kind(), flaw.field(), flaw.reason(), RowsOut.text(row), List.of());
        } else {
            settle(row, entry);
        }
    }

    /** Repeated headings, section rows and totals carry no sale of their own. */
    private boolean isNoRecord(Row row, SoldItems.@Nullable Item entry) {
        if (layout.isHeading(row) || sale.isSectionDate()) {
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
        if (LayoutFinder.isHeadingLike(row, FileKind.SALES)) {
            otherTable = true;
            out.log()
                    .notice(
                            ProblemKind.SHEET_NOT_READ,
                            layout.sheet().withRow(row.number()),
                            RowsOut.text(row),
                            "Another table begins here; it is not read.",
                            "Put it on a sheet of its own if it should be.");
            return true;
        }
        return entry == null && row.cells().stream().noneMatch(cell -> isMapped(cell.column()));
    }

    /** The discount waits for its ticket to be read. */
    private boolean isTicketDiscount(Row row, SoldItems.Item entry) {
        String ticket = fields.text(Field.TICKET);
        BigDecimal money = sale.money;
        return money != null
                && TicketDiscounts.isOne(entry.item(), ticket, money)
                && discounts.add(ticket, new TicketDiscounts.Discount(row, sale.quantity, money));
    }

    private boolean isMapped(int column) {
        return layout.columns().containsValue(column);
    }

    private static boolean isText(Cell cell) {
        return cell.number() == null && NumberText.readings(cell.text()) == NumberText.Readings.NONE;
    }

    private void settle(Row row, SoldItems.Item entry) {
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
        boolean repeated = earlier != null && identity.isRepeated(fields, sale, earlier, repeatedDays, wholeTickets);
        if (sumsOf != null && sale.kind != SaleKind.VOID) {
            setAside(
                    row,
                    ProblemKind.ROW_REPEATED,
                    null,
                    "The row repeats the sums of " + sumsOf + ".",
                    RowsOut.text(row),
                    List.of());
        } else if (repeated && sale.kind != SaleKind.VOID) {
            setAside(
                    row,
                    ProblemKind.ROW_REPEATED,
                    null,
                    "The row repeats one of another file of this month.",
                    RowsOut.text(row),
                    List.of());
        } else if (entry.verdict().answer() == KnownNames.Answer.IGNORED
                || sale.kind == SaleKind.VOID
                || voids.cancels(fields, sale)) {
            tally.fate(Tally.Fate.IGNORED, sale.quantity, sale.money);
        } else if (entry.verdict().answer() == KnownNames.Answer.UNKNOWN) {
            String name = entry.item().isEmpty() ? entry.code() : entry.item();
            Field field = fields.has(Field.ITEM) ? Field.ITEM : Field.CODE;
            setAside(
                    row,
                    ProblemKind.NAME_UNKNOWN,
                    field,
                    "The name is not known.",
                    name,
                    entry.verdict().nearest());
        } else if (returns != null && !fields.text(Field.TICKET).isEmpty()) {
            takeBack(row, entry, returns.find(Returns.key(fields)));
        } else {
            use(row, entry);
        }
        if (sale.kind == SaleKind.VOID) {
            totals.addVoid(fields);
        }
    }

    private void use(Row row, SoldItems.Item entry) {
        BigDecimal quantity = Objects.requireNonNull(sale.quantity);
        BigDecimal net = sale.net;
        if (sale.kind == SaleKind.REFUND) {
            quantity = quantity.abs();
            net = net == null ? null : net.abs();
        }
        BigDecimal tax = sale.tax == null || sale.kind != SaleKind.REFUND ? sale.tax : sale.tax.abs();
        entry.sums().add(sale.day, sale.kind, quantity, net, sale.rate, tax, row.number());
        discounts.use(fields.text(Field.TICKET), entry.sums(), sale);
        if (sale.kind == SaleKind.COMPLIMENTARY && sale.money != null && sale.money.signum() != 0) {
            givenRows++;
            givenMoney = givenMoney.add(sale.money);
        }
        tally.fate(Tally.Fate.USED, sale.quantity, sale.money);
    }

    /** Takes a return off the sale of its ticket and item; without money of its own it has the sale's. */
    private void takeBack(Row row, SoldItems.Item entry, Returns.@Nullable Sold sold) {
        BigDecimal quantity = Objects.requireNonNull(sale.quantity).abs();
        SaleRow.Flaw refusal = Returns.takeBack(sold, quantity);
        if (refusal != null || sold == null) {
            SaleRow.Flaw why = Objects.requireNonNull(refusal);
            setAside(row, why.kind(), why.field(), why.reason(), RowsOut.text(row), List.of());
        } else {
            sale.day = sale.day == null ? sold.day() : sale.day;
            Money net = sale.net == null ? sold.net(quantity) : null;
            use(row, entry);
            if (net != null) {
                entry.sums().adjust(sale.day, sale.kind, net);
            }
        }
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

    RowIdentity identity() {
        return identity;
    }

    boolean hasClock() {
        return reading.hasTime();
    }

    List<SaleTotal> sales() {
        return items.totals(layout.sheet());
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
