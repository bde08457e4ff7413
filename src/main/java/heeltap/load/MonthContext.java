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
