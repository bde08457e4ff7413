package heeltap.load;

import heeltap.record.FileAccount;
import heeltap.source.ProblemKind;
import heeltap.source.Sheet;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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
                if (layout.isHeading(row) || row.cells().size() == 1) {
                    tally.fate(Tally.Fate.IGNORED, null, null);
                } else if (fields.has(Field.UNIT_PRICE) && price == null) {
                    tally.fate(Tally.Fate.SET_ASIDE, null, null);
                    out.setAside(
                            layout.cell(Field.UNIT_PRICE, row.number()),
                            ProblemKind.VALUE_INVALID,
                            "The price cannot be read.",
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
