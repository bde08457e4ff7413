package heeltap.load;

import heeltap.quantity.Amount;
import heeltap.quantity.Exact;
import heeltap.quantity.Measure;
import heeltap.quantity.Money;
import heeltap.quantity.Pack;
import heeltap.record.Book;
import heeltap.record.ColumnRule;
import heeltap.record.FileAccount;
import heeltap.record.KnownNames;
import heeltap.record.Month;
import heeltap.record.NameRule;
import heeltap.record.SaleTotal;
import heeltap.record.Setting;
import heeltap.record.Settings;
import heeltap.source.MemorySheet;
import heeltap.source.Place;
import heeltap.source.Sheet;
import heeltap.source.WithProblems;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** A small bar whose book knows a few names, and months loaded into it. */
final class MonthFixture {
    static final YearMonth OCTOBER = YearMonth.of(2026, 10);
    private static final Set<String> KNOWN = Set.of(
            "negroni",
            "daiquiri",
            "spritz",
            "house lager",
            "gin",
            "rum",
            "lime",
            "white port",
            "cola",
            "total eclipse");
    private static final Set<String> IGNORED = Set.of("cover charge");

    private Settings settings = Settings.standard()
            .with(Setting.CURRENCY, Currency.getInstance("EUR"))
            .with(Setting.MENU_PRICES_INCLUDE_TAX, true)
            .with(Setting.SALES_TAX_PERCENT, Exact.of(20));
    private final List<ColumnRule> columns = new ArrayList<>();
    private final Map<String, List<Sheet>> files = new LinkedHashMap<>();

    static MonthFixture bar() {
        return new MonthFixture();
    }

    <T> MonthFixture set(Setting<T> setting, T value) {
        settings = settings.with(setting, value);
        return this;
    }

    MonthFixture language(String tag) {
        return set(Setting.LANGUAGE, Locale.forLanguageTag(tag));
    }

    MonthFixture column(String file, String field, String heading, String dates, String decimals) {
        columns.add(new ColumnRule(file, field, heading, dates, decimals, Place.of("book/columns.csv")));
        return this;
    }

    /** A text file whose lines are split at {@code |}. */
    MonthFixture file(String name, String... lines) {
        return sheet(name, "", lines);
    }

    MonthFixture sheet(String name, String sheet, String... lines) {
        List<List<String>> rows = new ArrayList<>();
        for (String line : lines) {
            rows.add(Arrays.asList(line.split("\\|", -1)));
        }
        return add(MemorySheet.of("2026-10/" + name, sheet, rows));
    }

    MonthFixture add(Sheet sheet) {
        files.computeIfAbsent(sheet.facts().place().file(), f -> new ArrayList<>())
                .add(sheet);
        return this;
    }

    WithProblems<Month> load() {
        List<MonthFile> opened = new ArrayList<>();
        files.forEach((path, sheets) -> opened.add(MonthFile.of(path, sheets)));
        Book book = new Book(
                "Bar", settings, List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), columns,
                List.of(), List.of());
        return MonthLoader.load(OCTOBER, opened, book, MonthFixture::ask, MonthFixture::pack, rows -> {});
    }

    private static KnownNames.Verdict ask(NameRule.Where where, String name, String code) {
        String folded = TextFold.fold(name);
        if (KNOWN.contains(folded) || code.equals("101")) {
            return new KnownNames.Verdict(KnownNames.Answer.KNOWN, List.of());
        }
        return IGNORED.contains(folded)
                ? new KnownNames.Verdict(KnownNames.Answer.IGNORED, List.of())
                : new KnownNames.Verdict(KnownNames.Answer.UNKNOWN, List.of("Negroni"));
    }

    /** Only so much of packs as these tests need: {@code 6 x 70cl}. */
    private static Optional<Pack> pack(String text, Measure measure) {
        String[] parts = text.replace("cl", "").split(" x ", -1);
        return parts.length != 2
                ? Optional.empty()
                : Optional.of(new Pack(
                        Exact.of(parts[0]), new Amount(Exact.of(parts[1]).times(Exact.of(10)), measure), "", text));
    }

    /** {@code Negroni 2026-10-03 SALE 2 rows 3 units 20} for each total. */
    static List<String> sales(Month month) {
        return month.sales().stream().map(MonthFixture::line).toList();
    }

    private static String line(SaleTotal total) {
        Money net = total.net();
        return total.item() + (total.code().isEmpty() ? "" : "#" + total.code()) + " " + total.day() + " "
                + total.kind() + " " + total.rows() + "r " + total.quantity() + "u " + net;
    }

    /** {@code rows 5 = 3 + 1 + 1, quantity 9, money 84 = 60 + 0 + 24}. */
    static String control(FileAccount account) {
        return "rows " + account.rows() + " = " + account.used() + " + " + account.ignored() + " + "
                + account.setAside() + ", quantity " + account.quantity() + ", money " + account.money() + " = "
                + account.usedMoney() + " + " + account.ignoredMoney() + " + " + account.setAsideMoney();
    }

    static List<String> setAside(Month month) {
        return month.setAside().stream()
                .map(row -> row.place().row() + ": " + row.reason() + " " + row.quantity() + " " + row.money())
                .toList();
    }

    static List<String> problems(WithProblems<Month> loaded) {
        return loaded.problems().stream().map(p -> p.kind() + " " + p).toList();
    }
}
