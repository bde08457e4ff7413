package heeltap.load;

import heeltap.record.FileAccount;
import heeltap.record.SaleKind;
import heeltap.record.SaleTotal;
import heeltap.source.ProblemKind;
import heeltap.source.Sheet;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Reads all sales sheets of a month, one after the other, and finds rows that a later one repeats. */
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
    private final Map<String, String> digests = new HashMap<>();
    private final List<SaleTotal> sales = new ArrayList<>();

    /** @param several whether there is more than one sheet */
    SalesFiles(MonthContext context, RowsOut out, PriceList prices, boolean several) {
        this.context = context;
        this.out = out;
        this.prices = prices;
        this.several = several;
    }

    FileAccount read(Sheet sheet, Layout layout) {
        SaleKind given = isReturns(layout) ? SaleKind.REFUND : null;
        RowsOut first = new RowsOut(new ProblemLog());
        SalesSheet read = read(sheet, layout, given, first, false);
        String twin = several ? digests.get(read.digest()) : null;
        if (twin != null && read.hasRows()) {
            first = new RowsOut(new ProblemLog());
            read = read(sheet, layout, given, first, true);
            first.log()
                    .fault(
                            ProblemKind.FILE_TWICE,
                            layout.sheet(),
                            "",
                            "All rows of this sheet stand in " + twin + " too.",
                            "Remove one of the two.");
        }
        FileAccount account = read.account();
        out.addAll(first);
        digests.putIfAbsent(read.digest(), layout.sheet().toString());
        sales.addAll(read.sales());
        earlier.addAll(read.own());
        return account;
    }

    private SalesSheet read(Sheet sheet, Layout layout, @Nullable SaleKind given, RowsOut rows, boolean repeatsAll) {
        SalesSheet read = new SalesSheet(sheet, layout, context, rows, prices, given);
        read.read(several ? earlier : null, repeatsAll);
        return read;
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
