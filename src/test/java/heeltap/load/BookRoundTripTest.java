package heeltap.load;

import static org.assertj.core.api.Assertions.assertThat;

import heeltap.quantity.Exact;
import heeltap.quantity.Measure;
import heeltap.quantity.Money;
import heeltap.quantity.Packs;
import heeltap.quantity.Units;
import heeltap.record.Book;
import heeltap.record.Category;
import heeltap.record.Composition;
import heeltap.record.DatedPrice;
import heeltap.record.Drink;
import heeltap.record.Ingredient;
import heeltap.record.Method;
import heeltap.record.NameRule;
import heeltap.record.Preparation;
import heeltap.record.Setting;
import heeltap.record.Settings;
import heeltap.record.SpecAmount;
import heeltap.record.SpecLine;
import heeltap.source.Place;
import heeltap.source.WithProblems;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Random;
import java.util.function.IntFunction;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.jspecify.annotations.Nullable;

/** A book written and read is the same book. */
class BookRoundTripTest {
    private static final int FIRST_ROW = 4;

    @Property(tries = 100)
    void writtenAndReadItIsTheSame(@ForAll long seed) {
        Random random = new Random(seed);
        Book book = new Generator(random).book();
        WithProblems<LoadedBook> loaded = BookLoader.load("The Bilge", new BookWriter(random).write(book));
        assertThat(loaded.problems()).isEmpty();
        Book read = loaded.value().book();
        assertThat(read.settings().get(Setting.CURRENCY))
                .isEqualTo(book.settings().get(Setting.CURRENCY));
        assertThat(read.categories()).isEqualTo(book.categories());
        assertThat(read.ingredients()).isEqualTo(book.ingredients());
        assertThat(read.preparations()).isEqualTo(book.preparations());
        assertThat(read.drinks()).isEqualTo(book.drinks());
        assertThat(read.prices()).isEqualTo(book.prices());
        assertThat(read.names()).isEqualTo(book.names());
        assertThat(read.specs())
                .usingRecursiveFieldByFieldElementComparatorIgnoringFields("amountText")
                .isEqualTo(book.specs());
        assertThat(loaded.value().files()).allSatisfy(file -> {
            assertThat(file.used()).isEqualTo(file.rows());
            assertThat(file.headingRow()).isEqualTo(FIRST_ROW - 1);
        });
    }

    /** Valid books of any content. */
    private record Generator(Random random) {
        private static final List<String> PACKS = List.of("70cl", "6 x 70cl", "5 kg", "case of 40", "24/12oz");
        private static final List<SpecAmount> AMOUNTS =
                List.of(new SpecAmount.ToTop(), new SpecAmount.ToTarget(), new SpecAmount.Rinse());
        private static final List<String> AMOUNT_TEXTS = List.of("to top", "to target", "rinse");

        Book book() {
            Settings settings = Settings.standard()
                    .with(Setting.CURRENCY, Currency.getInstance("EUR"))
                    .with(Setting.MENU_PRICES_INCLUDE_TAX, true);
            List<Drink> drinks = list(this::drink);
            return new Book(
                    "The Bilge",
                    settings,
                    list(row -> new Category(
                            "Class " + row,
                            orNull(percent()),
                            "Group " + row,
                            random.nextBoolean(),
                            random.nextBoolean() ? null : number().negated(),
                            place("categories", row))),
                    list(this::ingredient),
                    list(this::preparation),
                    drinks,
                    list(row -> new DatedPrice(
                            drinks.get(0).name(),
                            LocalDate.of(2026, 1, 1).plusDays(row),
                            money(),
                            place("prices", row))),
                    list(this::specLine),
                    list(row -> new NameRule(
                            "TILL " + row,
                            drinks.get(0).name(),
                            any(NameRule.Where.values()),
                            number(),
                            place("names", row))),
                    List.of(),
                    List.of(),
                    List.of());
        }

        private Ingredient ingredient(int row) {
            boolean listed = random.nextBoolean();
            Measure measure = any(Measure.values());
            Exact empty = number();
            return new Ingredient(
                    "Liquid no. " + row,
                    "Spirits",
                    measure,
                    new Composition(
                            orNull(Exact.of("0.95")),
                            orNull(percent()),
                            orNull(number()),
                            orNull(number()),
                            orNull(number()),
                            orNull(number()),
                            orNull(number()),
                            orNull(number())),
                    percent(),
                    random.nextBoolean() ? List.of() : List.of("milk", "tree nuts"),
                    orNull(number()),
                    orNull(number()),
                    listed ? money() : null,
                    listed
                            ? Packs.parse(any(PACKS.toArray(new String[0])), measure)
                                    .orElseThrow()
                            : null,
                    empty.plus(Exact.of(500)),
                    empty,
                    orNull(number()),
                    orNull(number()),
                    orNull(percent()),
                    place("ingredients", row));
        }

        private Preparation preparation(int row) {
            boolean typed = random.nextBoolean();
            Measure measure = any(Measure.values());
            return new Preparation(
                    "Mix (" + row + ")",
                    typed ? number() : null,
                    typed
                            ? Units.standard()
                                    .find(any("l", "ml", "kg", "each"), measure)
                                    .orElseThrow()
                            : null,
                    typed ? Exact.ZERO : Exact.of(random.nextInt(100)),
                    number(),
                    orNull(random.nextInt(90)),
                    orNull(percent()),
                    orNull(percent()),
                    orNull(percent()),
                    orNull(percent()),
                    measure,
                    any("", "Label it"),
                    place("preparations", row));
        }

        private Drink drink(int row) {
            LocalDate from = LocalDate.of(2026, 1 + random.nextInt(12), 1 + random.nextInt(28));
            return new Drink(
                    "Drink " + row,
                    orNull(money()),
                    any("", "Classics"),
                    any("", "10" + row),
                    any(Method.values()),
                    orNull(number()),
                    orNull(number()),
                    number(),
                    orNull(from),
                    orNull(from.plusDays(random.nextInt(40))),
                    random.nextBoolean(),
                    orNull(money()),
                    orNull(random.nextBoolean()),
                    place("drinks", row));
        }

        private SpecLine specLine(int row) {
            int word = random.nextInt(6);
            boolean words = word < AMOUNTS.size();
            return new SpecLine(
                    "Mix (" + FIRST_ROW + ")",
                    orNull(LocalDate.of(2026, 9, 1)),
                    "Liquid no. " + row,
                    words ? AMOUNTS.get(word) : new SpecAmount.Units(number()),
                    words ? AMOUNT_TEXTS.get(word) : "",
                    any("", "ml", "dash", "oz"),
                    percent(),
                    any("", "stir well"),
                    place("specs", row));
        }

        private <T> List<T> list(IntFunction<T> maker) {
            List<T> rows = new ArrayList<>();
            int count = 1 + random.nextInt(5);
            for (int i = 0; i < count; i++) {
                rows.add(maker.apply(FIRST_ROW + i));
            }
            return rows;
        }

        private static Place place(String sheet, int row) {
            return Place.of("book/" + sheet + ".csv").withRow(row);
        }

        private Exact number() {
            return Exact.of(1 + random.nextInt(20_000)).dividedBy(Exact.of(random.nextBoolean() ? 100 : 1));
        }

        private Exact percent() {
            return Exact.of(1 + random.nextInt(1_000)).dividedBy(Exact.of(10));
        }

        private Money money() {
            return new Money(number());
        }

        private <T> @Nullable T orNull(T value) {
            return random.nextBoolean() ? value : null;
        }

        @SafeVarargs
        private <T> T any(T... values) {
            return values[random.nextInt(values.length)];
        }
    }
}
