package heeltap;

import heeltap.quantity.Amount;
import heeltap.quantity.Exact;
import heeltap.quantity.Measure;
import heeltap.quantity.Money;
import heeltap.quantity.Pack;
import heeltap.quantity.Unit;
import heeltap.record.BarMeasure;
import heeltap.record.Book;
import heeltap.record.Composition;
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
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.NullMarked;
import org.jspecify.annotations.Nullable;

/** Writes a bar's book in a few lines of a test. Rows are numbered from 2 on each sheet, as a spreadsheet would. */
@NullMarked
public final class BookBuilder {
    private Settings settings = Settings.standard();
    private final List<Ingredient> ingredients = new ArrayList<>();
    private final List<Preparation> preparations = new ArrayList<>();
    private final List<Drink> drinks = new ArrayList<>();
    private final List<SpecLine> specs = new ArrayList<>();
    private final List<NameRule> names = new ArrayList<>();
    private final List<BarMeasure> measures = new ArrayList<>();

    private static Place place(String sheet, int size) {
        return Place.of("book.xlsx", sheet).withRow(size + 2);
    }

    public <T> BookBuilder set(Setting<T> setting, T value) {
        settings = settings.with(setting, value);
        return this;
    }

    public BookBuilder ingredient(String name, Measure measure) {
        return ingredient(name, measure, same -> same);
    }

    public BookBuilder ingredient(String name, Measure measure, UnaryOperator<IngredientCells> cells) {
        ingredients.add(cells.apply(new IngredientCells(name, measure)).at(place("Ingredients", ingredients.size())));
        return this;
    }

    /** An ingredient with a list price for so much of its measure. */
    public BookBuilder priced(String name, Measure measure, String price, String amount) {
        return ingredient(name, measure, cells -> cells.list(price, amount));
    }

    public BookBuilder preparation(String name) {
        return preparation(name, Measure.ML, same -> same);
    }

    public BookBuilder preparation(String name, Measure measure, UnaryOperator<PreparationCells> cells) {
        preparations.add(
                cells.apply(new PreparationCells(name, measure)).at(place("Preparations", preparations.size())));
        return this;
    }

    public BookBuilder drink(String name) {
        return drink(name, same -> same);
    }

    public BookBuilder drink(String name, UnaryOperator<DrinkCells> cells) {
        drinks.add(cells.apply(new DrinkCells(name)).at(place("Drinks", drinks.size())));
        return this;
    }

    /** A line of so many units; the amount is a decimal. */
    public BookBuilder line(String item, String ingredient, String amount, String unit) {
        return line(item, null, ingredient, new SpecAmount.Units(Exact.of(amount)), amount, unit, "0");
    }

    public BookBuilder wasteLine(String item, String ingredient, String amount, String unit, String wastePercent) {
        return line(item, null, ingredient, new SpecAmount.Units(Exact.of(amount)), amount, unit, wastePercent);
    }

    /** A line of a version that holds from a day on. */
    public BookBuilder lineFrom(String from, String item, String ingredient, String amount, String unit) {
        return line(item, LocalDate.parse(from), ingredient, new SpecAmount.Units(Exact.of(amount)), amount, unit, "0");
    }

    /** A line whose amount is no plain number. */
    public BookBuilder line(String item, String ingredient, SpecAmount amount, String unit) {
        return line(item, null, ingredient, amount, amount.getClass().getSimpleName(), unit, "0");
    }

    private BookBuilder line(
            String item,
            @Nullable LocalDate from,
            String ingredient,
            SpecAmount amount,
            String text,
            String unit,
            String waste) {
        specs.add(new SpecLine(
                item, from, ingredient, amount, text, unit, Exact.of(waste), "", place("Specs", specs.size())));
        return this;
    }

    public BookBuilder name(String asWritten, String means, NameRule.Where where, String times) {
        names.add(new NameRule(asWritten, means, where, Exact.of(times), place("Names", names.size())));
        return this;
    }

    public BookBuilder measure(String unit, String ml) {
        measures.add(new BarMeasure(unit, Exact.of(ml), place("Measures", measures.size())));
        return this;
    }

    /** The same rows in another order, their places kept. */
    public BookBuilder shuffled(long seed) {
        BookBuilder other = new BookBuilder();
        other.settings = settings;
        other.ingredients.addAll(shuffle(ingredients, seed));
        other.preparations.addAll(shuffle(preparations, seed));
        other.drinks.addAll(shuffle(drinks, seed));
        other.specs.addAll(shuffle(specs, seed));
        other.names.addAll(shuffle(names, seed));
        other.measures.addAll(shuffle(measures, seed));
        return other;
    }

    private static <T> List<T> shuffle(List<T> rows, long seed) {
        List<T> copy = new ArrayList<>(rows);
        Collections.shuffle(copy, new Random(seed));
        return copy;
    }

    public Book build() {
        return new Book(
                "The Test Bar",
                settings,
                List.of(),
                List.copyOf(ingredients),
                List.copyOf(preparations),
                List.copyOf(drinks),
                List.of(),
                List.copyOf(specs),
                List.copyOf(names),
                List.of(),
                List.copyOf(measures),
                List.of());
    }

    /** One thing of so much. */
    public static Pack pack(String units, String size, Measure measure) {
        return new Pack(Exact.of(units), Amount.of(size, measure), "", units + " x " + size + " " + measure.symbol());
    }

    /** The cells of an ingredient's row. */
    public static final class IngredientCells {
        private final String name;
        private final Measure measure;
        private final Map<String, Exact> numbers = new HashMap<>();
        private List<String> allergens = List.of();
        private @Nullable Money listPrice;
        private @Nullable Pack listPack;

        private IngredientCells(String name, Measure measure) {
            this.name = name;
            this.measure = measure;
        }

        /** One of: density, abv, sugar, citric, malic, tartaric, other, salt, usable, juice, each, bottle, peel. */
        public IngredientCells with(String cell, String value) {
            numbers.put(cell, Exact.of(value));
            return this;
        }

        public IngredientCells allergens(String... values) {
            allergens = List.of(values);
            return this;
        }

        public IngredientCells list(String price, String amount) {
            return list(price, BookBuilder.pack("1", amount, measure));
        }

        public IngredientCells list(String price, @Nullable Pack pack) {
            listPrice = Money.of(price);
            listPack = pack;
            return this;
        }

        public IngredientCells pack(String units, String size, Measure of) {
            listPack = BookBuilder.pack(units, size, of);
            return this;
        }

        private Ingredient at(Place place) {
            Composition composition = new Composition(
                    numbers.get("density"),
                    numbers.get("abv"),
                    numbers.get("sugar"),
                    numbers.get("citric"),
                    numbers.get("malic"),
                    numbers.get("tartaric"),
                    numbers.get("other"),
                    numbers.get("salt"));
            return new Ingredient(
                    name,
                    "Other",
                    measure,
                    composition,
                    numbers.getOrDefault("usable", Exact.HUNDRED),
                    allergens,
                    numbers.get("juice"),
                    numbers.get("each"),
                    listPrice,
                    listPack,
                    null,
                    null,
                    numbers.get("bottle"),
                    null,
                    numbers.get("peel"),
                    place);
        }
    }

    /** The cells of a preparation's row. */
    public static final class PreparationCells {
        private final String name;
        private final Measure measure;
        private final Map<String, Exact> numbers = new HashMap<>();
        private @Nullable Unit makesUnit;

        private PreparationCells(String name, Measure measure) {
            this.name = name;
            this.measure = measure;
        }

        public PreparationCells makes(String value) {
            return with("makes", value);
        }

        public PreparationCells makes(String value, Unit unit) {
            makesUnit = unit;
            return with("makes", value);
        }

        /** One of: makes, loss, minutes, keeps, citric, malic, salt, sugar. */
        public PreparationCells with(String cell, String value) {
            numbers.put(cell, Exact.of(value));
            return this;
        }

        private Preparation at(Place place) {
            Exact keeps = numbers.get("keeps");
            return new Preparation(
                    name,
                    numbers.get("makes"),
                    makesUnit,
                    numbers.getOrDefault("loss", Exact.ZERO),
                    numbers.getOrDefault("minutes", Exact.ZERO),
                    keeps == null ? null : Integer.valueOf(keeps.toString()),
                    numbers.get("citric"),
                    numbers.get("malic"),
                    numbers.get("salt"),
                    numbers.get("sugar"),
                    measure,
                    "",
                    place);
        }
    }

    /** The cells of a drink's row. */
    public static final class DrinkCells {
        private final String name;
        private final Map<String, Exact> numbers = new HashMap<>();
        private String code = "";
        private Method method = Method.NONE;

        private DrinkCells(String name) {
            this.name = name;
        }

        public DrinkCells code(String value) {
            code = value;
            return this;
        }

        public DrinkCells method(Method value) {
            method = value;
            return this;
        }

        /** One of: price, water, serve, minutes, fixed. */
        public DrinkCells with(String cell, String value) {
            numbers.put(cell, Exact.of(value));
            return this;
        }

        private @Nullable Money money(String cell) {
            Exact value = numbers.get(cell);
            return value == null ? null : new Money(value);
        }

        private Drink at(Place place) {
            return new Drink(
                    name,
                    money("price"),
                    "Cocktails",
                    code,
                    method,
                    numbers.get("water"),
                    numbers.get("serve"),
                    numbers.getOrDefault("minutes", Exact.ZERO),
                    null,
                    null,
                    false,
                    money("fixed"),
                    null,
                    place);
        }
    }
}
