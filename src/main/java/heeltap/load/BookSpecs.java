package heeltap.load;

import heeltap.quantity.Exact;
import heeltap.quantity.Units;
import heeltap.record.Drink;
import heeltap.record.SpecAmount;
import heeltap.record.SpecLine;
import heeltap.source.Place;
import heeltap.source.Problem;
import heeltap.source.ProblemKind;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * The sheet Specs. A line that cannot be costed is kept with the reason, so that its drink is left out by name instead
 * of being costed without it.
 */
final class BookSpecs {
    private static final String UNTIL = "; until then what it is in is left out.";

    private final BookSheet sheet;
    private final SpecText text;
    private final Map<String, String> leftOut;
    private final List<SpecLine> inEveryVersion = new ArrayList<>();
    private @Nullable String itemAbove;

    private BookSpecs(BookSheet sheet, SpecText text, Map<String, String> leftOut) {
        this.sheet = sheet;
        this.text = text;
        this.leftOut = leftOut;
    }

    /**
     * The lines in the order of their rows.
     *
     * @param isKnown whether the book has an ingredient, preparation or drink of that name
     * @param leftOut ingredients and preparations whose row was left out, folded, with why
     */
    static List<SpecLine> read(BookSheet sheet, Units units, Predicate<String> isKnown, Map<String, String> leftOut) {
        SpecText text = new SpecText(sheet.numbers(BookTables.AMOUNT), units, isKnown);
        BookSpecs reader = new BookSpecs(sheet, text, leftOut);
        List<SpecLine> lines = new ArrayList<>(sheet.read(reader::line));
        return reader.completed(lines);
    }

    private @Nullable SpecLine line(BookRow row) {
        if (row.cell(BookTables.ITEM).isEmpty() && itemAbove != null) {
            spoilItem(row, itemAbove);
            return null;
        }
        String item = row.text(BookTables.ITEM);
        if (row.isLeftOut()) {
            return null;
        }
        itemAbove = item;
        String ingredient = row.peekText(BookTables.SPEC_INGREDIENT);
        String unit = row.text(BookTables.UNIT);
        SpecText.Line line = text.read(row.cell(BookTables.AMOUNT), unit, ingredient);
        LocalDate from = date(row);
        Exact waste = row.cell(BookTables.WASTE).isEmpty() ? Exact.ZERO : number(row);
        SpecAmount amount = amount(row, line);
        SpecLine result = new SpecLine(
                item,
                from,
                line.ingredient(),
                waste == null ? new SpecAmount.Unclear("The Waste percent cannot be read.") : amount,
                row.cell(BookTables.AMOUNT)
                        .map(cell -> BookText.clean(cell.text()))
                        .orElse(""),
                line.unit(),
                waste == null ? Exact.ZERO : waste,
                row.text(BookTables.NOTE),
                row.place());
        if (from == null && row.cell(BookTables.SPEC_FROM).isPresent()) {
            inEveryVersion.add(withAmount(result, new SpecAmount.Unclear("The date in From cannot be read.")));
        }
        return result;
    }

    /** A row without an item most likely belongs to the one above, which must not be costed without it. */
    private void spoilItem(BookRow row, String item) {
        row.report(
                Problem.fault(
                        ProblemKind.VALUE_MISSING,
                        row.place(BookTables.ITEM),
                        "",
                        "This cell must not be empty; the line may belong to \"" + item + "\" above it.",
                        "Fill it in; until then \"" + item + "\" is left out."),
                true);
        inEveryVersion.add(new SpecLine(
                item,
                null,
                row.peekText(BookTables.SPEC_INGREDIENT),
                new SpecAmount.Unclear("The line at " + row.place() + " has no Item and may belong to it."),
                row.peekText(BookTables.AMOUNT),
                row.peekText(BookTables.UNIT),
                Exact.ZERO,
                "",
                row.place()));
    }

    private @Nullable LocalDate date(BookRow row) {
        if (row.cell(BookTables.SPEC_FROM).isEmpty()) {
            return null;
        }
        Optional<LocalDate> date =
                BookDates.parse(row.cell(BookTables.SPEC_FROM).orElseThrow(), sheet.dates(BookTables.SPEC_FROM));
        if (date.isEmpty()) {
            keep(
                    row,
                    BookTables.SPEC_FROM,
                    ProblemKind.VALUE_INVALID,
                    "This is no date.",
                    "Type a date such as 2026-09-01");
        }
        return date.orElse(null);
    }

    private @Nullable Exact number(BookRow row) {
        Exact waste = row.peekNumber(BookTables.WASTE);
        if (waste == null || waste.isNegative()) {
            keep(
                    row,
                    BookTables.WASTE,
                    ProblemKind.VALUE_INVALID,
                    "Waste percent must be a number, "
                            + BookTables.WASTE.bounds().words() + ".",
                    "Correct it");
            return null;
        }
        return waste;
    }

    private SpecAmount amount(BookRow row, SpecText.Line line) {
        if (line.ingredient().isEmpty()) {
            keep(row, BookTables.SPEC_INGREDIENT, ProblemKind.VALUE_MISSING, "There is no Ingredient.", "Fill it in");
            return new SpecAmount.Unclear("A line has no ingredient.");
        }
        if (line.amount() instanceof SpecAmount.Unclear unclear) {
            boolean blank = row.cell(BookTables.AMOUNT).isEmpty();
            keep(
                    row,
                    BookTables.AMOUNT,
                    blank ? ProblemKind.VALUE_MISSING : ProblemKind.VALUE_INVALID,
                    unclear.reason(),
                    "Type an amount such as 22.5, 3/4 or to top, and its unit beside it");
            return unclear;
        }
        String why = leftOut.get(BookText.fold(line.ingredient()));
        if (why != null) {
            return new SpecAmount.Unclear("\"" + line.ingredient() + "\" is left out: " + why);
        }
        if (!line.notice().isEmpty()) {
            sheet.add(Problem.notice(
                    ProblemKind.VALUE_AMBIGUOUS,
                    row.place(BookTables.AMOUNT),
                    row.text(BookTables.AMOUNT),
                    line.notice(),
                    "Write the amount you mean."));
        }
        noteOpenNumber(row);
        return line.amount();
    }

    private void noteOpenNumber(BookRow row) {
        BookNumbers numbers = sheet.numbers(BookTables.AMOUNT);
        Optional<String> open = row.cell(BookTables.AMOUNT)
                .filter(cell -> cell.number() == null && !numbers.proven())
                .flatMap(cell -> BookNumbers.findOpen(cell.text()));
        open.ifPresent(token -> row.noteOpen(BookTables.AMOUNT, numbers, token));
    }

    /** A fault that leaves out the item, not the row. */
    private void keep(BookRow row, Column column, ProblemKind kind, String reason, String remedy) {
        String raw = row.peekText(column);
        row.report(Problem.fault(kind, row.place(column), raw, reason, remedy + UNTIL), false);
    }

    /** Adds the lines that spoil an item in every version of its spec. */
    private List<SpecLine> completed(List<SpecLine> lines) {
        for (SpecLine spoiler : inEveryVersion) {
            Set<Optional<LocalDate>> versions = new HashSet<>();
            for (SpecLine line : List.copyOf(lines)) {
                if (BookText.fold(line.item()).equals(BookText.fold(spoiler.item()))
                        && versions.add(Optional.ofNullable(line.from()))) {
                    lines.add(withFrom(spoiler, line.from()));
                }
            }
        }
        return List.copyOf(lines);
    }

    /** Drinks with a fixed cost beside a spec have no cost: which of the two holds nobody can say. */
    static Spoiled fixedBesideSpec(BookSheet drinkSheet, List<Drink> drinks, List<SpecLine> lines) {
        Map<String, Place> specs = new HashMap<>();
        lines.forEach(line -> specs.putIfAbsent(BookText.fold(line.item()), line.place()));
        Set<String> spoiled = new HashSet<>();
        List<Drink> kept = new ArrayList<>();
        for (Drink drink : drinks) {
            Place spec = specs.get(BookText.fold(drink.name()));
            if (drink.fixedCost() == null || spec == null) {
                kept.add(drink);
                continue;
            }
            spoiled.add(BookText.fold(drink.name()));
            kept.add(withoutFixedCost(drink));
            drinkSheet.add(Problem.fault(
                    ProblemKind.SPEC_FAULT,
                    drink.place(),
                    drink.name(),
                    "The drink has a Fixed cost of " + drink.fixedCost() + " and a spec at " + spec + ".",
                    "Remove one of the two; until then the drink is left out."));
        }
        SpecAmount unclear = new SpecAmount.Unclear("It has a Fixed cost beside its spec.");
        List<SpecLine> marked = lines.stream()
                .map(line -> spoiled.contains(BookText.fold(line.item())) ? withAmount(line, unclear) : line)
                .toList();
        return new Spoiled(kept, marked);
    }

    /** Drinks and lines after marking. */
    record Spoiled(List<Drink> drinks, List<SpecLine> lines) {}

    private static Drink withoutFixedCost(Drink drink) {
        return new Drink(
                drink.name(),
                drink.price(),
                drink.category(),
                drink.code(),
                drink.method(),
                drink.waterPercent(),
                drink.serveMl(),
                drink.minutes(),
                drink.onMenuFrom(),
                drink.onMenuUntil(),
                drink.holdPrice(),
                null,
                drink.inMenuAnalysis(),
                drink.place());
    }

    private static SpecLine withAmount(SpecLine line, SpecAmount amount) {
        return new SpecLine(
                line.item(),
                line.from(),
                line.ingredient(),
                amount,
                line.amountText(),
                line.unit(),
                line.wastePercent(),
                line.note(),
                line.place());
    }

    private static SpecLine withFrom(SpecLine line, @Nullable LocalDate from) {
        return new SpecLine(
                line.item(),
                from,
                line.ingredient(),
                line.amount(),
                line.amountText(),
                line.unit(),
                line.wastePercent(),
                line.note(),
                line.place());
    }
}
