package heeltap.load;

import heeltap.quantity.Units;
import heeltap.record.BarMeasure;
import heeltap.record.Book;
import heeltap.record.Drink;
import heeltap.record.FileAccount;
import heeltap.record.Folding;
import heeltap.record.Ingredient;
import heeltap.record.Preparation;
import heeltap.record.SetAside;
import heeltap.record.Setting;
import heeltap.record.Settings;
import heeltap.record.SpecLine;
import heeltap.source.Place;
import heeltap.source.Problem;
import heeltap.source.Sheet;
import heeltap.source.WithProblems;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** The sheets of the bar's book to its record. */
public final class BookLoader {
    private final List<Problem> problems = new ArrayList<>();
    private final Map<ColumnTable, Sheet> sheets = new LinkedHashMap<>();
    private final Map<Sheet, FileAccount> accounts = new LinkedHashMap<>();
    private final List<BookSheet> read = new ArrayList<>();
    private Locale language = Locale.ENGLISH;

    private BookLoader() {}

    /**
     * Reads a book from the sheets of a workbook, or from files of one sheet each. Fatal problems are those that make
     * every figure meaningless: a sheet, column or setting that must be there is not. Any other fault costs a row or a
     * value; a line of a spec that cannot be costed is kept with the reason.
     *
     * @param barFolderName the bar's name where the book does not say it
     * @param sheets in any order; the file's name without its ending is the sheet's name where a sheet has none
     */
    public static WithProblems<LoadedBook> load(String barFolderName, List<Sheet> sheets) {
        return new BookLoader().run(barFolderName, sheets);
    }

    private WithProblems<LoadedBook> run(String barFolderName, List<Sheet> given) {
        given.forEach(sheet -> accounts.put(sheet, notRead(sheet)));
        given.forEach(this::assign);
        for (ColumnTable table : BookTables.ALL) {
            if (table.required() && !sheets.containsKey(table)) {
                problems.add(BookProblems.sheetMissing(bookPlace(given), table));
            }
        }
        Book book = book(barFolderName);
        for (BookSheet sheet : read) {
            problems.addAll(sheet.problems());
        }
        List<SetAside> setAside = read.stream()
                .flatMap(sheet -> sheet.setAside().stream())
                .sorted(Comparator.comparing(SetAside::place))
                .toList();
        return new WithProblems<>(new LoadedBook(book, List.copyOf(accounts.values()), setAside), problems);
    }

    private static Place bookPlace(List<Sheet> given) {
        if (given.isEmpty()) {
            return Place.of("book");
        }
        Place first = given.get(0).facts().place();
        int slash = first.file().lastIndexOf('/');
        return Place.of(first.sheet().isEmpty() && slash > 0 ? first.file().substring(0, slash) : first.file());
    }

    private void assign(Sheet sheet) {
        Place place = sheet.facts().place();
        String name = BookProblems.sheetName(place);
        if (Folding.fold(name).equals(Folding.fold(Templates.EXPLANATIONS))) {
            return;
        }
        Optional<ColumnTable> table = BookTables.ALL.stream()
                .filter(candidate -> Folding.fold(candidate.name()).equals(Folding.fold(name)))
                .findFirst();
        if (table.isEmpty()) {
            problems.add(BookProblems.unknownSheet(place, name));
            return;
        }
        Sheet earlier = sheets.putIfAbsent(table.get(), sheet);
        if (earlier != null) {
            problems.add(BookProblems.sheetTwice(place, earlier.facts().place(), name));
        }
    }

    private static FileAccount notRead(Sheet sheet) {
        return new FileAccount(
                sheet.facts().place(),
                "not read",
                sheet.facts().encoding(),
                sheet.facts().delimiter(),
                0,
                "",
                "",
                0,
                0,
                0,
                0,
                null,
                null,
                null,
                null,
                null,
                null,
                null);
    }

    private Book book(String barFolderName) {
        Settings settings = settings();
        language = settings.get(Setting.LANGUAGE);
        List<BarMeasure> measures = list(BookTables.MEASURES, BookLists::measures);
        Units units = BookLists.units(measures);
        Map<String, String> leftOut = new HashMap<>();
        List<Ingredient> ingredients = list(BookGoods.INGREDIENTS, sheet -> {
            List<Ingredient> goods = BookGoodsReader.ingredients(sheet);
            leftOut.putAll(sheet.leftOut(BookGoods.INGREDIENT));
            return goods;
        });
        Map<String, String> spoiled = new HashMap<>();
        List<Preparation> preparations =
                list(BookGoods.PREPARATIONS, sheet -> BookGoodsReader.preparations(sheet, units, spoiled));
        List<Drink> drinks = list(BookTables.DRINKS, BookDrinks::read);
        Set<String> known = new HashSet<>();
        ingredients.forEach(ingredient -> known.add(Folding.fold(ingredient.name())));
        preparations.forEach(preparation -> known.add(Folding.fold(preparation.name())));
        drinks.forEach(drink -> known.add(Folding.fold(drink.name())));
        leftOut.keySet().removeAll(known);
        List<SpecLine> lines = list(
                BookTables.SPECS,
                sheet -> BookSpecs.read(sheet, units, name -> known.contains(Folding.fold(name)), leftOut, spoiled));
        Book book = new Book(
                settings.find(Setting.BAR).orElse(barFolderName),
                settings,
                list(BookTables.CATEGORIES, BookLists::categories),
                ingredients,
                preparations,
                drinks,
                list(BookTables.PRICES, sheet -> BookLists.prices(sheet, drinks)),
                lines,
                list(BookTables.NAMES, BookLists::names),
                list(BookTables.COLUMNS, BookLists::columns),
                measures,
                list(BookTables.ACCOUNTS, BookLists::accounts));
        read.forEach(sheet -> accounts.put(sheet.source(), sheet.account()));
        return book;
    }

    private Settings settings() {
        return open(BookTables.SETTINGS).map(BookSettings::read).orElse(Settings.standard());
    }

    private Optional<BookSheet> open(ColumnTable table) {
        Sheet sheet = sheets.get(table);
        if (sheet == null) {
            return Optional.empty();
        }
        BookSheet opened = new BookSheet(table, sheet, language);
        read.add(opened);
        return Optional.of(opened);
    }

    /** The records of a sheet; none where the book has no such sheet. */
    private <T> List<T> list(ColumnTable table, Function<BookSheet, List<T>> reader) {
        return open(table).map(reader).orElse(List.of());
    }
}
