package heeltap.load;

import heeltap.quantity.Exact;
import heeltap.quantity.Measure;
import heeltap.quantity.Money;
import heeltap.quantity.Pack;
import heeltap.quantity.Packs;
import heeltap.quantity.Unit;
import heeltap.quantity.Units;
import heeltap.record.Composition;
import heeltap.record.Folding;
import heeltap.record.Ingredient;
import heeltap.record.Preparation;
import heeltap.source.Cell;
import heeltap.source.ProblemKind;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The sheets Ingredients and Preparations. */
final class BookGoodsReader {
    private BookGoodsReader() {}

    static List<Ingredient> ingredients(BookSheet sheet) {
        BookNames names = new BookNames();
        return sheet.read(row -> {
            String name = row.text(BookGoods.INGREDIENT);
            Measure measure = measure(row, BookGoods.MEASURE);
            Exact usable = row.number(BookGoods.USABLE);
            Ingredient ingredient = measure == null || usable == null ? null : ingredient(row, name, measure, usable);
            return row.isLeftOut() || !names.take(row, BookGoods.INGREDIENT, name) ? null : ingredient;
        });
    }

    private static Ingredient ingredient(BookRow row, String name, Measure measure, Exact usable) {
        Money listPrice = row.money(BookGoods.LIST_PRICE);
        Pack listPack = pack(row, measure);
        if (listPrice != null
                && listPack == null
                && row.cell(BookGoods.LIST_PACK).isEmpty()) {
            row.fault(
                    ProblemKind.VALUE_MISSING,
                    BookGoods.LIST_PACK,
                    "There is a List price, but not what it buys.",
                    "Fill in List pack");
        }
        Exact full = row.number(BookGoods.FULL_G);
        Exact empty = row.number(BookGoods.EMPTY_G);
        if (full != null && empty != null && !empty.isLessThan(full)) {
            row.fault(
                    ProblemKind.VALUE_INVALID,
                    BookGoods.EMPTY_G,
                    "An empty bottle cannot weigh as much as a full one.",
                    "Correct one of the two");
            empty = null;
        }
        return new Ingredient(
                name,
                row.text(BookGoods.GROUP),
                measure,
                composition(row),
                usable,
                allergens(row.text(BookGoods.ALLERGENS)),
                row.number(BookGoods.JUICE_ML),
                row.number(BookGoods.EACH_G),
                listPack == null ? null : listPrice,
                listPack,
                full,
                empty,
                row.number(BookGoods.BOTTLE_ML),
                row.number(BookGoods.PAR),
                row.number(BookGoods.PEEL_COST),
                row.place());
    }

    private static Composition composition(BookRow row) {
        return new Composition(
                row.number(BookGoods.DENSITY),
                row.number(BookGoods.ABV),
                row.number(BookGoods.SUGAR),
                row.number(BookGoods.CITRIC),
                row.number(BookGoods.MALIC),
                row.number(BookGoods.TARTARIC),
                row.number(BookGoods.OTHER_ACID),
                row.number(BookGoods.SALT));
    }

    private static List<String> allergens(String text) {
        return Arrays.stream(text.split("[;,]", -1))
                .map(String::strip)
                .filter(word -> !word.isEmpty())
                .toList();
    }

    private static @Nullable Measure measure(BookRow row, Column column) {
        String choice = row.choice(column);
        return choice == null ? null : Measure.valueOf(choice.toUpperCase(Locale.ROOT));
    }

    private static @Nullable Pack pack(BookRow row, Measure measure) {
        Optional<Cell> cell = row.cell(BookGoods.LIST_PACK);
        if (cell.isEmpty()) {
            return null;
        }
        Packs.Reading reading = Packs.read(BookText.clean(cell.get().text()), measure);
        if (reading.pack() == null) {
            row.fault(
                    ProblemKind.PACK_UNREADABLE,
                    BookGoods.LIST_PACK,
                    reading.reason(),
                    "Write it as 70cl, 6 x 70cl, 5 kg or case of 40");
        }
        return reading.pack();
    }

    /**
     * The preparations. One whose yield cannot be told stays among them, so that what it is in is left out by name.
     *
     * @param spoiled takes the folded names of such, with why
     */
    static List<Preparation> preparations(BookSheet sheet, Units units, Map<String, String> spoiled) {
        BookNames names = new BookNames();
        return sheet.read(row -> {
            String name = row.text(BookGoods.PREPARATION);
            if (row.isLeftOut() || !names.take(row, BookGoods.PREPARATION, name)) {
                return null;
            }
            Preparation preparation = preparation(row, name, units);
            if (!row.spoiled().isEmpty()) {
                spoiled.put(Folding.fold(name), row.spoiled());
            }
            return preparation;
        });
    }

    private static Preparation preparation(BookRow row, String name, Units units) {
        Measure measure = Objects.requireNonNullElse(measure(row, BookGoods.PREPARATION_MEASURE), Measure.ML);
        Exact makes = row.number(BookGoods.MAKES);
        Exact loss = row.number(BookGoods.LOSS, Exact.ZERO);
        Unit unit = unit(row, measure, units);
        if (makes != null && loss.isPositive()) {
            row.fault(
                    ProblemKind.SPEC_FAULT,
                    BookGoods.LOSS,
                    "A Loss percent stands beside a typed Makes, which is measured after all losses.",
                    "Clear one of the two");
        }
        return new Preparation(
                name,
                unit == null ? null : makes,
                makes == null ? null : unit,
                loss,
                row.number(BookGoods.BATCH_MINUTES, Exact.ZERO),
                days(row),
                row.number(BookGoods.TARGET_CITRIC),
                row.number(BookGoods.TARGET_MALIC),
                row.number(BookGoods.TARGET_SALT),
                row.number(BookGoods.TARGET_SUGAR),
                measure,
                row.text(BookGoods.CAUTION),
                row.place());
    }

    /** The unit of the yield; null where it cannot be read. */
    private static @Nullable Unit unit(BookRow row, Measure measure, Units units) {
        String text = row.text(BookGoods.MAKES_UNIT);
        Optional<Unit> unit = units.find(text.isEmpty() ? measure.symbol() : text, measure)
                .filter(found -> found.kind() == Unit.Kind.VOLUME
                        || found.kind() == Unit.Kind.MASS
                        || found.kind() == Unit.Kind.COUNT);
        if (unit.isEmpty()) {
            row.fault(
                    ProblemKind.UNIT_UNKNOWN,
                    BookGoods.MAKES_UNIT,
                    "This is no unit of a yield.",
                    "Use a unit such as ml, l, g, kg or each");
        }
        return unit.orElse(null);
    }

    private static @Nullable Integer days(BookRow row) {
        Exact days = row.number(BookGoods.KEEPS);
        if (days != null && !days.isWhole()) {
            row.fault(ProblemKind.VALUE_INVALID, BookGoods.KEEPS, "Keeps days must be whole days.", "Correct it");
            return null;
        }
        return days == null ? null : Integer.valueOf(days.toString());
    }
}
