package heeltap.load;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.record.FileAccount;
import heeltap.record.SaleKind;
import heeltap.record.SaleTotal;
import heeltap.source.ProblemKind;
import heeltap.source.Row;
import heeltap.source.Sheet;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Reads all sales sheets of a month, one after the other, finds rows that a later one repeats, and takes returns off. */
final class SalesFiles {
    static final Comparator<SaleTotal> ORDER = Comparator.comparing(SaleTotal::item)
            .thenComparing(SaleTotal::code)
            .thenComparing(SaleTotal::day, Comparator.nullsFirst(Comparator.naturalOrder()))
            .thenComparing(SaleTotal::kind)
            .thenComparing(SaleTotal::first);

    private final MonthContext context;
    private final RowsOut out;
    private final PriceList prices;
    private final boolean several;
    private final RepeatedRows earlier = new RepeatedRows();
    private final Map<String, RowIdentity> identities = new LinkedHashMap<>();
    private final List<SaleTotal> sales = new ArrayList<>();
    private final Map<Sheet, Layout> plain = new LinkedHashMap<>();
    private final Map<Sheet, Layout> returns = new LinkedHashMap<>();
    private final Map<Sheet, FileAccount> returned = new LinkedHashMap<>();

    /** @param several whether there is more than one sheet */
    SalesFiles(MonthContext context, RowsOut out, PriceList prices, boolean several) {
        this.context = context;
        this.out = out;
        this.prices = prices;
        this.several = several;
    }

    /** The account of a sheet of returns is there only after {@link #finish}. */
    Supplier<FileAccount> read(Sheet sheet, Layout layout) {
        if (isReturns(layout)) {
            returns.put(sheet, layout);
            return () -> Objects.requireNonNull(returned.get(sheet));
        }
        plain.put(sheet, layout);
        FileAccount account = readSales(sheet, layout);
        return () -> account;
    }

    private FileAccount readSales(Sheet sheet, Layout layout) {
        RowsOut rows = new RowsOut(new ProblemLog());
        SalesSheet read = new SalesSheet(sheet, layout, context, rows, prices);
        boolean[] days = RowIdentity.noDays();
        read.read(several ? earlier : null, days);
        String twin = several ? repeatedDays(read, days) : null;
        if (twin != null) {
            rows = new RowsOut(new ProblemLog());
            boolean whole = read.identity().equalsAll(Objects.requireNonNull(identities.get(twin)));
            read = new SalesSheet(sheet, layout, context, rows, prices);
            read.read(earlier, days);
            rows.log()
                    .fault(
                            ProblemKind.FILE_TWICE,
                            layout.sheet(),
                            "",
                            whole
                                    ? "All rows of this sheet stand in " + twin + " too."
                                    : "Some days of this sheet stand in " + twin + " too, row for row.",
                            "Remove one of the two.");
        }
        FileAccount account = read.account();
        out.addAll(rows);
        identities.put(layout.sheet().toString(), read.identity());
        sales.addAll(read.sales());
        earlier.addAll(read.identity().tickets());
        return account;
    }

    /** The earlier sheet that holds the same days; null for none. */
    private @Nullable String repeatedDays(SalesSheet read, boolean[] days) {
        String twin = null;
        for (Map.Entry<String, RowIdentity> before : identities.entrySet()) {
            if (read.identity().markRepeated(before.getValue(), read.hasClock(), days)) {
                twin = twin == null ? before.getKey() : twin;
            }
        }
        return twin;
    }

    /** Takes returns off, when all sales are read. */
    void finish() {
        Returns wanted = new Returns();
        returns.forEach((sheet, layout) -> walk(sheet, layout, (fields, sale) -> {
            if (!fields.text(Field.TICKET).isEmpty()) {
                wanted.want(Returns.key(fields));
            }
        }));
        if (!wanted.isEmpty()) {
            plain.forEach((sheet, layout) -> walk(sheet, layout, (fields, sale) -> count(wanted, fields, sale)));
        }
        returns.forEach((sheet, layout) -> {
            SalesSheet read = new SalesSheet(sheet, layout, context, out, prices);
            read.readReturns(wanted);
            sales.addAll(read.sales());
            returned.put(sheet, read.account());
        });
    }

    private static void count(Returns wanted, Fields fields, SaleRow sale) {
        BigDecimal quantity = sale.quantity;
        if (sale.flaw != null || quantity == null || sale.kind == SaleKind.VOID) {
            return;
        }
        BigDecimal net = sale.net;
        Money money = net == null
                ? null
                : sale.rate == null ? Money.of(net) : Money.of(net).withoutTax(Exact.of(sale.rate));
        wanted.count(Returns.key(fields), sale.kind == SaleKind.REFUND, quantity, money, sale.day);
    }

    /** Takes the fields and numbers of each row. */
    private interface Each {
        void take(Fields fields, SaleRow sale);
    }

    private void walk(Sheet sheet, Layout layout, Each each) {
        Reading reading = Evidence.read(sheet, layout, context, new ProblemLog());
        Fields fields = new Fields(layout);
        SaleRow sale = new SaleRow(layout, reading, fields, prices, context.settings());
        sheet.read((Row row) -> {
            if (row.number() > layout.headingRow() && !row.isBlank()) {
                fields.load(row);
                sale.read(null, fields.text(Field.CODE));
                each.take(fields, sale);
            }
            return true;
        });
    }

    /** A sheet or file named after returns holds refunds. */
    private static boolean isReturns(Layout layout) {
        String name =
                layout.sheet().sheet() + " " + FileKind.fileName(layout.sheet().file());
        for (String word : TextFold.fold(name).split(" ", -1)) {
            if (RowWords.isFolded("returns sheet", word)) {
                return true;
            }
        }
        return false;
    }

    List<SaleTotal> sales() {
        sales.sort(ORDER);
        return sales;
    }
}
