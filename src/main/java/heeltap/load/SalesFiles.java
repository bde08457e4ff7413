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
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Reads all sales sheets of a month, one after the other, finds rows that a later one repeats, and takes returns and voids off. */
final class SalesFiles {
    static final Comparator<SaleTotal> ORDER = Comparator.comparing(SaleTotal::item)
            .thenComparing(SaleTotal::code)
            .thenComparing(SaleTotal::day, Comparator.nullsFirst(Comparator.naturalOrder()))
            .thenComparing(SaleTotal::kind)
            .thenComparing(SaleTotal::first);

    private final MonthContext context;
    private final RowsOut out;
    private final PriceList prices;
    private final List<Part> parts = new ArrayList<>();
    private final Map<Sheet, FileAccount> accounts = new HashMap<>();
    private final VoidsElsewhere voids = new VoidsElsewhere();
    private final RepeatedRows earlier = new RepeatedRows();
    private final Map<String, RowIdentity> identities = new LinkedHashMap<>();
    private final Map<String, Boolean> clocks = new HashMap<>();
    private final Map<Part, String> summing = new HashMap<>();
    private final List<SaleTotal> sales = new ArrayList<>();

    /**
     * A sheet and what its rows are.
     *
     * @param given the kind of all of its rows; null where each row says its own
     */
    private record Part(
            Sheet sheet, Layout layout, @Nullable SaleKind given) {
        boolean isOf(@Nullable SaleKind kind) {
            return given == kind;
        }
    }

    SalesFiles(MonthContext context, RowsOut out, PriceList prices) {
        this.context = context;
        this.out = out;
        this.prices = prices;
    }

    /** The account is there only after {@link #finish}. */
    Supplier<FileAccount> read(Sheet sheet, Layout layout) {
        parts.add(new Part(sheet, layout, given(layout)));
        return () -> Objects.requireNonNull(accounts.get(sheet));
    }

    /** A sheet or file named after returns or voids holds nothing else. */
    private static @Nullable SaleKind given(Layout layout) {
        String name =
                layout.sheet().sheet() + " " + FileKind.fileName(layout.sheet().file());
        for (String word : TextFold.fold(name).split(" ", -1)) {
            if (RowWords.isFolded("returns sheet", word)) {
                return SaleKind.REFUND;
            }
            if (RowWords.isFolded("voids sheet", word)) {
                return SaleKind.VOID;
            }
        }
        return null;
    }

    /** Reads all sheets: what is void must be known of all before any is added up. */
    void finish() {
        Map<Part, RowsOut> rows = new LinkedHashMap<>();
        Map<Part, SalesSheet> sheets = new LinkedHashMap<>();
        for (Part part : parts) {
            if (!part.isOf(SaleKind.REFUND)) {
                rows.put(part, new RowsOut(new ProblemLog()));
                sheets.put(part, sheet(part, rows.get(part)));
            }
        }
        sheets.values().forEach(SalesSheet::findVoids);
        findSums(sheets.keySet());
        sheets.forEach((part, sheet) -> readSales(part, sheet, Objects.requireNonNull(rows.get(part))));
        readReturns();
        voids.tellOpen(out.log());
    }

    private SalesSheet sheet(Part part, RowsOut rows) {
        return new SalesSheet(part.sheet(), part.layout(), part.given(), context, rows, prices, voids);
    }

    /** Finds the sheets that only sum up others. */
    private void findSums(Set<Part> among) {
        boolean any = among.size() > 1
                && among.stream().anyMatch(part -> !part.layout().hasAny(Field.TICKET, Field.TIME));
        Map<Part, RepeatedSums> sums = new LinkedHashMap<>();
        ItemKeys keys = new ItemKeys(context, prices);
        for (Part part : among) {
            if (any && part.isOf(null)) {
                RepeatedSums of = new RepeatedSums();
                of.precise(part.layout().hasAny(Field.TICKET, Field.TIME));
                walk(part, (fields, sale) -> {
                    if (sale.flaw == null && sale.kind != SaleKind.VOID) {
                        of.add(keys.key(fields), sale);
                    }
                });
                sums.put(part, of);
            }
        }
        summing.putAll(RepeatedSums.find(sums, part -> part.layout().sheet().toString()));
    }

    private void readSales(Part part, SalesSheet first, RowsOut firstRows) {
        boolean several = parts.size() > 1;
        boolean[] days = RowIdentity.noDays();
        SalesSheet read = first;
        RowsOut rows = firstRows;
        String sumsOf = summing.get(part);
        if (sumsOf != null) {
            readSums(part, first, firstRows, sumsOf);
            return;
        }
        RepeatedRows wholes = new RepeatedRows();
        read.read(several ? earlier : null, days, wholes);
        String twin = several ? repeatedDays(read, days) : null;
        String ticketTwin = several ? repeatedTickets(read, wholes) : null;
        if (ticketTwin != null) {
            rows = new RowsOut(new ProblemLog());
            read = sheet(part, rows);
            read.findVoids();
            read.read(earlier, days, wholes);
            rows.log()
                    .fault(
                            ProblemKind.FILE_TWICE,
                            part.layout().sheet(),
                            "",
                            "Tickets of this sheet stand in " + ticketTwin + " too, row for row.",
                            "Remove one of the two.");
        } else if (twin != null) {
            rows = new RowsOut(new ProblemLog());
            boolean whole = read.identity().equalsAll(Objects.requireNonNull(identities.get(twin)));
            read = sheet(part, rows);
            read.findVoids();
            read.read(earlier, days, wholes);
            rows.log()
                    .fault(
                            ProblemKind.FILE_TWICE,
                            part.layout().sheet(),
                            "",
                            whole
                                    ? "All rows of this sheet stand in " + twin + " too."
                                    : "Some days of this sheet stand in " + twin + " too, row for row.",
                            "Remove one of the two.");
        }
        accounts.put(part.sheet(), read.account());
        out.addAll(rows);
        identities.put(part.layout().sheet().toString(), read.identity());
        clocks.put(part.layout().sheet().toString(), read.hasClock());
        sales.addAll(read.sales());
        earlier.addAll(read.identity().tickets());
    }

    private void readSums(Part part, SalesSheet read, RowsOut rows, String sumsOf) {
        read.repeatsSumsOf(sumsOf);
        read.read(null, RowIdentity.noDays(), new RepeatedRows());
        rows.log()
                .fault(
                        ProblemKind.FILE_TWICE,
                        part.layout().sheet(),
                        "",
                        "This sheet sums up what " + sumsOf + " lists, item by item; its rows are left out.",
                        "Remove one of the two.");
        accounts.put(part.sheet(), read.account());
        out.addAll(rows);
        sales.addAll(read.sales());
    }

    /** The earlier sheet that holds tickets of this one, where only one of the two has times; null for none. */
    private @Nullable String repeatedTickets(SalesSheet read, RepeatedRows wholes) {
        String twin = null;
        for (Map.Entry<String, RowIdentity> before : identities.entrySet()) {
            boolean clock = Objects.requireNonNull(clocks.get(before.getKey()));
            RepeatedRows equal = clock == read.hasClock()
                    ? null
                    : read.identity().sums().equal(before.getValue().sums());
            if (equal != null) {
                wholes.addAll(equal);
                twin = twin == null ? before.getKey() : twin;
            }
        }
        return twin;
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
    private void readReturns() {
        Returns wanted = new Returns();
        each(
                SaleKind.REFUND,
                part -> walk(part, (fields, sale) -> {
                    if (!fields.text(Field.TICKET).isEmpty()) {
                        wanted.want(Returns.key(fields));
                    }
                }));
        if (!wanted.isEmpty()) {
            each(null, part -> walk(part, (fields, sale) -> count(wanted, fields, sale)));
        }
        each(SaleKind.REFUND, part -> {
            SalesSheet read = sheet(part, out);
            read.findVoids();
            read.readReturns(wanted);
            sales.addAll(read.sales());
            accounts.put(part.sheet(), read.account());
        });
    }

    private void each(@Nullable SaleKind kind, Consumer<Part> consumer) {
        parts.stream().filter(part -> part.isOf(kind)).forEach(consumer);
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

    private void walk(Part part, Each each) {
        Layout layout = part.layout();
        Reading reading = Evidence.read(part.sheet(), layout, context, new ProblemLog());
        Fields fields = new Fields(layout);
        SaleRow sale = new SaleRow(layout, reading, fields, prices, context);
        part.sheet().read((Row row) -> {
            if (row.number() > layout.headingRow() && !row.isBlank()) {
                sale.load(row);
                sale.read(null, fields.text(Field.CODE));
                each.take(fields, sale);
            }
            return true;
        });
    }

    List<SaleTotal> sales() {
        sales.sort(ORDER);
        return sales;
    }
}
