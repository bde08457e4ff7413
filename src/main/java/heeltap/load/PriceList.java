package heeltap.load;

import heeltap.record.FileAccount;
import heeltap.source.ProblemKind;
import heeltap.source.Sheet;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** A till's price list: names and prices for sales lines that carry only a code. */
final class PriceList {
    private final Map<String, Entry> byCode = new HashMap<>();

    /** What the list says of a code. */
    private record Entry(String name, @Nullable BigDecimal price) {}

    /** The name of a code; empty where the list has none. */
    String name(String code) {
        Entry entry = byCode.get(key(code));
        return entry == null ? "" : entry.name;
    }

    /** As the guest reads it; null where the list has none. */
    @Nullable BigDecimal price(String code) {
        Entry entry = code.isEmpty() ? null : byCode.get(key(code));
        return entry == null ? null : entry.price;
    }

    private static String key(String code) {
        return TextFold.fold(code);
    }

    /** Whether a sheet among the sales lists prices: nothing but names, codes and prices, and each name once. */
    static boolean isOne(Sheet sheet, Layout layout) {
        Set<Field> fields = layout.columns().keySet();
        if (!layout.has(Field.UNIT_PRICE)
                || !Set.of(Field.ITEM, Field.CODE, Field.UNIT_PRICE).containsAll(fields)) {
            return false;
        }
        Fields cells = new Fields(layout);
        Set<String> names = new HashSet<>();
        boolean[] once = {true};
        sheet.read(row -> {
            if (row.number() > layout.headingRow() && !layout.isHeading(row)) {
                cells.load(row);
                String name = cells.text(Field.ITEM) + "\u0000" + cells.text(Field.CODE);
                once[0] = !cells.has(Field.UNIT_PRICE) || names.add(name);
            }
            return once[0];
        });
        return once[0];
    }

    FileAccount read(Sheet sheet, Layout layout, MonthContext context, RowsOut out) {
        Reading reading = Evidence.read(sheet, layout, context, out.log());
        Fields fields = new Fields(layout);
        Tally tally = new Tally();
        sheet.read(row -> {
            if (row.number() > layout.headingRow() && !row.isBlank()) {
                fields.load(row);
                tally.row();
                String code = fields.text(Field.CODE);
                String item = fields.text(Field.ITEM);
                BigDecimal price = reading.number(fields, Field.UNIT_PRICE);
                String misfit = reading.misfit(row, layout);
                if (layout.isHeading(row) || row.cells().size() == 1) {
                    tally.fate(Tally.Fate.IGNORED, null, null);
                } else if (misfit != null || (fields.has(Field.UNIT_PRICE) && price == null)) {
                    tally.fate(Tally.Fate.SET_ASIDE, null, null);
                    out.setAside(
                            misfit != null
                                    ? layout.sheet().withRow(row.number())
                                    : layout.cell(Field.UNIT_PRICE, row.number()),
                            ProblemKind.VALUE_INVALID,
                            misfit != null ? misfit : "The price cannot be read.",
                            RowsOut.text(row),
                            null,
                            null,
                            List.of());
                } else {
                    tally.fate(Tally.Fate.USED, null, null);
                    put(code, new Entry(item, price));
                    put(item, new Entry(item, price));
                }
            }
            return true;
        });
        return tally.account(
                sheet.facts(),
                FileKind.PRICES.word(),
                layout.headingRow(),
                "",
                reading.decimalsWord(),
                false,
                false,
                null);
    }

    private void put(String code, Entry entry) {
        if (!code.isEmpty()) {
            byCode.putIfAbsent(key(code), entry);
        }
    }

    /** The names of the list, for messages. */
    List<String> names() {
        return new ArrayList<>(
                byCode.values().stream().map(Entry::name).distinct().toList());
    }
}
