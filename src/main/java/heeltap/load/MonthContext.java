package heeltap.load;

import heeltap.record.Book;
import heeltap.record.ColumnRule;
import heeltap.record.KnownNames;
import heeltap.record.Setting;
import heeltap.record.Settings;
import java.time.YearMonth;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** What readers of all kinds need to know of the bar. */
record MonthContext(YearMonth month, Book book, KnownNames names, PackReader packs, MonthLoader.Progress progress) {
    Settings settings() {
        return book.settings();
    }

    Locale language() {
        return settings().get(Setting.LANGUAGE);
    }

    /** The rows of Columns for a file. */
    List<ColumnRule> rules(String path) {
        String name = FileKind.fileName(path).toLowerCase(Locale.ROOT);
        return book.columns().stream()
                .filter(rule -> name.startsWith(rule.file().strip().toLowerCase(Locale.ROOT)))
                .toList();
    }

    /**
     * What a file is: by the beginning of its name, else a price list where Columns names nothing but codes, names and
     * prices for it; null where neither says.
     */
    @Nullable FileKind kind(String path) {
        FileKind kind = FileKind.find(path);
        if (kind != null) {
            return kind;
        }
        List<ColumnRule> rules = rules(path);
        boolean prices =
                !rules.isEmpty() && rules.stream().allMatch(rule -> isOfPrices(FileKind.PRICES.field(rule.field())));
        return prices ? FileKind.PRICES : null;
    }

    private static boolean isOfPrices(@Nullable Field field) {
        return field == Field.CODE || field == Field.ITEM || field == Field.UNIT_PRICE;
    }

    /** The decimals that Columns sets for a file; null where it sets none. */
    @Nullable Decimals decimals(String path) {
        for (ColumnRule rule : rules(path)) {
            for (Decimals decimals : Decimals.values()) {
                if (TextFold.fold(rule.decimals()).equals(decimals.word())) {
                    return decimals;
                }
            }
        }
        return null;
    }

    /** The order of dates that Columns sets for a file; null where it sets none. */
    @Nullable DateOrder dates(String path) {
        for (ColumnRule rule : rules(path)) {
            for (DateOrder order : DateOrder.values()) {
                if (TextFold.fold(rule.dates()).equals(TextFold.fold(order.word()))) {
                    return order;
                }
            }
        }
        return null;
    }
}
