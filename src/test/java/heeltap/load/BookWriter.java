package heeltap.load;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.record.Book;
import heeltap.record.Drink;
import heeltap.record.Ingredient;
import heeltap.record.Preparation;
import heeltap.record.SpecAmount;
import heeltap.record.SpecLine;
import heeltap.source.MemorySheet;
import heeltap.source.Sheet;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/** Writes a book as a person might: columns in any order, title rows above, points or commas. */
final class BookWriter {
    private final Random random;
    private final boolean comma;
    private final List<Sheet> sheets = new ArrayList<>();

    BookWriter(Random random) {
        this.random = random;
        this.comma = random.nextBoolean();
    }

    List<Sheet> write(Book book) {
        write(
                "settings",
                List.of("Setting", "Value"),
                List.of(List.of("currency", "EUR"), List.of("menu prices include tax", "yes")));
        write(
                "categories",
                headings(BookTables.CATEGORIES),
                book.categories().stream()
                        .map(row -> List.of(
                                row.name(),
                                text(row.targetCostPercent()),
                                row.compareWithin(),
                                text(row.inMenuAnalysis()),
                                text(row.groupElasticity())))
                        .toList());
        write(
                "ingredients",
                headings(BookGoods.INGREDIENTS),
                book.ingredients().stream().map(this::row).toList());
        write(
                "preparations",
                headings(BookGoods.PREPARATIONS),
                book.preparations().stream().map(this::row).toList());
        write(
                "drinks",
                headings(BookTables.DRINKS),
                book.drinks().stream().map(this::row).toList());
        write(
                "specs",
                headings(BookTables.SPECS),
                book.specs().stream().map(this::row).toList());
        write(
                "prices",
                headings(BookTables.PRICES),
                book.prices().stream()
                        .map(row -> List.of(row.drink(), row.from().toString(), text(row.price())))
                        .toList());
        write(
                "names",
                headings(BookTables.NAMES),
                book.names().stream()
                        .map(row -> List.of(
                                row.asWritten(),
                                row.means(),
                                row.where().name().toLowerCase(Locale.ROOT),
                                text(row.times())))
                        .toList());
        return sheets;
    }

    /** Rows are numbered as the records' places say: the heading is row 3. */
    private void write(String sheet, List<String> headings, List<List<String>> rows) {
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < headings.size(); i++) {
            order.add(i);
        }
        Collections.shuffle(order, random);
        List<List<String>> all = new ArrayList<>(List.of(List.of("This is the sheet of the " + sheet), List.of()));
        all.add(order.stream().map(headings::get).map(this::anyCase).toList());
        rows.forEach(row -> all.add(order.stream().map(row::get).toList()));
        sheets.add(MemorySheet.of("book/" + sheet + ".csv", "", all));
    }

    private String anyCase(String heading) {
        return switch (random.nextInt(4)) {
            case 0 -> heading.toUpperCase(Locale.ROOT);
            case 1 -> "  " + heading.toLowerCase(Locale.ROOT).replace(" ", "  ");
            case 2 -> heading.replace(" ", "");
            default -> heading;
        };
    }

    private static List<String> headings(ColumnTable table) {
        return table.columns().stream().map(Column::heading).toList();
    }

    private List<String> row(Ingredient row) {
        var made = row.composition();
        return texts(
                row.name(),
                row.group(),
                row.measure().symbol(),
                made.density(),
                made.abvPercent(),
                made.sugar(),
                made.citric(),
                made.malic(),
                made.tartaric(),
                made.otherAcid(),
                made.salt(),
                row.usablePercent(),
                String.join("; ", row.allergens()),
                row.juiceMl(),
                row.eachGrams(),
                row.listPrice(),
                row.listPack() == null ? null : row.listPack().text(),
                row.fullBottleGrams(),
                row.emptyBottleGrams(),
                row.bottleMl(),
                row.par(),
                row.peelCostPercent());
    }

    private List<String> row(Preparation row) {
        return texts(
                row.name(),
                row.makes(),
                row.makesUnit() == null ? null : row.makesUnit().name(),
                row.lossPercent(),
                row.minutes(),
                row.keepsDays(),
                row.targetCitric(),
                row.targetMalic(),
                row.targetSalt(),
                row.targetSugar(),
                row.measure().symbol(),
                row.caution());
    }

    private List<String> row(Drink row) {
        return texts(
                row.name(),
                row.price(),
                row.category(),
                row.code(),
                row.method().name().toLowerCase(Locale.ROOT),
                row.waterPercent(),
                row.serveMl(),
                row.minutes(),
                row.onMenuFrom(),
                row.onMenuUntil(),
                row.holdPrice(),
                row.fixedCost(),
                row.inMenuAnalysis());
    }

    private List<String> row(SpecLine row) {
        Object amount = row.amount() instanceof SpecAmount.Units units ? units.number() : row.amountText();
        return texts(row.item(), row.from(), row.ingredient(), amount, row.unit(), row.wastePercent(), row.note());
    }

    private List<String> texts(@Nullable Object... values) {
        return Arrays.stream(values).map(this::text).toList();
    }

    private String text(@Nullable Object value) {
        if (value instanceof Boolean yes) {
            return yes ? "Yes" : "no";
        }
        if (value instanceof Money money) {
            return (random.nextBoolean() ? "€ " : "") + text(money.amount());
        }
        if (value instanceof Exact number) {
            return comma ? number.toString().replace('.', ',') : number.toString();
        }
        return Objects.toString(value, "");
    }
}
